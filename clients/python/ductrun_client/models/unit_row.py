from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

T = TypeVar("T", bound="UnitRow")


@_attrs_define
class UnitRow:
    """One unit code: SI value = factor x value + offset; a grade in percent is the arc tangent of that.

    Attributes:
        dimension (str):
        si_factor (float):
        si_offset (float):
        si_unit (str):
        ucum (str): UCUM code.
        unit (str):
    """

    dimension: str
    si_factor: float
    si_offset: float
    si_unit: str
    ucum: str
    unit: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        dimension = self.dimension

        si_factor = self.si_factor

        si_offset = self.si_offset

        si_unit = self.si_unit

        ucum = self.ucum

        unit = self.unit

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "dimension": dimension,
                "si_factor": si_factor,
                "si_offset": si_offset,
                "si_unit": si_unit,
                "ucum": ucum,
                "unit": unit,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        dimension = d.pop("dimension")

        si_factor = d.pop("si_factor")

        si_offset = d.pop("si_offset")

        si_unit = d.pop("si_unit")

        ucum = d.pop("ucum")

        unit = d.pop("unit")

        unit_row = cls(
            dimension=dimension,
            si_factor=si_factor,
            si_offset=si_offset,
            si_unit=si_unit,
            ucum=ucum,
            unit=unit,
        )

        unit_row.additional_properties = d
        return unit_row

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
