from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.conductor_row import ConductorRow


T = TypeVar("T", bound="ConductorPage")


@_attrs_define
class ConductorPage:
    """A page of conductors; next_offset leads to the next one, if there is one.

    Attributes:
        offset (int):
        rows (list[ConductorRow]):
        tables (str):
        total_count (int):
        next_offset (int | Unset):
    """

    offset: int
    rows: list[ConductorRow]
    tables: str
    total_count: int
    next_offset: int | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        offset = self.offset

        rows = []
        for rows_item_data in self.rows:
            rows_item = rows_item_data.to_dict()
            rows.append(rows_item)

        tables = self.tables

        total_count = self.total_count

        next_offset = self.next_offset

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "offset": offset,
                "rows": rows,
                "tables": tables,
                "total_count": total_count,
            }
        )
        if next_offset is not UNSET:
            field_dict["next_offset"] = next_offset

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_row import ConductorRow  # noqa: PLC0415

        d = dict(src_dict)
        offset = d.pop("offset")

        rows = []
        _rows = d.pop("rows")
        for rows_item_data in _rows:
            rows_item = ConductorRow.from_dict(rows_item_data)

            rows.append(rows_item)

        tables = d.pop("tables")

        total_count = d.pop("total_count")

        next_offset = d.pop("next_offset", UNSET)

        conductor_page = cls(
            offset=offset,
            rows=rows,
            tables=tables,
            total_count=total_count,
            next_offset=next_offset,
        )

        conductor_page.additional_properties = d
        return conductor_page

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
