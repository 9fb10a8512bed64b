from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

from ..models.conduit_type import ConduitType
from ..models.takeoff_item import TakeoffItem
from ..models.takeoff_unit import TakeoffUnit
from ..types import UNSET, Unset

T = TypeVar("T", bound="Rate")


@_attrs_define
class Rate:
    """The caller's own rate for an item; a key left out matches any.

    Attributes:
        item (TakeoffItem): What a line of a takeoff is of, in the order of its group.
        conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        size (str | Unset): Of this size alone.
        unit (TakeoffUnit | Unset): Units of a takeoff: of counts each, of all else as they are sold or paid.
        unit_labor_hours (float | Unset): Labor hours for one of the unit.
        unit_price (float | Unset): Price for one of the unit, in the caller's money; this, or labor hours, or both.
    """

    item: TakeoffItem
    conduit_type: ConduitType | Unset = UNSET
    size: str | Unset = UNSET
    unit: TakeoffUnit | Unset = UNSET
    unit_labor_hours: float | Unset = UNSET
    unit_price: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        item = self.item.value

        conduit_type: str | Unset = UNSET
        if not isinstance(self.conduit_type, Unset):
            conduit_type = self.conduit_type.value

        size = self.size

        unit: str | Unset = UNSET
        if not isinstance(self.unit, Unset):
            unit = self.unit.value

        unit_labor_hours = self.unit_labor_hours

        unit_price = self.unit_price

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "item": item,
            }
        )
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if size is not UNSET:
            field_dict["size"] = size
        if unit is not UNSET:
            field_dict["unit"] = unit
        if unit_labor_hours is not UNSET:
            field_dict["unit_labor_hours"] = unit_labor_hours
        if unit_price is not UNSET:
            field_dict["unit_price"] = unit_price

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        item = TakeoffItem(d.pop("item"))

        _conduit_type = d.pop("conduit_type", UNSET)
        conduit_type: ConduitType | Unset
        if isinstance(_conduit_type, Unset):
            conduit_type = UNSET
        else:
            conduit_type = ConduitType(_conduit_type)

        size = d.pop("size", UNSET)

        _unit = d.pop("unit", UNSET)
        unit: TakeoffUnit | Unset
        if isinstance(_unit, Unset):
            unit = UNSET
        else:
            unit = TakeoffUnit(_unit)

        unit_labor_hours = d.pop("unit_labor_hours", UNSET)

        unit_price = d.pop("unit_price", UNSET)

        rate = cls(
            item=item,
            conduit_type=conduit_type,
            size=size,
            unit=unit,
            unit_labor_hours=unit_labor_hours,
            unit_price=unit_price,
        )

        return rate
