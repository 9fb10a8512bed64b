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


T = TypeVar("T", bound="FillResult")


@_attrs_define
class FillResult:
    """How full the conduit is, and against which limit.

    Attributes:
        conductor_area (Area): An area with its unit.
        conductor_count (int): Conductors and cables counted.
        conduit_area (Area): An area with its unit.
        fill_percent (float): Conductor area in percent of conduit area.
        limit_area (Area): An area with its unit.
        limit_percent (float): Percentage of Table 1 that applies.
        limit_reason (str): Why that line applies, in a sentence.
        limit_rule (FillLimitRule): Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit,
            or that of a nipple.
        rounding_decided (bool): Whether it complies only by the 0.8 rule of Note 7.
        spare_area (Area): An area with its unit.
        jam_ratio (float | Unset): Conduit over cable diameter; for three conductors or cables only.
        jam_ratio_with_ovality (float | Unset): The same times 1.05, the handbook allowance for ovality in bends.
        smallest_trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
    """

    conductor_area: Area
    conductor_count: int
    conduit_area: Area
    fill_percent: float
    limit_area: Area
    limit_percent: float
    limit_reason: str
    limit_rule: FillLimitRule
    rounding_decided: bool
    spare_area: Area
    jam_ratio: float | Unset = UNSET
    jam_ratio_with_ovality: float | Unset = UNSET
    smallest_trade_size: TradeSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conductor_area = self.conductor_area.to_dict()

        conductor_count = self.conductor_count

        conduit_area = self.conduit_area.to_dict()

        fill_percent = self.fill_percent

        limit_area = self.limit_area.to_dict()

        limit_percent = self.limit_percent

        limit_reason = self.limit_reason

        limit_rule = self.limit_rule.value

        rounding_decided = self.rounding_decided

        spare_area = self.spare_area.to_dict()

        jam_ratio = self.jam_ratio

        jam_ratio_with_ovality = self.jam_ratio_with_ovality

        smallest_trade_size: str | Unset = UNSET
        if not isinstance(self.smallest_trade_size, Unset):
            smallest_trade_size = self.smallest_trade_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conductor_area": conductor_area,
                "conductor_count": conductor_count,
                "conduit_area": conduit_area,
                "fill_percent": fill_percent,
                "limit_area": limit_area,
                "limit_percent": limit_percent,
                "limit_reason": limit_reason,
                "limit_rule": limit_rule,
                "rounding_decided": rounding_decided,
                "spare_area": spare_area,
            }
        )
        if jam_ratio is not UNSET:
            field_dict["jam_ratio"] = jam_ratio
        if jam_ratio_with_ovality is not UNSET:
            field_dict["jam_ratio_with_ovality"] = jam_ratio_with_ovality
        if smallest_trade_size is not UNSET:
            field_dict["smallest_trade_size"] = smallest_trade_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415

        d = dict(src_dict)
        conductor_area = Area.from_dict(d.pop("conductor_area"))

        conductor_count = d.pop("conductor_count")

        conduit_area = Area.from_dict(d.pop("conduit_area"))

        fill_percent = d.pop("fill_percent")

        limit_area = Area.from_dict(d.pop("limit_area"))

        limit_percent = d.pop("limit_percent")

        limit_reason = d.pop("limit_reason")

        limit_rule = FillLimitRule(d.pop("limit_rule"))

        rounding_decided = d.pop("rounding_decided")

        spare_area = Area.from_dict(d.pop("spare_area"))

        jam_ratio = d.pop("jam_ratio", UNSET)

        jam_ratio_with_ovality = d.pop("jam_ratio_with_ovality", UNSET)

        _smallest_trade_size = d.pop("smallest_trade_size", UNSET)
        smallest_trade_size: TradeSize | Unset
        if isinstance(_smallest_trade_size, Unset):
            smallest_trade_size = UNSET
        else:
            smallest_trade_size = TradeSize(_smallest_trade_size)

        fill_result = cls(
            conductor_area=conductor_area,
            conductor_count=conductor_count,
            conduit_area=conduit_area,
            fill_percent=fill_percent,
            limit_area=limit_area,
            limit_percent=limit_percent,
            limit_reason=limit_reason,
            limit_rule=limit_rule,
            rounding_decided=rounding_decided,
            spare_area=spare_area,
            jam_ratio=jam_ratio,
            jam_ratio_with_ovality=jam_ratio_with_ovality,
            smallest_trade_size=smallest_trade_size,
        )

        fill_result.additional_properties = d
        return fill_result

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
