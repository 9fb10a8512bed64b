from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.temperature_difference_unit import TemperatureDifferenceUnit

T = TypeVar("T", bound="TemperatureDifference")


@_attrs_define
class TemperatureDifference:
    """A difference between two temperatures with its unit.

    Attributes:
        unit (TemperatureDifferenceUnit): Units of a difference between two temperatures.
        value (float):
    """

    unit: TemperatureDifferenceUnit
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
        unit = TemperatureDifferenceUnit(d.pop("unit"))

        value = d.pop("value")

        temperature_difference = cls(
            unit=unit,
            value=value,
        )

        return temperature_difference
