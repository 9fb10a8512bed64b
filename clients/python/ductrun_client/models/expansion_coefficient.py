from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.expansion_coefficient_unit import ExpansionCoefficientUnit

T = TypeVar("T", bound="ExpansionCoefficient")


@_attrs_define
class ExpansionCoefficient:
    """A coefficient of linear thermal expansion with its unit.

    Attributes:
        unit (ExpansionCoefficientUnit): Units of a coefficient of thermal expansion.
        value (float):
    """

    unit: ExpansionCoefficientUnit
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
        unit = ExpansionCoefficientUnit(d.pop("unit"))

        value = d.pop("value")

        expansion_coefficient = cls(
            unit=unit,
            value=value,
        )

        return expansion_coefficient
