from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="Racking")


@_attrs_define
class Racking:
    """How cable leads from its ducts to the racks on a wall of a manhole, along its length.

    Attributes:
        offset (Length): A length with its unit.
        bending_radius (Length | Unset): A length with its unit.
        splice_wall (Length | Unset): A length with its unit.
        straight_out (Length | Unset): A length with its unit.
    """

    offset: Length
    bending_radius: Length | Unset = UNSET
    splice_wall: Length | Unset = UNSET
    straight_out: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        offset = self.offset.to_dict()

        bending_radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bending_radius, Unset):
            bending_radius = self.bending_radius.to_dict()

        splice_wall: dict[str, Any] | Unset = UNSET
        if not isinstance(self.splice_wall, Unset):
            splice_wall = self.splice_wall.to_dict()

        straight_out: dict[str, Any] | Unset = UNSET
        if not isinstance(self.straight_out, Unset):
            straight_out = self.straight_out.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "offset": offset,
            }
        )
        if bending_radius is not UNSET:
            field_dict["bending_radius"] = bending_radius
        if splice_wall is not UNSET:
            field_dict["splice_wall"] = splice_wall
        if straight_out is not UNSET:
            field_dict["straight_out"] = straight_out

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        offset = Length.from_dict(d.pop("offset"))

        _bending_radius = d.pop("bending_radius", UNSET)
        bending_radius: Length | Unset
        if isinstance(_bending_radius, Unset):
            bending_radius = UNSET
        else:
            bending_radius = Length.from_dict(_bending_radius)

        _splice_wall = d.pop("splice_wall", UNSET)
        splice_wall: Length | Unset
        if isinstance(_splice_wall, Unset):
            splice_wall = UNSET
        else:
            splice_wall = Length.from_dict(_splice_wall)

        _straight_out = d.pop("straight_out", UNSET)
        straight_out: Length | Unset
        if isinstance(_straight_out, Unset):
            straight_out = UNSET
        else:
            straight_out = Length.from_dict(_straight_out)

        racking = cls(
            offset=offset,
            bending_radius=bending_radius,
            splice_wall=splice_wall,
            straight_out=straight_out,
        )

        return racking
