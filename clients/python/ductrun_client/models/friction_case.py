from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength


T = TypeVar("T", bound="FrictionCase")


@_attrs_define
class FrictionCase:
    """The pull at one coefficient of friction, from both ends.

    Attributes:
        friction_coefficient (float):
        reversed_tension (Force): A force with its unit; tension is a force.
        reversed_utilization_percent (float): The same from the other end.
        sidewall_pressure (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The largest share of the limits that is used.
        brake_tension (Force | Unset): A force with its unit; tension is a force.
        reversed_brake_tension (Force | Unset): A force with its unit; tension is a force.
        reversed_within_limits (bool | Unset): The same from the other end.
        within_limits (bool | Unset): Whether it keeps its limits; absent where that was not judged.
    """

    friction_coefficient: float
    reversed_tension: Force
    reversed_utilization_percent: float
    sidewall_pressure: ForcePerLength
    tension: Force
    utilization_percent: float
    brake_tension: Force | Unset = UNSET
    reversed_brake_tension: Force | Unset = UNSET
    reversed_within_limits: bool | Unset = UNSET
    within_limits: bool | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        friction_coefficient = self.friction_coefficient

        reversed_tension = self.reversed_tension.to_dict()

        reversed_utilization_percent = self.reversed_utilization_percent

        sidewall_pressure = self.sidewall_pressure.to_dict()

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_tension, Unset):
            brake_tension = self.brake_tension.to_dict()

        reversed_brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reversed_brake_tension, Unset):
            reversed_brake_tension = self.reversed_brake_tension.to_dict()

        reversed_within_limits = self.reversed_within_limits

        within_limits = self.within_limits

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "friction_coefficient": friction_coefficient,
                "reversed_tension": reversed_tension,
                "reversed_utilization_percent": reversed_utilization_percent,
                "sidewall_pressure": sidewall_pressure,
                "tension": tension,
                "utilization_percent": utilization_percent,
            }
        )
        if brake_tension is not UNSET:
            field_dict["brake_tension"] = brake_tension
        if reversed_brake_tension is not UNSET:
            field_dict["reversed_brake_tension"] = reversed_brake_tension
        if reversed_within_limits is not UNSET:
            field_dict["reversed_within_limits"] = reversed_within_limits
        if within_limits is not UNSET:
            field_dict["within_limits"] = within_limits

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        friction_coefficient = d.pop("friction_coefficient")

        reversed_tension = Force.from_dict(d.pop("reversed_tension"))

        reversed_utilization_percent = d.pop("reversed_utilization_percent")

        sidewall_pressure = ForcePerLength.from_dict(d.pop("sidewall_pressure"))

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        _brake_tension = d.pop("brake_tension", UNSET)
        brake_tension: Force | Unset
        if isinstance(_brake_tension, Unset):
            brake_tension = UNSET
        else:
            brake_tension = Force.from_dict(_brake_tension)

        _reversed_brake_tension = d.pop("reversed_brake_tension", UNSET)
        reversed_brake_tension: Force | Unset
        if isinstance(_reversed_brake_tension, Unset):
            reversed_brake_tension = UNSET
        else:
            reversed_brake_tension = Force.from_dict(_reversed_brake_tension)

        reversed_within_limits = d.pop("reversed_within_limits", UNSET)

        within_limits = d.pop("within_limits", UNSET)

        friction_case = cls(
            friction_coefficient=friction_coefficient,
            reversed_tension=reversed_tension,
            reversed_utilization_percent=reversed_utilization_percent,
            sidewall_pressure=sidewall_pressure,
            tension=tension,
            utilization_percent=utilization_percent,
            brake_tension=brake_tension,
            reversed_brake_tension=reversed_brake_tension,
            reversed_within_limits=reversed_within_limits,
            within_limits=within_limits,
        )

        friction_case.additional_properties = d
        return friction_case

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
