from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.force_unit import ForceUnit

T = TypeVar("T", bound="Force")


@_attrs_define
class Force:
    """A force with its unit; tension is a force.

    Attributes:
        unit (ForceUnit): Units of force.
        value (float):
    """

    unit: ForceUnit
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
        unit = ForceUnit(d.pop("unit"))

        value = d.pop("value")

        force = cls(
            unit=unit,
            value=value,
        )

        return force
