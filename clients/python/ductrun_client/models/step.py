from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Step")


@_attrs_define
class Step:
    """One line of the working.

    Attributes:
        formula (str):
        substituted (str):
        symbol (str):
        value (AnyQuantity | float):
    """

    formula: str
    substituted: str
    symbol: str
    value: AnyQuantity | float
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        formula = self.formula

        substituted = self.substituted

        symbol = self.symbol

        value: dict[str, Any] | float
        if isinstance(self.value, AnyQuantity):
            value = self.value.to_dict()
        else:
            value = self.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "formula": formula,
                "substituted": substituted,
                "symbol": symbol,
                "value": value,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        formula = d.pop("formula")

        substituted = d.pop("substituted")

        symbol = d.pop("symbol")

        def _parse_value(data: object) -> AnyQuantity | float:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                value_type_1 = AnyQuantity.from_dict(data)

                return value_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            return cast(AnyQuantity | float, data)

        value = _parse_value(d.pop("value"))

        step = cls(
            formula=formula,
            substituted=substituted,
            symbol=symbol,
            value=value,
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
