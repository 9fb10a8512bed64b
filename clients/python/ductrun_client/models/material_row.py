from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_material import ConduitMaterial
from ..models.standing import Standing
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_coefficient import ExpansionCoefficient


T = TypeVar("T", bound="MaterialRow")


@_attrs_define
class MaterialRow:
    """Coefficient of linear expansion of one conduit material.

    Attributes:
        coefficient (ExpansionCoefficient): A coefficient of linear thermal expansion with its unit.
        material (ConduitMaterial): Materials of conduit with a coefficient of expansion on file.
        source_id (str): Id of the source; see /v1/tables/sources.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        note (str | Unset): Remark on the row.
    """

    coefficient: ExpansionCoefficient
    material: ConduitMaterial
    source_id: str
    standing: Standing
    note: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        coefficient = self.coefficient.to_dict()

        material = self.material.value

        source_id = self.source_id

        standing = self.standing.value

        note = self.note

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "coefficient": coefficient,
                "material": material,
                "source_id": source_id,
                "standing": standing,
            }
        )
        if note is not UNSET:
            field_dict["note"] = note

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_coefficient import ExpansionCoefficient  # noqa: PLC0415

        d = dict(src_dict)
        coefficient = ExpansionCoefficient.from_dict(d.pop("coefficient"))

        material = ConduitMaterial(d.pop("material"))

        source_id = d.pop("source_id")

        standing = Standing(d.pop("standing"))

        note = d.pop("note", UNSET)

        material_row = cls(
            coefficient=coefficient,
            material=material,
            source_id=source_id,
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
