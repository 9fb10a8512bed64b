from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_material import ConduitMaterial
from ..types import UNSET, Unset

T = TypeVar("T", bound="MaterialRow")


@_attrs_define
class MaterialRow:
    """Coefficient of linear expansion of one conduit material.

    Attributes:
        coefficient_per_degc (float):
        coefficient_per_degf (float):
        material (ConduitMaterial): Materials of conduit with a coefficient of expansion on file.
        source (str): Id of the source; see /v1/tables/sources.
        standing (str): Read in the source, or from memory.
        note (str | Unset): Remark on the row.
    """

    coefficient_per_degc: float
    coefficient_per_degf: float
    material: ConduitMaterial
    source: str
    standing: str
    note: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        coefficient_per_degc = self.coefficient_per_degc

        coefficient_per_degf = self.coefficient_per_degf

        material = self.material.value

        source = self.source

        standing = self.standing

        note = self.note

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "coefficient_per_degc": coefficient_per_degc,
                "coefficient_per_degf": coefficient_per_degf,
                "material": material,
                "source": source,
                "standing": standing,
            }
        )
        if note is not UNSET:
            field_dict["note"] = note

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        coefficient_per_degc = d.pop("coefficient_per_degc")

        coefficient_per_degf = d.pop("coefficient_per_degf")

        material = ConduitMaterial(d.pop("material"))

        source = d.pop("source")

        standing = d.pop("standing")

        note = d.pop("note", UNSET)

        material_row = cls(
            coefficient_per_degc=coefficient_per_degc,
            coefficient_per_degf=coefficient_per_degf,
            material=material,
            source=source,
            standing=standing,
            note=note,
        )

        material_row.additional_properties = d
        return material_row

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
