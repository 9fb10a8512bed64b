from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.length import Length


T = TypeVar("T", bound="LargestComplying")


@_attrs_define
class LargestComplying:
    """The largest values with which the pull as given would still comply; absent where none does.

    Attributes:
        friction_coefficient (float | Unset): Highest coefficient of friction, up to 2; absent if none complies.
        incoming_tension (Force | Unset): A force with its unit; tension is a force.
        last_straight (Length | Unset): A length with its unit.
    """

    friction_coefficient: float | Unset = UNSET
    incoming_tension: Force | Unset = UNSET
    last_straight: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        friction_coefficient = self.friction_coefficient

        incoming_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.incoming_tension, Unset):
            incoming_tension = self.incoming_tension.to_dict()

        last_straight: dict[str, Any] | Unset = UNSET
        if not isinstance(self.last_straight, Unset):
            last_straight = self.last_straight.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update({})
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if incoming_tension is not UNSET:
            field_dict["incoming_tension"] = incoming_tension
        if last_straight is not UNSET:
            field_dict["last_straight"] = last_straight

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _incoming_tension = d.pop("incoming_tension", UNSET)
        incoming_tension: Force | Unset
        if isinstance(_incoming_tension, Unset):
            incoming_tension = UNSET
        else:
            incoming_tension = Force.from_dict(_incoming_tension)

        _last_straight = d.pop("last_straight", UNSET)
        last_straight: Length | Unset
        if isinstance(_last_straight, Unset):
            last_straight = UNSET
        else:
            last_straight = Length.from_dict(_last_straight)

        largest_complying = cls(
            friction_coefficient=friction_coefficient,
            incoming_tension=incoming_tension,
            last_straight=last_straight,
        )

        largest_complying.additional_properties = d
        return largest_complying

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
