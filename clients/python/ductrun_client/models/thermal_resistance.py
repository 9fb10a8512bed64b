from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.thermal_resistance_unit import ThermalResistanceUnit

T = TypeVar("T", bound="ThermalResistance")


@_attrs_define
class ThermalResistance:
    """A thermal resistance of a length, as of a metre or a foot of a layer, with its unit.

    Attributes:
        unit (ThermalResistanceUnit): Units of thermal resistance of a length; the trade in the US says it in thermal
            ohm-feet.
        value (float):
    """

    unit: ThermalResistanceUnit
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
        unit = ThermalResistanceUnit(d.pop("unit"))

        value = d.pop("value")

        thermal_resistance = cls(
            unit=unit,
            value=value,
        )

        return thermal_resistance
