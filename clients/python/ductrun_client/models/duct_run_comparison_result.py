from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.rank_measure import RankMeasure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.compared_line import ComparedLine
    from ..models.compared_run import ComparedRun


T = TypeVar("T", bound="DuctRunComparisonResult")


@_attrs_define
class DuctRunComparisonResult:
    """Runs side by side; the first is the base.

    Attributes:
        alike_line_count (int): Lines that are the same in all runs, and not shown.
        lines (list[ComparedLine]): Lines of the takeoffs in which a run differs.
        runs (list[ComparedRun]): The runs as they were given.
        rank_by (RankMeasure | Unset): What runs are ranked by, least first: a figure of the whole run, or an item of
            its takeoff.
    """

    alike_line_count: int
    lines: list[ComparedLine]
    runs: list[ComparedRun]
    rank_by: RankMeasure | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        alike_line_count = self.alike_line_count

        lines = []
        for lines_item_data in self.lines:
            lines_item = lines_item_data.to_dict()
            lines.append(lines_item)

        runs = []
        for runs_item_data in self.runs:
            runs_item = runs_item_data.to_dict()
            runs.append(runs_item)

        rank_by: str | Unset = UNSET
        if not isinstance(self.rank_by, Unset):
            rank_by = self.rank_by.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "alike_line_count": alike_line_count,
                "lines": lines,
                "runs": runs,
            }
        )
        if rank_by is not UNSET:
            field_dict["rank_by"] = rank_by

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.compared_line import ComparedLine  # noqa: PLC0415
        from ..models.compared_run import ComparedRun  # noqa: PLC0415

        d = dict(src_dict)
        alike_line_count = d.pop("alike_line_count")

        lines = []
        _lines = d.pop("lines")
        for lines_item_data in _lines:
            lines_item = ComparedLine.from_dict(lines_item_data)

            lines.append(lines_item)

        runs = []
        _runs = d.pop("runs")
        for runs_item_data in _runs:
            runs_item = ComparedRun.from_dict(runs_item_data)

            runs.append(runs_item)

        _rank_by = d.pop("rank_by", UNSET)
        rank_by: RankMeasure | Unset
        if isinstance(_rank_by, Unset):
            rank_by = UNSET
        else:
            rank_by = RankMeasure(_rank_by)

        duct_run_comparison_result = cls(
            alike_line_count=alike_line_count,
            lines=lines,
            runs=runs,
            rank_by=rank_by,
        )

        duct_run_comparison_result.additional_properties = d
        return duct_run_comparison_result

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
