from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

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
        reversed_within_limits (bool):
        sidewall_pressure (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The larger share of the limits that is used.
        within_limits (bool):
    """

    friction_coefficient: float
    reversed_tension: Force
    reversed_utilization_percent: float
    reversed_within_limits: bool
    sidewall_pressure: ForcePerLength
    tension: Force
    utilization_percent: float
    within_limits: bool
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        friction_coefficient = self.friction_coefficient

        reversed_tension = self.reversed_tension.to_dict()

        reversed_utilization_percent = self.reversed_utilization_percent

        reversed_within_limits = self.reversed_within_limits

        sidewall_pressure = self.sidewall_pressure.to_dict()

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        within_limits = self.within_limits

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "friction_coefficient": friction_coefficient,
                "reversed_tension": reversed_tension,
                "reversed_utilization_percent": reversed_utilization_percent,
                "reversed_within_limits": reversed_within_limits,
                "sidewall_pressure": sidewall_pressure,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "within_limits": within_limits,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        friction_coefficient = d.pop("friction_coefficient")

        reversed_tension = Force.from_dict(d.pop("reversed_tension"))

        reversed_utilization_percent = d.pop("reversed_utilization_percent")

        reversed_within_limits = d.pop("reversed_within_limits")

        sidewall_pressure = ForcePerLength.from_dict(d.pop("sidewall_pressure"))

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        within_limits = d.pop("within_limits")

        friction_case = cls(
            friction_coefficient=friction_coefficient,
            reversed_tension=reversed_tension,
            reversed_utilization_percent=reversed_utilization_percent,
            reversed_within_limits=reversed_within_limits,
            sidewall_pressure=sidewall_pressure,
            tension=tension,
            utilization_percent=utilization_percent,
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
