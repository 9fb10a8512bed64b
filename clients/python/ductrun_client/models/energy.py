from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.energy_unit import EnergyUnit

T = TypeVar("T", bound="Energy")


@_attrs_define
class Energy:
    """An energy with its unit.

    Attributes:
        unit (EnergyUnit): Units of energy.
        value (float):
    """

    unit: EnergyUnit
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
        unit = EnergyUnit(d.pop("unit"))

        value = d.pop("value")

        energy = cls(
            unit=unit,
            value=value,
        )

        return energy
