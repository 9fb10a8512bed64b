from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.temperature_unit import TemperatureUnit

T = TypeVar("T", bound="Temperature")


@_attrs_define
class Temperature:
    """A temperature with its unit.

    Attributes:
        unit (TemperatureUnit): Units of temperature, each with its own zero.
        value (float):
    """

    unit: TemperatureUnit
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
        unit = TemperatureUnit(d.pop("unit"))

        value = d.pop("value")

        temperature = cls(
            unit=unit,
            value=value,
        )

        return temperature
