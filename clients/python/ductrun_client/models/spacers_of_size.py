from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="SpacersOfSize")


@_attrs_define
class SpacersOfSize:
    """The pieces for ducts of one size.

    Attributes:
        base_spacer_count (int):
        intermediate_spacer_count (int):
        order_count (int): All pieces of this size with waste, rounded up.
        outside_diameter (Length): A length with its unit.
        top_piece_count (int):
    """

    base_spacer_count: int
    intermediate_spacer_count: int
    order_count: int
    outside_diameter: Length
    top_piece_count: int
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        base_spacer_count = self.base_spacer_count

        intermediate_spacer_count = self.intermediate_spacer_count

        order_count = self.order_count

        outside_diameter = self.outside_diameter.to_dict()

        top_piece_count = self.top_piece_count

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "base_spacer_count": base_spacer_count,
                "intermediate_spacer_count": intermediate_spacer_count,
                "order_count": order_count,
                "outside_diameter": outside_diameter,
                "top_piece_count": top_piece_count,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        base_spacer_count = d.pop("base_spacer_count")

        intermediate_spacer_count = d.pop("intermediate_spacer_count")

        order_count = d.pop("order_count")

        outside_diameter = Length.from_dict(d.pop("outside_diameter"))

        top_piece_count = d.pop("top_piece_count")

        spacers_of_size = cls(
            base_spacer_count=base_spacer_count,
            intermediate_spacer_count=intermediate_spacer_count,
            order_count=order_count,
            outside_diameter=outside_diameter,
            top_piece_count=top_piece_count,
        )

        spacers_of_size.additional_properties = d
        return spacers_of_size

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
