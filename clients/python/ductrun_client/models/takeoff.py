from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.takeoff_line import TakeoffLine
    from ..models.takeoff_total import TakeoffTotal


T = TypeVar("T", bound="Takeoff")


@_attrs_define
class Takeoff:
    """All lines in the order of building, and their total by the caller's rates.

    Attributes:
        lines (list[TakeoffLine]): The lines, by group and item.
        total (TakeoffTotal | Unset): What the caller's rates come to; a total with gaps says so.
    """

    lines: list[TakeoffLine]
    total: TakeoffTotal | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        lines = []
        for lines_item_data in self.lines:
            lines_item = lines_item_data.to_dict()
            lines.append(lines_item)

        total: dict[str, Any] | Unset = UNSET
        if not isinstance(self.total, Unset):
            total = self.total.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "lines": lines,
            }
        )
        if total is not UNSET:
            field_dict["total"] = total

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.takeoff_line import TakeoffLine  # noqa: PLC0415
        from ..models.takeoff_total import TakeoffTotal  # noqa: PLC0415

        d = dict(src_dict)
        lines = []
        _lines = d.pop("lines")
        for lines_item_data in _lines:
            lines_item = TakeoffLine.from_dict(lines_item_data)

            lines.append(lines_item)

        _total = d.pop("total", UNSET)
        total: TakeoffTotal | Unset
        if isinstance(_total, Unset):
            total = UNSET
        else:
            total = TakeoffTotal.from_dict(_total)

        takeoff = cls(
            lines=lines,
            total=total,
        )

        takeoff.additional_properties = d
        return takeoff

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
