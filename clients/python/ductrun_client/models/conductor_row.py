from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_marking import ConductorMarking
from ..models.conductor_size import ConductorSize
from ..models.standing import Standing
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.length import Length


T = TypeVar("T", bound="ConductorRow")


@_attrs_define
class ConductorRow:
    """One size of one conductor of Chapter 9, Table 5, 5A or 8.

    Attributes:
        area (Area): An area with its unit.
        diameter (Length): A length with its unit.
        insulations (list[ConductorMarking]): Markings the row serves; an asterisk: without covering.
        size (ConductorSize): Sizes of conductors.
        source_id (str): Id of the source; see /v1/tables/sources.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        table (str): Table of Chapter 9.
        note (str | Unset): Remark on the row.
        stranding (str | Unset): Make-up, where the table tells.
    """

    area: Area
    diameter: Length
    insulations: list[ConductorMarking]
    size: ConductorSize
    source_id: str
    standing: Standing
    table: str
    note: str | Unset = UNSET
    stranding: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        area = self.area.to_dict()

        diameter = self.diameter.to_dict()

        insulations = []
        for insulations_item_data in self.insulations:
            insulations_item = insulations_item_data.value
            insulations.append(insulations_item)

        size = self.size.value

        source_id = self.source_id

        standing = self.standing.value

        table = self.table

        note = self.note

        stranding = self.stranding

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "area": area,
                "diameter": diameter,
                "insulations": insulations,
                "size": size,
                "source_id": source_id,
                "standing": standing,
                "table": table,
            }
        )
        if note is not UNSET:
            field_dict["note"] = note
        if stranding is not UNSET:
            field_dict["stranding"] = stranding

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        area = Area.from_dict(d.pop("area"))

        diameter = Length.from_dict(d.pop("diameter"))

        insulations = []
        _insulations = d.pop("insulations")
        for insulations_item_data in _insulations:
            insulations_item = ConductorMarking(insulations_item_data)

            insulations.append(insulations_item)

        size = ConductorSize(d.pop("size"))

        source_id = d.pop("source_id")

        standing = Standing(d.pop("standing"))

        table = d.pop("table")

        note = d.pop("note", UNSET)

        stranding = d.pop("stranding", UNSET)

        conductor_row = cls(
            area=area,
            diameter=diameter,
            insulations=insulations,
            size=size,
            source_id=source_id,
            standing=standing,
            table=table,
            note=note,
            stranding=stranding,
        )

        conductor_row.additional_properties = d
        return conductor_row

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
