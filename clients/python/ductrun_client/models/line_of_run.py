from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.compared_number import ComparedNumber
    from ..models.compared_quantity import ComparedQuantity


T = TypeVar("T", bound="LineOfRun")


@_attrs_define
class LineOfRun:
    """What one run takes of a line, beside the base.

    Attributes:
        exact_quantity (ComparedQuantity): A quantity of a takeoff beside that of the base.
        run (str): Name of the run.
        labor_hours (ComparedNumber | Unset): A figure of a run beside that of the base.
        order_quantity (ComparedQuantity | Unset): A quantity of a takeoff beside that of the base.
        price (ComparedNumber | Unset): A figure of a run beside that of the base.
    """

    exact_quantity: ComparedQuantity
    run: str
    labor_hours: ComparedNumber | Unset = UNSET
    order_quantity: ComparedQuantity | Unset = UNSET
    price: ComparedNumber | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        exact_quantity = self.exact_quantity.to_dict()

        run = self.run

        labor_hours: dict[str, Any] | Unset = UNSET
        if not isinstance(self.labor_hours, Unset):
            labor_hours = self.labor_hours.to_dict()

        order_quantity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.order_quantity, Unset):
            order_quantity = self.order_quantity.to_dict()

        price: dict[str, Any] | Unset = UNSET
        if not isinstance(self.price, Unset):
            price = self.price.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "exact_quantity": exact_quantity,
                "run": run,
            }
        )
        if labor_hours is not UNSET:
            field_dict["labor_hours"] = labor_hours
        if order_quantity is not UNSET:
            field_dict["order_quantity"] = order_quantity
        if price is not UNSET:
            field_dict["price"] = price

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.compared_number import ComparedNumber  # noqa: PLC0415
        from ..models.compared_quantity import ComparedQuantity  # noqa: PLC0415

        d = dict(src_dict)
        exact_quantity = ComparedQuantity.from_dict(d.pop("exact_quantity"))

        run = d.pop("run")

        _labor_hours = d.pop("labor_hours", UNSET)
        labor_hours: ComparedNumber | Unset
        if isinstance(_labor_hours, Unset):
            labor_hours = UNSET
        else:
            labor_hours = ComparedNumber.from_dict(_labor_hours)

        _order_quantity = d.pop("order_quantity", UNSET)
        order_quantity: ComparedQuantity | Unset
        if isinstance(_order_quantity, Unset):
            order_quantity = UNSET
        else:
            order_quantity = ComparedQuantity.from_dict(_order_quantity)

        _price = d.pop("price", UNSET)
        price: ComparedNumber | Unset
        if isinstance(_price, Unset):
            price = UNSET
        else:
            price = ComparedNumber.from_dict(_price)

        line_of_run = cls(
            exact_quantity=exact_quantity,
            run=run,
            labor_hours=labor_hours,
            order_quantity=order_quantity,
            price=price,
        )

        line_of_run.additional_properties = d
        return line_of_run

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
