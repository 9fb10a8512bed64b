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
        code_edition (str):
        service_version (str):
        source_ids (list[str]):
        tables_version (str):
    """

    code_edition: str
    service_version: str
    source_ids: list[str]
    tables_version: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        code_edition = self.code_edition

        service_version = self.service_version

        source_ids = self.source_ids

        tables_version = self.tables_version

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code_edition": code_edition,
                "service_version": service_version,
                "source_ids": source_ids,
                "tables_version": tables_version,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        code_edition = d.pop("code_edition")

        service_version = d.pop("service_version")

        source_ids = cast(list[str], d.pop("source_ids"))

        tables_version = d.pop("tables_version")

        basis = cls(
            code_edition=code_edition,
            service_version=service_version,
            source_ids=source_ids,
            tables_version=tables_version,
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
