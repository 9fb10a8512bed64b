from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.pull_direction import PullDirection
from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.length import Length
    from ..models.ordered_cable import OrderedCable
    from ..models.pull_plan_result import PullPlanResult
    from ..models.pull_tension_result import PullTensionResult


T = TypeVar("T", bound="CircuitPulls")


@_attrs_define
class CircuitPulls:
    """One pull of a circuit between two stops.

    Attributes:
        cables_to_order (list[OrderedCable]): For one duct.
        direction (PullDirection): From which end the cable is pulled.
        ducts (list[str]):
        end (str): Stop nearer the end of the run.
        feed_from (str): Stop where the reel stands.
        length (Length): A length with its unit.
        pull (PullTensionResult): The pull from the first section to the last, and from the other end.
        pull_to (str): Stop where the rope is pulled.
        start (str): Stop nearer the start of the run.
        stop_tension (Force): A force with its unit; tension is a force.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        plan (PullPlanResult | Unset): The fewest pulls, or the bend that forbids any.
    """

    cables_to_order: list[OrderedCable]
    direction: PullDirection
    ducts: list[str]
    end: str
    feed_from: str
    length: Length
    pull: PullTensionResult
    pull_to: str
    start: str
    stop_tension: Force
    verdict: Verdict
    plan: PullPlanResult | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        cables_to_order = []
        for cables_to_order_item_data in self.cables_to_order:
            cables_to_order_item = cables_to_order_item_data.to_dict()
            cables_to_order.append(cables_to_order_item)

        direction = self.direction.value

        ducts = self.ducts

        end = self.end

        feed_from = self.feed_from

        length = self.length.to_dict()

        pull = self.pull.to_dict()

        pull_to = self.pull_to

        start = self.start

        stop_tension = self.stop_tension.to_dict()

        verdict = self.verdict.value

        plan: dict[str, Any] | Unset = UNSET
        if not isinstance(self.plan, Unset):
            plan = self.plan.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "cables_to_order": cables_to_order,
                "direction": direction,
                "ducts": ducts,
                "end": end,
                "feed_from": feed_from,
                "length": length,
                "pull": pull,
                "pull_to": pull_to,
                "start": start,
                "stop_tension": stop_tension,
                "verdict": verdict,
            }
        )
        if plan is not UNSET:
            field_dict["plan"] = plan

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.ordered_cable import OrderedCable  # noqa: PLC0415
        from ..models.pull_plan_result import PullPlanResult  # noqa: PLC0415
        from ..models.pull_tension_result import PullTensionResult  # noqa: PLC0415

        d = dict(src_dict)
        cables_to_order = []
        _cables_to_order = d.pop("cables_to_order")
        for cables_to_order_item_data in _cables_to_order:
            cables_to_order_item = OrderedCable.from_dict(cables_to_order_item_data)

            cables_to_order.append(cables_to_order_item)

        direction = PullDirection(d.pop("direction"))

        ducts = cast(list[str], d.pop("ducts"))

        end = d.pop("end")

        feed_from = d.pop("feed_from")

        length = Length.from_dict(d.pop("length"))

        pull = PullTensionResult.from_dict(d.pop("pull"))

        pull_to = d.pop("pull_to")

        start = d.pop("start")

        stop_tension = Force.from_dict(d.pop("stop_tension"))

        verdict = Verdict(d.pop("verdict"))

        _plan = d.pop("plan", UNSET)
        plan: PullPlanResult | Unset
        if isinstance(_plan, Unset):
            plan = UNSET
        else:
            plan = PullPlanResult.from_dict(_plan)

        circuit_pulls = cls(
            cables_to_order=cables_to_order,
            direction=direction,
            ducts=ducts,
            end=end,
            feed_from=feed_from,
            length=length,
            pull=pull,
            pull_to=pull_to,
            start=start,
            stop_tension=stop_tension,
            verdict=verdict,
            plan=plan,
        )

        circuit_pulls.additional_properties = d
        return circuit_pulls

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
