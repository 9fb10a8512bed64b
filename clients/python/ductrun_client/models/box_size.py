from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="BoxSize")


@_attrs_define
class BoxSize:
    """Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of the raceways.

    Attributes:
        depth (Length): A length with its unit.
        length (Length): A length with its unit.
        width (Length): A length with its unit.
    """

    depth: Length
    length: Length
    width: Length

    def to_dict(self) -> dict[str, Any]:
        depth = self.depth.to_dict()

        length = self.length.to_dict()

        width = self.width.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "depth": depth,
                "length": length,
                "width": width,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        depth = Length.from_dict(d.pop("depth"))

        length = Length.from_dict(d.pop("length"))

        width = Length.from_dict(d.pop("width"))

        box_size = cls(
            depth=depth,
            length=length,
            width=width,
        )

        return box_size
