from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.length_unit import LengthUnit

T = TypeVar("T", bound="Length")


@_attrs_define
class Length:
    """A length with its unit.

    Attributes:
        unit (LengthUnit): Units of length.
        value (float):
    """

    unit: LengthUnit
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
        unit = LengthUnit(d.pop("unit"))

        value = d.pop("value")

        length = cls(
            unit=unit,
            value=value,
        )

        return length
