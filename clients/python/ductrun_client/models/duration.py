from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.duration_unit import DurationUnit

T = TypeVar("T", bound="Duration")


@_attrs_define
class Duration:
    """A time with its unit.

    Attributes:
        unit (DurationUnit): Units of time.
        value (float):
    """

    unit: DurationUnit
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
        unit = DurationUnit(d.pop("unit"))

        value = d.pop("value")

        duration = cls(
            unit=unit,
            value=value,
        )

        return duration
