from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.pull_direction import PullDirection
from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.braking_case import BrakingCase
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.length import Length


T = TypeVar("T", bound="PlannedPull")


@_attrs_define
class PlannedPull:
    """One pull of the plan.

    Attributes:
        bend_total (Angle): An angle with its unit.
        direction (PullDirection): From which end the cable is pulled.
        end (Length): A length with its unit.
        highest_tension (Force): A force with its unit; tension is a force.
        start (Length): A length with its unit.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The largest share of its limits that it uses.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        brake_tension (Force | Unset): A force with its unit; tension is a force.
        braking_case (BrakingCase | Unset): The pull at the low friction, at which the cable runs away most, from its
            own least brake.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    bend_total: Angle
    direction: PullDirection
    end: Length
    highest_tension: Force
    start: Length
    tension: Force
    utilization_percent: float
    verdict: Verdict
    brake_tension: Force | Unset = UNSET
    braking_case: BrakingCase | Unset = UNSET
    sidewall_pressure: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        bend_total = self.bend_total.to_dict()

        direction = self.direction.value

        end = self.end.to_dict()

        highest_tension = self.highest_tension.to_dict()

        start = self.start.to_dict()

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        verdict = self.verdict.value

        brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_tension, Unset):
            brake_tension = self.brake_tension.to_dict()

        braking_case: dict[str, Any] | Unset = UNSET
        if not isinstance(self.braking_case, Unset):
            braking_case = self.braking_case.to_dict()

        sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sidewall_pressure, Unset):
            sidewall_pressure = self.sidewall_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "bend_total": bend_total,
                "direction": direction,
                "end": end,
                "highest_tension": highest_tension,
                "start": start,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "verdict": verdict,
            }
        )
        if brake_tension is not UNSET:
            field_dict["brake_tension"] = brake_tension
        if braking_case is not UNSET:
            field_dict["braking_case"] = braking_case
        if sidewall_pressure is not UNSET:
            field_dict["sidewall_pressure"] = sidewall_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.braking_case import BrakingCase  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        bend_total = Angle.from_dict(d.pop("bend_total"))

        direction = PullDirection(d.pop("direction"))

        end = Length.from_dict(d.pop("end"))

        highest_tension = Force.from_dict(d.pop("highest_tension"))

        start = Length.from_dict(d.pop("start"))

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        verdict = Verdict(d.pop("verdict"))

        _brake_tension = d.pop("brake_tension", UNSET)
        brake_tension: Force | Unset
        if isinstance(_brake_tension, Unset):
            brake_tension = UNSET
        else:
            brake_tension = Force.from_dict(_brake_tension)

        _braking_case = d.pop("braking_case", UNSET)
        braking_case: BrakingCase | Unset
        if isinstance(_braking_case, Unset):
            braking_case = UNSET
        else:
            braking_case = BrakingCase.from_dict(_braking_case)

        _sidewall_pressure = d.pop("sidewall_pressure", UNSET)
        sidewall_pressure: ForcePerLength | Unset
        if isinstance(_sidewall_pressure, Unset):
            sidewall_pressure = UNSET
        else:
            sidewall_pressure = ForcePerLength.from_dict(_sidewall_pressure)

        planned_pull = cls(
            bend_total=bend_total,
            direction=direction,
            end=end,
            highest_tension=highest_tension,
            start=start,
            tension=tension,
            utilization_percent=utilization_percent,
            verdict=verdict,
            brake_tension=brake_tension,
            braking_case=braking_case,
            sidewall_pressure=sidewall_pressure,
        )

        planned_pull.additional_properties = d
        return planned_pull

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
