from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.power_unit import PowerUnit

T = TypeVar("T", bound="Power")


@_attrs_define
class Power:
    """A power with its unit.

    Attributes:
        unit (PowerUnit): Units of power.
        value (float):
    """

    unit: PowerUnit
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
        unit = PowerUnit(d.pop("unit"))

        value = d.pop("value")

        power = cls(
            unit=unit,
            value=value,
        )

        return power
