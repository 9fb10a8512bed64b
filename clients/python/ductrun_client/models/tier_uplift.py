from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.force_per_length import ForcePerLength
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength


T = TypeVar("T", bound="TierUplift")


@_attrs_define
class TierUplift:
    """Like ducts of one tier.

    Attributes:
        duct_count (int): Ducts of this kind in the tier.
        duct_uplift_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        mass_per_length (MassPerLength): A mass per length with its unit.
        outside_diameter (Length): A length with its unit.
        tier (int): Tier, from 1 at the bottom.
        uplift_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
    """

    duct_count: int
    duct_uplift_per_length: ForcePerLength
    mass_per_length: MassPerLength
    outside_diameter: Length
    tier: int
    uplift_per_length: ForcePerLength
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        duct_count = self.duct_count

        duct_uplift_per_length = self.duct_uplift_per_length.to_dict()

        mass_per_length = self.mass_per_length.to_dict()

        outside_diameter = self.outside_diameter.to_dict()

        tier = self.tier

        uplift_per_length = self.uplift_per_length.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "duct_count": duct_count,
                "duct_uplift_per_length": duct_uplift_per_length,
                "mass_per_length": mass_per_length,
                "outside_diameter": outside_diameter,
                "tier": tier,
                "uplift_per_length": uplift_per_length,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415

        d = dict(src_dict)
        duct_count = d.pop("duct_count")

        duct_uplift_per_length = ForcePerLength.from_dict(d.pop("duct_uplift_per_length"))

        mass_per_length = MassPerLength.from_dict(d.pop("mass_per_length"))

        outside_diameter = Length.from_dict(d.pop("outside_diameter"))

        tier = d.pop("tier")

        uplift_per_length = ForcePerLength.from_dict(d.pop("uplift_per_length"))

        tier_uplift = cls(
            duct_count=duct_count,
            duct_uplift_per_length=duct_uplift_per_length,
            mass_per_length=mass_per_length,
            outside_diameter=outside_diameter,
            tier=tier,
            uplift_per_length=uplift_per_length,
        )

        tier_uplift.additional_properties = d
        return tier_uplift

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
