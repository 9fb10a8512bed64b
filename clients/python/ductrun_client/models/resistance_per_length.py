from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.resistance_per_length_unit import ResistancePerLengthUnit

T = TypeVar("T", bound="ResistancePerLength")


@_attrs_define
class ResistancePerLength:
    """An electric resistance per length with its unit.

    Attributes:
        unit (ResistancePerLengthUnit): Units of electric resistance per length.
        value (float):
    """

    unit: ResistancePerLengthUnit
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
        unit = ResistancePerLengthUnit(d.pop("unit"))

        value = d.pop("value")

        resistance_per_length = cls(
            unit=unit,
            value=value,
        )

        return resistance_per_length
