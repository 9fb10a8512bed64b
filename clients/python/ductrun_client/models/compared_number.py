from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

T = TypeVar("T", bound="ComparedNumber")


@_attrs_define
class ComparedNumber:
    """A figure of a run beside that of the base.

    Attributes:
        value (float):
        difference (float | Unset): Less that of the base, where it differs.
        difference_percent (float | Unset): The difference in percent of the base.
    """

    value: float
    difference: float | Unset = UNSET
    difference_percent: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        value = self.value

        difference = self.difference

        difference_percent = self.difference_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "value": value,
            }
        )
        if difference is not UNSET:
            field_dict["difference"] = difference
        if difference_percent is not UNSET:
            field_dict["difference_percent"] = difference_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        value = d.pop("value")

        difference = d.pop("difference", UNSET)

        difference_percent = d.pop("difference_percent", UNSET)

        compared_number = cls(
            value=value,
            difference=difference,
            difference_percent=difference_percent,
        )

        compared_number.additional_properties = d
        return compared_number

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
