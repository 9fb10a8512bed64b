from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.thermal_resistivity_unit import ThermalResistivityUnit

T = TypeVar("T", bound="ThermalResistivity")


@_attrs_define
class ThermalResistivity:
    """A thermal resistivity with its unit.

    Attributes:
        unit (ThermalResistivityUnit): Units of thermal resistivity; the trade in the US says its rho in degC.cm/W.
        value (float):
    """

    unit: ThermalResistivityUnit
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
        unit = ThermalResistivityUnit(d.pop("unit"))

        value = d.pop("value")

        thermal_resistivity = cls(
            unit=unit,
            value=value,
        )

        return thermal_resistivity
