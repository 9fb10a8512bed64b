from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.power_per_length_unit import PowerPerLengthUnit

T = TypeVar("T", bound="PowerPerLength")


@_attrs_define
class PowerPerLength:
    """A power per length with its unit; the heat that a cable gives off is one.

    Attributes:
        unit (PowerPerLengthUnit): Units of power per length.
        value (float):
    """

    unit: PowerPerLengthUnit
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
        unit = PowerPerLengthUnit(d.pop("unit"))

        value = d.pop("value")

        power_per_length = cls(
            unit=unit,
            value=value,
        )

        return power_per_length
