from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_size import ConductorSize
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
        area_metric (Area): An area with its unit.
        diameter (Length): A length with its unit.
        diameter_metric (Length): A length with its unit.
        insulations (list[str]): Markings the row serves; an asterisk: without covering.
        size (ConductorSize): Sizes of conductors.
        source (str): Id of the source; see /v1/tables/sources.
        standing (str): Read in the source, or from memory.
        table (str): Table of Chapter 9.
        note (str | Unset): Remark on the row.
        stranding (str | Unset): Make-up, where the table tells.
    """

    area: Area
    area_metric: Area
    diameter: Length
    diameter_metric: Length
    insulations: list[str]
    size: ConductorSize
    source: str
    standing: str
    table: str
    note: str | Unset = UNSET
    stranding: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        area = self.area.to_dict()

        area_metric = self.area_metric.to_dict()

        diameter = self.diameter.to_dict()

        diameter_metric = self.diameter_metric.to_dict()

        insulations = self.insulations

        size = self.size.value

        source = self.source

        standing = self.standing

        table = self.table

        note = self.note

        stranding = self.stranding

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "area": area,
                "area_metric": area_metric,
                "diameter": diameter,
                "diameter_metric": diameter_metric,
                "insulations": insulations,
                "size": size,
                "source": source,
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

        area_metric = Area.from_dict(d.pop("area_metric"))

        diameter = Length.from_dict(d.pop("diameter"))

        diameter_metric = Length.from_dict(d.pop("diameter_metric"))

        insulations = cast(list[str], d.pop("insulations"))

        size = ConductorSize(d.pop("size"))

        source = d.pop("source")

        standing = d.pop("standing")

        table = d.pop("table")

        note = d.pop("note", UNSET)

        stranding = d.pop("stranding", UNSET)

        conductor_row = cls(
            area=area,
            area_metric=area_metric,
            diameter=diameter,
            diameter_metric=diameter_metric,
            insulations=insulations,
            size=size,
            source=source,
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
