from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.rank_measure import RankMeasure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.named_run import NamedRun


T = TypeVar("T", bound="DuctRunComparisonRequest")


@_attrs_define
class DuctRunComparisonRequest:
    """Whole runs to compare with the first of them.

    Attributes:
        runs (list[NamedRun]): The runs; the first is the base that the others are held against.
        rank_by (RankMeasure | Unset): What runs are ranked by, least first: a figure of the whole run, or an item of
            its takeoff.
    """

    runs: list[NamedRun]
    rank_by: RankMeasure | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        runs = []
        for runs_item_data in self.runs:
            runs_item = runs_item_data.to_dict()
            runs.append(runs_item)

        rank_by: str | Unset = UNSET
        if not isinstance(self.rank_by, Unset):
            rank_by = self.rank_by.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "runs": runs,
            }
        )
        if rank_by is not UNSET:
            field_dict["rank_by"] = rank_by

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.named_run import NamedRun  # noqa: PLC0415

        d = dict(src_dict)
        runs = []
        _runs = d.pop("runs")
        for runs_item_data in _runs:
            runs_item = NamedRun.from_dict(runs_item_data)

            runs.append(runs_item)

        _rank_by = d.pop("rank_by", UNSET)
        rank_by: RankMeasure | Unset
        if isinstance(_rank_by, Unset):
            rank_by = UNSET
        else:
            rank_by = RankMeasure(_rank_by)

        duct_run_comparison_request = cls(
            runs=runs,
            rank_by=rank_by,
        )

        return duct_run_comparison_request
