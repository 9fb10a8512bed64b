from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="ElevationPoint")


@_attrs_define
class ElevationPoint:
    """Ground and line at one station.

    Attributes:
        ground (Length): A length with its unit.
        line (Length): A length with its unit.
        station (Length): A length with its unit.
    """

    ground: Length
    line: Length
    station: Length

    def to_dict(self) -> dict[str, Any]:
        ground = self.ground.to_dict()

        line = self.line.to_dict()

        station = self.station.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "ground": ground,
                "line": line,
                "station": station,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        ground = Length.from_dict(d.pop("ground"))

        line = Length.from_dict(d.pop("line"))

        station = Length.from_dict(d.pop("station"))

        elevation_point = cls(
            ground=ground,
            line=line,
            station=station,
        )

        return elevation_point
