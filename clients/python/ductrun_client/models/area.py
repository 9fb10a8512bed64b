from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.area_unit import AreaUnit

T = TypeVar("T", bound="Area")


@_attrs_define
class Area:
    """An area with its unit.

    Attributes:
        unit (AreaUnit): Units of area.
        value (float):
    """

    unit: AreaUnit
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
        unit = AreaUnit(d.pop("unit"))

        value = d.pop("value")

        area = cls(
            unit=unit,
            value=value,
        )

        return area
