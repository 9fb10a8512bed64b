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

T = TypeVar("T", bound="StreamBasis")


@_attrs_define
class StreamBasis:
    """The first line of a stream: what all its answers rest on.

    Attributes:
        service_version (str): Version of the service.
        tables_version (str): Hash of all tables.
        type_ (Literal['basis']):
    """

    service_version: str
    tables_version: str
    type_: Literal["basis"]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        service_version = self.service_version

        tables_version = self.tables_version

        type_ = self.type_

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "service_version": service_version,
                "tables_version": tables_version,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        service_version = d.pop("service_version")

        tables_version = d.pop("tables_version")

        type_ = cast(Literal["basis"], d.pop("type"))
        if type_ != "basis":
            raise ValueError(f"type must match const 'basis', got '{type_}'")

        stream_basis = cls(
            service_version=service_version,
            tables_version=tables_version,
            type_=type_,
        )

        stream_basis.additional_properties = d
        return stream_basis

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
