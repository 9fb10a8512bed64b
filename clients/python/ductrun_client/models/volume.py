from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.volume_unit import VolumeUnit

T = TypeVar("T", bound="Volume")


@_attrs_define
class Volume:
    """A volume with its unit.

    Attributes:
        unit (VolumeUnit): Units of volume.
        value (float):
    """

    unit: VolumeUnit
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
        unit = VolumeUnit(d.pop("unit"))

        value = d.pop("value")

        volume = cls(
            unit=unit,
            value=value,
        )

        return volume
