from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.current_unit import CurrentUnit

T = TypeVar("T", bound="Current")


@_attrs_define
class Current:
    """An electric current with its unit.

    Attributes:
        unit (CurrentUnit): Units of electric current.
        value (float):
    """

    unit: CurrentUnit
    value: float

    def to_dict(self) -> dict[str, Any]:
        unit = self.unit.value

        value = self.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "unit": unit,
                "value": value,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        unit = CurrentUnit(d.pop("unit"))

        value = d.pop("value")

        current = cls(
            unit=unit,
            value=value,
        )

        return current
