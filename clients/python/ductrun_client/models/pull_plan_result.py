from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.planned_pull import PlannedPull


T = TypeVar("T", bound="PullPlanResult")


@_attrs_define
class PullPlanResult:
    """The fewest pulls, or the bend that forbids any.

    Attributes:
        box_count (int): Pull points between them.
        pull_count (int): Pulls of the plan.
        pulls (list[PlannedPull]): The pulls in the order of the route; none if no plan keeps the limits.
        forbidding_section (int | Unset): Section of the route, from 0, that forbids any plan.
        worst_utilization_percent (float | Unset): Largest share of its limits that any pull uses; with so many judged
            pulls the lowest there is.
    """

    box_count: int
    pull_count: int
    pulls: list[PlannedPull]
    forbidding_section: int | Unset = UNSET
    worst_utilization_percent: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        box_count = self.box_count

        pull_count = self.pull_count

        pulls = []
        for pulls_item_data in self.pulls:
            pulls_item = pulls_item_data.to_dict()
            pulls.append(pulls_item)

        forbidding_section = self.forbidding_section

        worst_utilization_percent = self.worst_utilization_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "box_count": box_count,
                "pull_count": pull_count,
                "pulls": pulls,
            }
        )
        if forbidding_section is not UNSET:
            field_dict["forbidding_section"] = forbidding_section
        if worst_utilization_percent is not UNSET:
            field_dict["worst_utilization_percent"] = worst_utilization_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.planned_pull import PlannedPull  # noqa: PLC0415

        d = dict(src_dict)
        box_count = d.pop("box_count")

        pull_count = d.pop("pull_count")

        pulls = []
        _pulls = d.pop("pulls")
        for pulls_item_data in _pulls:
            pulls_item = PlannedPull.from_dict(pulls_item_data)

            pulls.append(pulls_item)

        forbidding_section = d.pop("forbidding_section", UNSET)

        worst_utilization_percent = d.pop("worst_utilization_percent", UNSET)

        pull_plan_result = cls(
            box_count=box_count,
            pull_count=pull_count,
            pulls=pulls,
            forbidding_section=forbidding_section,
            worst_utilization_percent=worst_utilization_percent,
        )

        pull_plan_result.additional_properties = d
        return pull_plan_result

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
