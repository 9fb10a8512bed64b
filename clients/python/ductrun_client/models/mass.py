from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.mass_unit import MassUnit

T = TypeVar("T", bound="Mass")


@_attrs_define
class Mass:
    """A mass with its unit; a force is not a mass: see Force.

    Attributes:
        unit (MassUnit): Units of mass.
        value (float):
    """

    unit: MassUnit
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
        unit = MassUnit(d.pop("unit"))

        value = d.pop("value")

        mass = cls(
            unit=unit,
            value=value,
        )

        return mass
