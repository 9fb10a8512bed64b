from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
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
        reversed_verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
        sidewall_pressure (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The largest share of the limits that is used.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        brake_tension (Force | Unset): A force with its unit; tension is a force.
        reversed_brake_tension (Force | Unset): A force with its unit; tension is a force.
    """

    friction_coefficient: float
    reversed_tension: Force
    reversed_utilization_percent: float
    reversed_verdict: Verdict
    sidewall_pressure: ForcePerLength
    tension: Force
    utilization_percent: float
    verdict: Verdict
    brake_tension: Force | Unset = UNSET
    reversed_brake_tension: Force | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        friction_coefficient = self.friction_coefficient

        reversed_tension = self.reversed_tension.to_dict()

        reversed_utilization_percent = self.reversed_utilization_percent

        reversed_verdict = self.reversed_verdict.value

        sidewall_pressure = self.sidewall_pressure.to_dict()

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        verdict = self.verdict.value

        brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_tension, Unset):
            brake_tension = self.brake_tension.to_dict()

        reversed_brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reversed_brake_tension, Unset):
            reversed_brake_tension = self.reversed_brake_tension.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "friction_coefficient": friction_coefficient,
                "reversed_tension": reversed_tension,
                "reversed_utilization_percent": reversed_utilization_percent,
                "reversed_verdict": reversed_verdict,
                "sidewall_pressure": sidewall_pressure,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "verdict": verdict,
            }
        )
        if brake_tension is not UNSET:
            field_dict["brake_tension"] = brake_tension
        if reversed_brake_tension is not UNSET:
            field_dict["reversed_brake_tension"] = reversed_brake_tension

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        friction_coefficient = d.pop("friction_coefficient")

        reversed_tension = Force.from_dict(d.pop("reversed_tension"))

        reversed_utilization_percent = d.pop("reversed_utilization_percent")

        reversed_verdict = Verdict(d.pop("reversed_verdict"))

        sidewall_pressure = ForcePerLength.from_dict(d.pop("sidewall_pressure"))

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        verdict = Verdict(d.pop("verdict"))

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

        friction_case = cls(
            friction_coefficient=friction_coefficient,
            reversed_tension=reversed_tension,
            reversed_utilization_percent=reversed_utilization_percent,
            reversed_verdict=reversed_verdict,
            sidewall_pressure=sidewall_pressure,
            tension=tension,
            utilization_percent=utilization_percent,
            verdict=verdict,
            brake_tension=brake_tension,
            reversed_brake_tension=reversed_brake_tension,
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
