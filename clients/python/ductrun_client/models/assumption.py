from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Assumption")


@_attrs_define
class Assumption:
    """A value taken because the caller gave none, where it comes from, and every member it stands in for.

    Attributes:
        pointers (list[str]):
        source (str):
        value (AnyQuantity | bool | float | str):
    """

    pointers: list[str]
    source: str
    value: AnyQuantity | bool | float | str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        pointers = self.pointers

        source = self.source

        value: bool | dict[str, Any] | float | str
        if isinstance(self.value, AnyQuantity):
            value = self.value.to_dict()
        else:
            value = self.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "pointers": pointers,
                "source": source,
                "value": value,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        pointers = cast(list[str], d.pop("pointers"))

        source = d.pop("source")

        def _parse_value(data: object) -> AnyQuantity | bool | float | str:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                value_type_3 = AnyQuantity.from_dict(data)

                return value_type_3
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            return cast(AnyQuantity | bool | float | str, data)

        value = _parse_value(d.pop("value"))

        assumption = cls(
            pointers=pointers,
            source=source,
            value=value,
        )

        assumption.additional_properties = d
        return assumption

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
