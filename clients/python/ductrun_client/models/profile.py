from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.profile_reference import ProfileReference

if TYPE_CHECKING:
    from ..models.elevation_point import ElevationPoint


T = TypeVar("T", bound="Profile")


@_attrs_define
class Profile:
    """Elevations along the run, straight between the points: they give grades and cover.

    Attributes:
        points (list[ElevationPoint]): The points from the start of the run to its end.
        reference (ProfileReference): What the line of a profile is.
    """

    points: list[ElevationPoint]
    reference: ProfileReference

    def to_dict(self) -> dict[str, Any]:
        points = []
        for points_item_data in self.points:
            points_item = points_item_data.to_dict()
            points.append(points_item)

        reference = self.reference.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "points": points,
                "reference": reference,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.elevation_point import ElevationPoint  # noqa: PLC0415

        d = dict(src_dict)
        points = []
        _points = d.pop("points")
        for points_item_data in _points:
            points_item = ElevationPoint.from_dict(points_item_data)

            points.append(points_item)

        reference = ProfileReference(d.pop("reference"))

        profile = cls(
            points=points,
            reference=reference,
        )

        return profile
