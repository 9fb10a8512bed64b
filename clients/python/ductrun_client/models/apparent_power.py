from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.apparent_power_unit import ApparentPowerUnit

T = TypeVar("T", bound="ApparentPower")


@_attrs_define
class ApparentPower:
    """An apparent power with its unit.

    Attributes:
        unit (ApparentPowerUnit): Units of apparent power.
        value (float):
    """

    unit: ApparentPowerUnit
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
        unit = ApparentPowerUnit(d.pop("unit"))

        value = d.pop("value")

        apparent_power = cls(
            unit=unit,
            value=value,
        )

        return apparent_power
