from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.takeoff_quantity import TakeoffQuantity


T = TypeVar("T", bound="TakeoffShare")


@_attrs_define
class TakeoffShare:
    """What of the exact quantity one stretch of the run takes.

    Attributes:
        quantity (TakeoffQuantity): A quantity with the unit in which it is sold, paid or done.
        stretch (str): Name of the stretch.
    """

    quantity: TakeoffQuantity
    stretch: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        quantity = self.quantity.to_dict()

        stretch = self.stretch

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "quantity": quantity,
                "stretch": stretch,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.takeoff_quantity import TakeoffQuantity  # noqa: PLC0415

        d = dict(src_dict)
        quantity = TakeoffQuantity.from_dict(d.pop("quantity"))

        stretch = d.pop("stretch")

        takeoff_share = cls(
            quantity=quantity,
            stretch=stretch,
        )

        takeoff_share.additional_properties = d
        return takeoff_share

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
