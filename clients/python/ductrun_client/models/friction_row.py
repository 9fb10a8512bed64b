from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.standing import Standing
from ..types import UNSET, Unset

T = TypeVar("T", bound="FrictionRow")


@_attrs_define
class FrictionRow:
    """A published range of the coefficient of friction of a cable jacket against a conduit.

    Attributes:
        conduit (str):
        high_coefficient (float):
        jacket (str):
        low_coefficient (float):
        lubrication (str):
        source_id (str): Id of the source; see /v1/tables/sources.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        note (str | Unset): Remark on the row.
    """

    conduit: str
    high_coefficient: float
    jacket: str
    low_coefficient: float
    lubrication: str
    source_id: str
    standing: Standing
    note: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conduit = self.conduit

        high_coefficient = self.high_coefficient

        jacket = self.jacket

        low_coefficient = self.low_coefficient

        lubrication = self.lubrication

        source_id = self.source_id

        standing = self.standing.value

        note = self.note

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conduit": conduit,
                "high_coefficient": high_coefficient,
                "jacket": jacket,
                "low_coefficient": low_coefficient,
                "lubrication": lubrication,
                "source_id": source_id,
                "standing": standing,
            }
        )
        if note is not UNSET:
            field_dict["note"] = note

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        conduit = d.pop("conduit")

        high_coefficient = d.pop("high_coefficient")

        jacket = d.pop("jacket")

        low_coefficient = d.pop("low_coefficient")

        lubrication = d.pop("lubrication")

        source_id = d.pop("source_id")

        standing = Standing(d.pop("standing"))

        note = d.pop("note", UNSET)

        friction_row = cls(
            conduit=conduit,
            high_coefficient=high_coefficient,
            jacket=jacket,
            low_coefficient=low_coefficient,
            lubrication=lubrication,
            source_id=source_id,
            standing=standing,
            note=note,
        )

        friction_row.additional_properties = d
        return friction_row

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
