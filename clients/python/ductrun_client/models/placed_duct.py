from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="PlacedDuct")


@_attrs_define
class PlacedDuct:
    """One duct of the bank, from the lower left corner of the bank without its cover.

    Attributes:
        outside_diameter (Length): A length with its unit.
        signal (bool): Whether it carries signals.
        tier (int): Tier, from 1 at the bottom.
        x (Length): A length with its unit.
        y (Length): A length with its unit.
    """

    outside_diameter: Length
    signal: bool
    tier: int
    x: Length
    y: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        outside_diameter = self.outside_diameter.to_dict()

        signal = self.signal

        tier = self.tier

        x = self.x.to_dict()

        y = self.y.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "outside_diameter": outside_diameter,
                "signal": signal,
                "tier": tier,
                "x": x,
                "y": y,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        outside_diameter = Length.from_dict(d.pop("outside_diameter"))

        signal = d.pop("signal")

        tier = d.pop("tier")

        x = Length.from_dict(d.pop("x"))

        y = Length.from_dict(d.pop("y"))

        placed_duct = cls(
            outside_diameter=outside_diameter,
            signal=signal,
            tier=tier,
            x=x,
            y=y,
        )

        placed_duct.additional_properties = d
        return placed_duct

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
