from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="ComparedLength")


@_attrs_define
class ComparedLength:
    """A length of a run beside that of the base.

    Attributes:
        length (Length): A length with its unit.
        difference (Length | Unset): A length with its unit.
        difference_percent (float | Unset): The difference in percent of the base.
    """

    length: Length
    difference: Length | Unset = UNSET
    difference_percent: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        length = self.length.to_dict()

        difference: dict[str, Any] | Unset = UNSET
        if not isinstance(self.difference, Unset):
            difference = self.difference.to_dict()

        difference_percent = self.difference_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "length": length,
            }
        )
        if difference is not UNSET:
            field_dict["difference"] = difference
        if difference_percent is not UNSET:
            field_dict["difference_percent"] = difference_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        length = Length.from_dict(d.pop("length"))

        _difference = d.pop("difference", UNSET)
        difference: Length | Unset
        if isinstance(_difference, Unset):
            difference = UNSET
        else:
            difference = Length.from_dict(_difference)

        difference_percent = d.pop("difference_percent", UNSET)

        compared_length = cls(
            length=length,
            difference=difference,
            difference_percent=difference_percent,
        )

        compared_length.additional_properties = d
        return compared_length

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
