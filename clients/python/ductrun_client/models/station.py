from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="Station")


@_attrs_define
class Station:
    """Depth of cover at one place of the run.

    Attributes:
        cover (Length): A length with its unit.
        position (Length): A length with its unit.
    """

    cover: Length
    position: Length

    def to_dict(self) -> dict[str, Any]:
        cover = self.cover.to_dict()

        position = self.position.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "cover": cover,
                "position": position,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        cover = Length.from_dict(d.pop("cover"))

        position = Length.from_dict(d.pop("position"))

        station = cls(
            cover=cover,
            position=position,
        )

        return station
