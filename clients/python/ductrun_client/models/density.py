from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.density_unit import DensityUnit

T = TypeVar("T", bound="Density")


@_attrs_define
class Density:
    """A mass per volume with its unit.

    Attributes:
        unit (DensityUnit): Units of mass per volume.
        value (float):
    """

    unit: DensityUnit
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
        unit = DensityUnit(d.pop("unit"))

        value = d.pop("value")

        density = cls(
            unit=unit,
            value=value,
        )

        return density
