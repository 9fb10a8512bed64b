from __future__ import annotations

from collections.abc import Mapping
from typing import (
    TYPE_CHECKING,
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="ListedPositions")


@_attrs_define
class ListedPositions:
    """Pull points may stand at given places only.

    Attributes:
        kind (Literal['listed']): Fixed text that says: at these places.
        positions (list[Length]): Distances along the centre line from the start of the route, each on a straight.
    """

    kind: Literal["listed"]
    positions: list[Length]

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        positions = []
        for positions_item_data in self.positions:
            positions_item = positions_item_data.to_dict()
            positions.append(positions_item)

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "positions": positions,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["listed"], d.pop("kind"))
        if kind != "listed":
            raise ValueError(f"kind must match const 'listed', got '{kind}'")

        positions = []
        _positions = d.pop("positions")
        for positions_item_data in _positions:
            positions_item = Length.from_dict(positions_item_data)

            positions.append(positions_item)

        listed_positions = cls(
            kind=kind,
            positions=positions,
        )

        return listed_positions
