from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.mass_per_length_unit import MassPerLengthUnit

T = TypeVar("T", bound="MassPerLength")


@_attrs_define
class MassPerLength:
    """A mass per length with its unit.

    Attributes:
        unit (MassPerLengthUnit): Units of mass per length.
        value (float):
    """

    unit: MassPerLengthUnit
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
        unit = MassPerLengthUnit(d.pop("unit"))

        value = d.pop("value")

        mass_per_length = cls(
            unit=unit,
            value=value,
        )

        return mass_per_length
