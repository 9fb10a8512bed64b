from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.spacers_of_size import SpacersOfSize


T = TypeVar("T", bound="SpacersResult")


@_attrs_define
class SpacersResult:
    """The stations and the pieces.

    Attributes:
        base_spacer_count (int): Base pieces, under the bottom tier.
        intermediate_spacer_count (int): Intermediate pieces, between tiers.
        order_count (int): All pieces with waste, rounded up; by size, if they are.
        piece_count (int): All pieces, before waste.
        station_count (int): Stations along the run.
        top_piece_count (int): Pieces that close the stacks from above.
        actual_spacing (Length | Unset): A length with its unit.
        sizes (list[SpacersOfSize] | Unset): The pieces by size, the largest first, if a bank is given.
    """

    base_spacer_count: int
    intermediate_spacer_count: int
    order_count: int
    piece_count: int
    station_count: int
    top_piece_count: int
    actual_spacing: Length | Unset = UNSET
    sizes: list[SpacersOfSize] | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        base_spacer_count = self.base_spacer_count

        intermediate_spacer_count = self.intermediate_spacer_count

        order_count = self.order_count

        piece_count = self.piece_count

        station_count = self.station_count

        top_piece_count = self.top_piece_count

        actual_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.actual_spacing, Unset):
            actual_spacing = self.actual_spacing.to_dict()

        sizes: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.sizes, Unset):
            sizes = []
            for sizes_item_data in self.sizes:
                sizes_item = sizes_item_data.to_dict()
                sizes.append(sizes_item)

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "base_spacer_count": base_spacer_count,
                "intermediate_spacer_count": intermediate_spacer_count,
                "order_count": order_count,
                "piece_count": piece_count,
                "station_count": station_count,
                "top_piece_count": top_piece_count,
            }
        )
        if actual_spacing is not UNSET:
            field_dict["actual_spacing"] = actual_spacing
        if sizes is not UNSET:
            field_dict["sizes"] = sizes

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.spacers_of_size import SpacersOfSize  # noqa: PLC0415

        d = dict(src_dict)
        base_spacer_count = d.pop("base_spacer_count")

        intermediate_spacer_count = d.pop("intermediate_spacer_count")

        order_count = d.pop("order_count")

        piece_count = d.pop("piece_count")

        station_count = d.pop("station_count")

        top_piece_count = d.pop("top_piece_count")

        _actual_spacing = d.pop("actual_spacing", UNSET)
        actual_spacing: Length | Unset
        if isinstance(_actual_spacing, Unset):
            actual_spacing = UNSET
        else:
            actual_spacing = Length.from_dict(_actual_spacing)

        _sizes = d.pop("sizes", UNSET)
        sizes: list[SpacersOfSize] | Unset = UNSET
        if _sizes is not UNSET:
            sizes = []
            for sizes_item_data in _sizes:
                sizes_item = SpacersOfSize.from_dict(sizes_item_data)

                sizes.append(sizes_item)

        spacers_result = cls(
            base_spacer_count=base_spacer_count,
            intermediate_spacer_count=intermediate_spacer_count,
            order_count=order_count,
            piece_count=piece_count,
            station_count=station_count,
            top_piece_count=top_piece_count,
            actual_spacing=actual_spacing,
            sizes=sizes,
        )

        spacers_result.additional_properties = d
        return spacers_result

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
