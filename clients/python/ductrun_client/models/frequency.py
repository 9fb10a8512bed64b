from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.frequency_unit import FrequencyUnit

T = TypeVar("T", bound="Frequency")


@_attrs_define
class Frequency:
    """A frequency with its unit.

    Attributes:
        unit (FrequencyUnit): Units of frequency.
        value (float):
    """

    unit: FrequencyUnit
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
        unit = FrequencyUnit(d.pop("unit"))

        value = d.pop("value")

        frequency = cls(
            unit=unit,
            value=value,
        )

        return frequency
