from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.angle_unit import AngleUnit

T = TypeVar("T", bound="Angle")


@_attrs_define
class Angle:
    """An angle with its unit.

    Attributes:
        unit (AngleUnit): Units of angle.
        value (float):
    """

    unit: AngleUnit
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
        unit = AngleUnit(d.pop("unit"))

        value = d.pop("value")

        angle = cls(
            unit=unit,
            value=value,
        )

        return angle
