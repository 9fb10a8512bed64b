from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength


T = TypeVar("T", bound="BrakingCase")


@_attrs_define
class BrakingCase:
    """The pull at the low friction, at which the cable runs away most, from its own least brake.

    Attributes:
        friction_coefficient (float): The low coefficient.
        highest_tension (Force): A force with its unit; tension is a force.
        tension (Force): A force with its unit; tension is a force.
        brake_tension (Force | Unset): A force with its unit; tension is a force.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    friction_coefficient: float
    highest_tension: Force
    tension: Force
    brake_tension: Force | Unset = UNSET
    sidewall_pressure: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        friction_coefficient = self.friction_coefficient

        highest_tension = self.highest_tension.to_dict()

        tension = self.tension.to_dict()

        brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_tension, Unset):
            brake_tension = self.brake_tension.to_dict()

        sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sidewall_pressure, Unset):
            sidewall_pressure = self.sidewall_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "friction_coefficient": friction_coefficient,
                "highest_tension": highest_tension,
                "tension": tension,
            }
        )
        if brake_tension is not UNSET:
            field_dict["brake_tension"] = brake_tension
        if sidewall_pressure is not UNSET:
            field_dict["sidewall_pressure"] = sidewall_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        friction_coefficient = d.pop("friction_coefficient")

        highest_tension = Force.from_dict(d.pop("highest_tension"))

        tension = Force.from_dict(d.pop("tension"))

        _brake_tension = d.pop("brake_tension", UNSET)
        brake_tension: Force | Unset
        if isinstance(_brake_tension, Unset):
            brake_tension = UNSET
        else:
            brake_tension = Force.from_dict(_brake_tension)

        _sidewall_pressure = d.pop("sidewall_pressure", UNSET)
        sidewall_pressure: ForcePerLength | Unset
        if isinstance(_sidewall_pressure, Unset):
            sidewall_pressure = UNSET
        else:
            sidewall_pressure = ForcePerLength.from_dict(_sidewall_pressure)

        braking_case = cls(
            friction_coefficient=friction_coefficient,
            highest_tension=highest_tension,
            tension=tension,
            brake_tension=brake_tension,
            sidewall_pressure=sidewall_pressure,
        )

        braking_case.additional_properties = d
        return braking_case

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
