from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.conductor_area_unit import ConductorAreaUnit

T = TypeVar("T", bound="ConductorArea")


@_attrs_define
class ConductorArea:
    """The metal area of a conductor with its unit.

    Attributes:
        unit (ConductorAreaUnit): Units of the metal area of a conductor.
        value (float):
    """

    unit: ConductorAreaUnit
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
        unit = ConductorAreaUnit(d.pop("unit"))

        value = d.pop("value")

        conductor_area = cls(
            unit=unit,
            value=value,
        )

        return conductor_area
