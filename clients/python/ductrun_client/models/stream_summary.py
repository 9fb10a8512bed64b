from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

T = TypeVar("T", bound="StreamSummary")


@_attrs_define
class StreamSummary:
    """The last line of a stream; an answer without it was cut off.

    Attributes:
        failed (int): How many of them ended in a problem.
        items (int): Lines that were answered, blank ones not counted.
        seconds (float): Time from the first byte to the last answer.
    """

    failed: int
    items: int
    seconds: float
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        failed = self.failed

        items = self.items

        seconds = self.seconds

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "failed": failed,
                "items": items,
                "seconds": seconds,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        failed = d.pop("failed")

        items = d.pop("items")

        seconds = d.pop("seconds")

        stream_summary = cls(
            failed=failed,
            items=items,
            seconds=seconds,
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
