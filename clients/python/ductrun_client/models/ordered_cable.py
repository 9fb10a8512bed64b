from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="OrderedCable")


@_attrs_define
class OrderedCable:
    """What to order of one line of cables.

    Attributes:
        count (int): Cables of this line.
        length (Length): A length with its unit.
        order_length (Length): A length with its unit.
        total_order_length (Length): A length with its unit.
        reel_count (int | Unset): Reels, if their length was given and holds one cable.
    """

    count: int
    length: Length
    order_length: Length
    total_order_length: Length
    reel_count: int | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        length = self.length.to_dict()

        order_length = self.order_length.to_dict()

        total_order_length = self.total_order_length.to_dict()

        reel_count = self.reel_count

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "count": count,
                "length": length,
                "order_length": order_length,
                "total_order_length": total_order_length,
            }
        )
        if reel_count is not UNSET:
            field_dict["reel_count"] = reel_count

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        length = Length.from_dict(d.pop("length"))

        order_length = Length.from_dict(d.pop("order_length"))

        total_order_length = Length.from_dict(d.pop("total_order_length"))

        reel_count = d.pop("reel_count", UNSET)

        ordered_cable = cls(
            count=count,
            length=length,
            order_length=order_length,
            total_order_length=total_order_length,
            reel_count=reel_count,
        )

        ordered_cable.additional_properties = d
        return ordered_cable

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
