from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Step")


@_attrs_define
class Step:
    """One line of the working; `pointer` is the part of the request it is about.

    Attributes:
        formula (str): The formula.
        pointer (str): JSON pointer of the part of the request.
        quantity (AnyQuantity): A value with its unit, of whatever dimension the text beside it says.
        substituted (str): The figures put in, in SI unless they say their unit.
        symbol (str): Symbol of what comes out.
    """

    formula: str
    pointer: str
    quantity: AnyQuantity
    substituted: str
    symbol: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        formula = self.formula

        pointer = self.pointer

        quantity = self.quantity.to_dict()

        substituted = self.substituted

        symbol = self.symbol

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "formula": formula,
                "pointer": pointer,
                "quantity": quantity,
                "substituted": substituted,
                "symbol": symbol,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        formula = d.pop("formula")

        pointer = d.pop("pointer")

        quantity = AnyQuantity.from_dict(d.pop("quantity"))

        substituted = d.pop("substituted")

        symbol = d.pop("symbol")

        step = cls(
            formula=formula,
            pointer=pointer,
            quantity=quantity,
            substituted=substituted,
            symbol=symbol,
        )

        step.additional_properties = d
        return step

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
