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


T = TypeVar("T", bound="DistanceInterval")


@_attrs_define
class DistanceInterval:
    """Stations no more than a distance apart, ends included.

    Attributes:
        distance (Length): A length with its unit.
        kind (Literal['distance']): Fixed text that says: by distance.
    """

    distance: Length
    kind: Literal["distance"]

    def to_dict(self) -> dict[str, Any]:
        distance = self.distance.to_dict()

        kind = self.kind

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "distance": distance,
                "kind": kind,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        distance = Length.from_dict(d.pop("distance"))

        kind = cast(Literal["distance"], d.pop("kind"))
        if kind != "distance":
            raise ValueError(f"kind must match const 'distance', got '{kind}'")

        distance_interval = cls(
            distance=distance,
            kind=kind,
        )

        return distance_interval
