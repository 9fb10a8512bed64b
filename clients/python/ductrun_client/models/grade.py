from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.grade_unit import GradeUnit

T = TypeVar("T", bound="Grade")


@_attrs_define
class Grade:
    """A grade with its unit; positive climbs in the direction of travel.

    Attributes:
        unit (GradeUnit): Units of a grade: an angle from level, or the rise in percent of the level distance.
        value (float):
    """

    unit: GradeUnit
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
        unit = GradeUnit(d.pop("unit"))

        value = d.pop("value")

        grade = cls(
            unit=unit,
            value=value,
        )

        return grade
