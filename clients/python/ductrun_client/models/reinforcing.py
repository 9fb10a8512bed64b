from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.bar_size import BarSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="Reinforcing")


@_attrs_define
class Reinforcing:
    """Longitudinal bars and ties.

    Attributes:
        bar_count (int): Longitudinal bars.
        bar_size (BarSize): Reinforcing bars.
        edge_cover (Length | Unset): A length with its unit.
        lap_diameter_ratio (float | Unset): Lap over the diameter of a bar, where lap_length is left out.
        lap_length (Length | Unset): A length with its unit.
        stock_length (Length | Unset): A length with its unit.
        tie_hook_length (Length | Unset): A length with its unit.
        tie_size (BarSize | Unset): Reinforcing bars.
        tie_spacing (Length | Unset): A length with its unit.
    """

    bar_count: int
    bar_size: BarSize
    edge_cover: Length | Unset = UNSET
    lap_diameter_ratio: float | Unset = UNSET
    lap_length: Length | Unset = UNSET
    stock_length: Length | Unset = UNSET
    tie_hook_length: Length | Unset = UNSET
    tie_size: BarSize | Unset = UNSET
    tie_spacing: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bar_count = self.bar_count

        bar_size = self.bar_size.value

        edge_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.edge_cover, Unset):
            edge_cover = self.edge_cover.to_dict()

        lap_diameter_ratio = self.lap_diameter_ratio

        lap_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.lap_length, Unset):
            lap_length = self.lap_length.to_dict()

        stock_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.stock_length, Unset):
            stock_length = self.stock_length.to_dict()

        tie_hook_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.tie_hook_length, Unset):
            tie_hook_length = self.tie_hook_length.to_dict()

        tie_size: str | Unset = UNSET
        if not isinstance(self.tie_size, Unset):
            tie_size = self.tie_size.value

        tie_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.tie_spacing, Unset):
            tie_spacing = self.tie_spacing.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "bar_count": bar_count,
                "bar_size": bar_size,
            }
        )
        if edge_cover is not UNSET:
            field_dict["edge_cover"] = edge_cover
        if lap_diameter_ratio is not UNSET:
            field_dict["lap_diameter_ratio"] = lap_diameter_ratio
        if lap_length is not UNSET:
            field_dict["lap_length"] = lap_length
        if stock_length is not UNSET:
            field_dict["stock_length"] = stock_length
        if tie_hook_length is not UNSET:
            field_dict["tie_hook_length"] = tie_hook_length
        if tie_size is not UNSET:
            field_dict["tie_size"] = tie_size
        if tie_spacing is not UNSET:
            field_dict["tie_spacing"] = tie_spacing

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        bar_count = d.pop("bar_count")

        bar_size = BarSize(d.pop("bar_size"))

        _edge_cover = d.pop("edge_cover", UNSET)
        edge_cover: Length | Unset
        if isinstance(_edge_cover, Unset):
            edge_cover = UNSET
        else:
            edge_cover = Length.from_dict(_edge_cover)

        lap_diameter_ratio = d.pop("lap_diameter_ratio", UNSET)

        _lap_length = d.pop("lap_length", UNSET)
        lap_length: Length | Unset
        if isinstance(_lap_length, Unset):
            lap_length = UNSET
        else:
            lap_length = Length.from_dict(_lap_length)

        _stock_length = d.pop("stock_length", UNSET)
        stock_length: Length | Unset
        if isinstance(_stock_length, Unset):
            stock_length = UNSET
        else:
            stock_length = Length.from_dict(_stock_length)

        _tie_hook_length = d.pop("tie_hook_length", UNSET)
        tie_hook_length: Length | Unset
        if isinstance(_tie_hook_length, Unset):
            tie_hook_length = UNSET
        else:
            tie_hook_length = Length.from_dict(_tie_hook_length)

        _tie_size = d.pop("tie_size", UNSET)
        tie_size: BarSize | Unset
        if isinstance(_tie_size, Unset):
            tie_size = UNSET
        else:
            tie_size = BarSize(_tie_size)

        _tie_spacing = d.pop("tie_spacing", UNSET)
        tie_spacing: Length | Unset
        if isinstance(_tie_spacing, Unset):
            tie_spacing = UNSET
        else:
            tie_spacing = Length.from_dict(_tie_spacing)

        reinforcing = cls(
            bar_count=bar_count,
            bar_size=bar_size,
            edge_cover=edge_cover,
            lap_diameter_ratio=lap_diameter_ratio,
            lap_length=lap_length,
            stock_length=stock_length,
            tie_hook_length=tie_hook_length,
            tie_size=tie_size,
            tie_spacing=tie_spacing,
        )

        return reinforcing
