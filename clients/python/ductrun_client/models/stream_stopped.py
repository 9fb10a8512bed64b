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

from ..models.stream_stopped_reason import StreamStoppedReason

T = TypeVar("T", bound="StreamStopped")


@_attrs_define
class StreamStopped:
    """The last line of a stream that the service ended before its sender did: what was answered counts, and the lines
    after `line` can be sent again.

        Attributes:
            failed_count (int): How many of them ended in a problem.
            item_count (int): Lines that were answered, blank ones not counted.
            line (int): Number of the last line that was looked at.
            reason (StreamStoppedReason): `stopping`: this process is being stopped; `idle`: nothing came for too long.
            type_ (Literal['stopped']):
    """

    failed_count: int
    item_count: int
    line: int
    reason: StreamStoppedReason
    type_: Literal["stopped"]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        failed_count = self.failed_count

        item_count = self.item_count

        line = self.line

        reason = self.reason.value

        type_ = self.type_

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "failed_count": failed_count,
                "item_count": item_count,
                "line": line,
                "reason": reason,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        failed_count = d.pop("failed_count")

        item_count = d.pop("item_count")

        line = d.pop("line")

        reason = StreamStoppedReason(d.pop("reason"))

        type_ = cast(Literal["stopped"], d.pop("type"))
        if type_ != "stopped":
            raise ValueError(f"type must match const 'stopped', got '{type_}'")

        stream_stopped = cls(
            failed_count=failed_count,
            item_count=item_count,
            line=line,
            reason=reason,
            type_=type_,
        )

        stream_stopped.additional_properties = d
        return stream_stopped

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
