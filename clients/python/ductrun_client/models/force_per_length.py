from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.force_per_length_unit import ForcePerLengthUnit

T = TypeVar("T", bound="ForcePerLength")


@_attrs_define
class ForcePerLength:
    """A force per length with its unit; sidewall pressure is one.

    Attributes:
        unit (ForcePerLengthUnit): Units of force per length.
        value (float):
    """

    unit: ForcePerLengthUnit
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
        unit = ForcePerLengthUnit(d.pop("unit"))

        value = d.pop("value")

        force_per_length = cls(
            unit=unit,
            value=value,
        )

        return force_per_length
