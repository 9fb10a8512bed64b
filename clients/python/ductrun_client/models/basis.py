from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

T = TypeVar("T", bound="Basis")


@_attrs_define
class Basis:
    """What the answer rests on.

    Attributes:
        service_version (str): Version of the service.
        source_ids (list[str]): Ids of the sources that the answer rests on.
        tables_version (str): Hash of all reference tables.
        code_edition (str | Unset): Code and edition followed; absent where a calculation follows none.
    """

    service_version: str
    source_ids: list[str]
    tables_version: str
    code_edition: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        service_version = self.service_version

        source_ids = self.source_ids

        tables_version = self.tables_version

        code_edition = self.code_edition

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "service_version": service_version,
                "source_ids": source_ids,
                "tables_version": tables_version,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        service_version = d.pop("service_version")

        source_ids = cast(list[str], d.pop("source_ids"))

        tables_version = d.pop("tables_version")

        code_edition = d.pop("code_edition", UNSET)

        basis = cls(
            service_version=service_version,
            source_ids=source_ids,
            tables_version=tables_version,
            code_edition=code_edition,
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
