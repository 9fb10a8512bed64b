from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.fill_limit_rule import FillLimitRule
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.size_candidate import SizeCandidate
    from ..models.size_change import SizeChange


T = TypeVar("T", bound="ConduitSizeResult")


@_attrs_define
class ConduitSizeResult:
    """The smallest size that complies, its neighbors, and what small changes would do.

    Attributes:
        candidates (list[SizeCandidate]): Every trade size of the type, smallest first.
        changes (list[SizeChange]): For every line: one conductor more, and one conductor size larger.
        conductor_area (Area): An area with its unit.
        conductor_count (int): Conductors and cables counted.
        limit_percent (float): Percentage of Table 1 that applies.
        limit_reason (str): Why that line applies, in a sentence.
        limit_rule (FillLimitRule): Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit,
            or that of a nipple.
        next_trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
        trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
    """

    candidates: list[SizeCandidate]
    changes: list[SizeChange]
    conductor_area: Area
    conductor_count: int
    limit_percent: float
    limit_reason: str
    limit_rule: FillLimitRule
    next_trade_size: TradeSize | Unset = UNSET
    trade_size: TradeSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        candidates = []
        for candidates_item_data in self.candidates:
            candidates_item = candidates_item_data.to_dict()
            candidates.append(candidates_item)

        changes = []
        for changes_item_data in self.changes:
            changes_item = changes_item_data.to_dict()
            changes.append(changes_item)

        conductor_area = self.conductor_area.to_dict()

        conductor_count = self.conductor_count

        limit_percent = self.limit_percent

        limit_reason = self.limit_reason

        limit_rule = self.limit_rule.value

        next_trade_size: str | Unset = UNSET
        if not isinstance(self.next_trade_size, Unset):
            next_trade_size = self.next_trade_size.value

        trade_size: str | Unset = UNSET
        if not isinstance(self.trade_size, Unset):
            trade_size = self.trade_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "candidates": candidates,
                "changes": changes,
                "conductor_area": conductor_area,
                "conductor_count": conductor_count,
                "limit_percent": limit_percent,
                "limit_reason": limit_reason,
                "limit_rule": limit_rule,
            }
        )
        if next_trade_size is not UNSET:
            field_dict["next_trade_size"] = next_trade_size
        if trade_size is not UNSET:
            field_dict["trade_size"] = trade_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.size_candidate import SizeCandidate  # noqa: PLC0415
        from ..models.size_change import SizeChange  # noqa: PLC0415

        d = dict(src_dict)
        candidates = []
        _candidates = d.pop("candidates")
        for candidates_item_data in _candidates:
            candidates_item = SizeCandidate.from_dict(candidates_item_data)

            candidates.append(candidates_item)

        changes = []
        _changes = d.pop("changes")
        for changes_item_data in _changes:
            changes_item = SizeChange.from_dict(changes_item_data)

            changes.append(changes_item)

        conductor_area = Area.from_dict(d.pop("conductor_area"))

        conductor_count = d.pop("conductor_count")

        limit_percent = d.pop("limit_percent")

        limit_reason = d.pop("limit_reason")

        limit_rule = FillLimitRule(d.pop("limit_rule"))

        _next_trade_size = d.pop("next_trade_size", UNSET)
        next_trade_size: TradeSize | Unset
        if isinstance(_next_trade_size, Unset):
            next_trade_size = UNSET
        else:
            next_trade_size = TradeSize(_next_trade_size)

        _trade_size = d.pop("trade_size", UNSET)
        trade_size: TradeSize | Unset
        if isinstance(_trade_size, Unset):
            trade_size = UNSET
        else:
            trade_size = TradeSize(_trade_size)

        conduit_size_result = cls(
            candidates=candidates,
            changes=changes,
            conductor_area=conductor_area,
            conductor_count=conductor_count,
            limit_percent=limit_percent,
            limit_reason=limit_reason,
            limit_rule=limit_rule,
            next_trade_size=next_trade_size,
            trade_size=trade_size,
        )

        conduit_size_result.additional_properties = d
        return conduit_size_result

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
