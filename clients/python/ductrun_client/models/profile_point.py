from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.length import Length


T = TypeVar("T", bound="ProfilePoint")


@_attrs_define
class ProfilePoint:
    """Tension at one place of the run.

    Attributes:
        position (Length): A length with its unit.
        tension (Force): A force with its unit; tension is a force.
    """

    position: Length
    tension: Force
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        position = self.position.to_dict()

        tension = self.tension.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "position": position,
                "tension": tension,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        position = Length.from_dict(d.pop("position"))

        tension = Force.from_dict(d.pop("tension"))

        profile_point = cls(
            position=position,
            tension=tension,
        )

        profile_point.additional_properties = d
        return profile_point

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
