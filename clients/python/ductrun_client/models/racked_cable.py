from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="RackedCable")


@_attrs_define
class RackedCable:
    """Cable on the racks of a manhole.

    Attributes:
        centerline_radius (Length): A length with its unit.
        offset_length (Length): A length with its unit.
        wall_length (Length): A length with its unit.
    """

    centerline_radius: Length
    offset_length: Length
    wall_length: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        centerline_radius = self.centerline_radius.to_dict()

        offset_length = self.offset_length.to_dict()

        wall_length = self.wall_length.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "centerline_radius": centerline_radius,
                "offset_length": offset_length,
                "wall_length": wall_length,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        centerline_radius = Length.from_dict(d.pop("centerline_radius"))

        offset_length = Length.from_dict(d.pop("offset_length"))

        wall_length = Length.from_dict(d.pop("wall_length"))

        racked_cable = cls(
            centerline_radius=centerline_radius,
            offset_length=offset_length,
            wall_length=wall_length,
        )

        racked_cable.additional_properties = d
        return racked_cable

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
