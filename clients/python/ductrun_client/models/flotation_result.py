from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.tier_uplift import TierUplift


T = TypeVar("T", bound="FlotationResult")


@_attrs_define
class FlotationResult:
    """The uplift and what holds it.

    Attributes:
        full_uplift_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        hold_down_per_station (Force): A force with its unit; tension is a force.
        tier_uplifts (list[TierUplift]): Each kind of duct of each tier, the bottom tier first.
        uplift_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        uplift_per_station (Force): A force with its unit; tension is a force.
        concrete_weight_per_length (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
        earth_weight_per_length (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
        tie_down_count (int | Unset): Tie-downs at each station, if the capacity of one is given.
        total_tie_down_count (int | Unset): Tie-downs of the run, if its length is given as well.
    """

    full_uplift_per_length: ForcePerLength
    hold_down_per_station: Force
    tier_uplifts: list[TierUplift]
    uplift_per_length: ForcePerLength
    uplift_per_station: Force
    concrete_weight_per_length: ForcePerLength | Unset = UNSET
    earth_weight_per_length: ForcePerLength | Unset = UNSET
    tie_down_count: int | Unset = UNSET
    total_tie_down_count: int | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        full_uplift_per_length = self.full_uplift_per_length.to_dict()

        hold_down_per_station = self.hold_down_per_station.to_dict()

        tier_uplifts = []
        for tier_uplifts_item_data in self.tier_uplifts:
            tier_uplifts_item = tier_uplifts_item_data.to_dict()
            tier_uplifts.append(tier_uplifts_item)

        uplift_per_length = self.uplift_per_length.to_dict()

        uplift_per_station = self.uplift_per_station.to_dict()

        concrete_weight_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_weight_per_length, Unset):
            concrete_weight_per_length = self.concrete_weight_per_length.to_dict()

        earth_weight_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_weight_per_length, Unset):
            earth_weight_per_length = self.earth_weight_per_length.to_dict()

        tie_down_count = self.tie_down_count

        total_tie_down_count = self.total_tie_down_count

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "full_uplift_per_length": full_uplift_per_length,
                "hold_down_per_station": hold_down_per_station,
                "tier_uplifts": tier_uplifts,
                "uplift_per_length": uplift_per_length,
                "uplift_per_station": uplift_per_station,
            }
        )
        if concrete_weight_per_length is not UNSET:
            field_dict["concrete_weight_per_length"] = concrete_weight_per_length
        if earth_weight_per_length is not UNSET:
            field_dict["earth_weight_per_length"] = earth_weight_per_length
        if tie_down_count is not UNSET:
            field_dict["tie_down_count"] = tie_down_count
        if total_tie_down_count is not UNSET:
            field_dict["total_tie_down_count"] = total_tie_down_count

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.tier_uplift import TierUplift  # noqa: PLC0415

        d = dict(src_dict)
        full_uplift_per_length = ForcePerLength.from_dict(d.pop("full_uplift_per_length"))

        hold_down_per_station = Force.from_dict(d.pop("hold_down_per_station"))

        tier_uplifts = []
        _tier_uplifts = d.pop("tier_uplifts")
        for tier_uplifts_item_data in _tier_uplifts:
            tier_uplifts_item = TierUplift.from_dict(tier_uplifts_item_data)

            tier_uplifts.append(tier_uplifts_item)

        uplift_per_length = ForcePerLength.from_dict(d.pop("uplift_per_length"))

        uplift_per_station = Force.from_dict(d.pop("uplift_per_station"))

        _concrete_weight_per_length = d.pop("concrete_weight_per_length", UNSET)
        concrete_weight_per_length: ForcePerLength | Unset
        if isinstance(_concrete_weight_per_length, Unset):
            concrete_weight_per_length = UNSET
        else:
            concrete_weight_per_length = ForcePerLength.from_dict(_concrete_weight_per_length)

        _earth_weight_per_length = d.pop("earth_weight_per_length", UNSET)
        earth_weight_per_length: ForcePerLength | Unset
        if isinstance(_earth_weight_per_length, Unset):
            earth_weight_per_length = UNSET
        else:
            earth_weight_per_length = ForcePerLength.from_dict(_earth_weight_per_length)

        tie_down_count = d.pop("tie_down_count", UNSET)

        total_tie_down_count = d.pop("total_tie_down_count", UNSET)

        flotation_result = cls(
            full_uplift_per_length=full_uplift_per_length,
            hold_down_per_station=hold_down_per_station,
            tier_uplifts=tier_uplifts,
            uplift_per_length=uplift_per_length,
            uplift_per_station=uplift_per_station,
            concrete_weight_per_length=concrete_weight_per_length,
            earth_weight_per_length=earth_weight_per_length,
            tie_down_count=tie_down_count,
            total_tie_down_count=total_tie_down_count,
        )

        flotation_result.additional_properties = d
        return flotation_result

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
