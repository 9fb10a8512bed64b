from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_change import ConductorChange
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

T = TypeVar("T", bound="SizeChange")


@_attrs_define
class SizeChange:
    """What one change of the set does to the size.

    Attributes:
        cable_index (int): Line of `cables` that changes, from 0.
        change (ConductorChange): A small change of one line of cables.
        trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
    """

    cable_index: int
    change: ConductorChange
    trade_size: TradeSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        cable_index = self.cable_index

        change = self.change.value

        trade_size: str | Unset = UNSET
        if not isinstance(self.trade_size, Unset):
            trade_size = self.trade_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "cable_index": cable_index,
                "change": change,
            }
        )
        if trade_size is not UNSET:
            field_dict["trade_size"] = trade_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        cable_index = d.pop("cable_index")

        change = ConductorChange(d.pop("change"))

        _trade_size = d.pop("trade_size", UNSET)
        trade_size: TradeSize | Unset
        if isinstance(_trade_size, Unset):
            trade_size = UNSET
        else:
            trade_size = TradeSize(_trade_size)

        size_change = cls(
            cable_index=cable_index,
            change=change,
            trade_size=trade_size,
        )

        size_change.additional_properties = d
        return size_change

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
