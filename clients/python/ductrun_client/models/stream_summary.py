from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define
from attrs import field as _attrs_field

T = TypeVar("T", bound="StreamSummary")


@_attrs_define
class StreamSummary:
    """The last line of a stream; an answer without it was cut off.

    Attributes:
        failed_count (int): How many of them ended in a problem.
        item_count (int): Lines that were answered, blank ones not counted.
        type_ (Literal['summary']):
    """

    failed_count: int
    item_count: int
    type_: Literal["summary"]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        failed_count = self.failed_count

        item_count = self.item_count

        type_ = self.type_

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "failed_count": failed_count,
                "item_count": item_count,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        failed_count = d.pop("failed_count")

        item_count = d.pop("item_count")

        type_ = cast(Literal["summary"], d.pop("type"))
        if type_ != "summary":
            raise ValueError(f"type must match const 'summary', got '{type_}'")

        stream_summary = cls(
            failed_count=failed_count,
            item_count=item_count,
            type_=type_,
        )

        stream_summary.additional_properties = d
        return stream_summary

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
