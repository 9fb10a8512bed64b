from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.voltage_unit import VoltageUnit

T = TypeVar("T", bound="Voltage")


@_attrs_define
class Voltage:
    """A voltage with its unit.

    Attributes:
        unit (VoltageUnit): Units of voltage.
        value (float):
    """

    unit: VoltageUnit
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
        unit = VoltageUnit(d.pop("unit"))

        value = d.pop("value")

        voltage = cls(
            unit=unit,
            value=value,
        )

        return voltage
