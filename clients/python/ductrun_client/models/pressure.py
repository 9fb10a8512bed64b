from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.pressure_unit import PressureUnit

T = TypeVar("T", bound="Pressure")


@_attrs_define
class Pressure:
    """A pressure or stress with its unit.

    Attributes:
        unit (PressureUnit): Units of pressure and stress.
        value (float):
    """

    unit: PressureUnit
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
        unit = PressureUnit(d.pop("unit"))

        value = d.pop("value")

        pressure = cls(
            unit=unit,
            value=value,
        )

        return pressure
