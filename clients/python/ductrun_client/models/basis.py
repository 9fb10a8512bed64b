from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

T = TypeVar("T", bound="Basis")


@_attrs_define
class Basis:
    """What the answer rests on: service version, hash of the tables, code edition, ids of the sources.

    Attributes:
        code (str):
        service (str):
        sources (list[str]):
        tables (str):
    """

    code: str
    service: str
    sources: list[str]
    tables: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        code = self.code

        service = self.service

        sources = self.sources

        tables = self.tables

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code": code,
                "service": service,
                "sources": sources,
                "tables": tables,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        code = d.pop("code")

        service = d.pop("service")

        sources = cast(list[str], d.pop("sources"))

        tables = d.pop("tables")

        basis = cls(
            code=code,
            service=service,
            sources=sources,
            tables=tables,
        )

        basis.additional_properties = d
        return basis

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
