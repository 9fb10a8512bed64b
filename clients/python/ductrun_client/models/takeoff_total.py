from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

T = TypeVar("T", bound="TakeoffTotal")


@_attrs_define
class TakeoffTotal:
    """What the caller's rates come to; a total with gaps says so.

    Attributes:
        complete (bool): Whether every line has a price.
        lines_without_hours (list[int]): Lines without a rate of labor hours.
        unpriced_lines (list[int]): Lines that have no price, of work too.
        labor_hours (float | Unset): Of all lines with a rate.
        price (float | Unset): Of all priced lines, to the cent.
    """

    complete: bool
    lines_without_hours: list[int]
    unpriced_lines: list[int]
    labor_hours: float | Unset = UNSET
    price: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        complete = self.complete

        lines_without_hours = self.lines_without_hours

        unpriced_lines = self.unpriced_lines

        labor_hours = self.labor_hours

        price = self.price

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "complete": complete,
                "lines_without_hours": lines_without_hours,
                "unpriced_lines": unpriced_lines,
            }
        )
        if labor_hours is not UNSET:
            field_dict["labor_hours"] = labor_hours
        if price is not UNSET:
            field_dict["price"] = price

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        complete = d.pop("complete")

        lines_without_hours = cast(list[int], d.pop("lines_without_hours"))

        unpriced_lines = cast(list[int], d.pop("unpriced_lines"))

        labor_hours = d.pop("labor_hours", UNSET)

        price = d.pop("price", UNSET)

        takeoff_total = cls(
            complete=complete,
            lines_without_hours=lines_without_hours,
            unpriced_lines=unpriced_lines,
            labor_hours=labor_hours,
            price=price,
        )

        takeoff_total.additional_properties = d
        return takeoff_total

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
