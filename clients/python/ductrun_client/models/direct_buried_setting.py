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

from ..models.burial_location import BurialLocation
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="DirectBuriedSetting")


@_attrs_define
class DirectBuriedSetting:
    """In earth, without concrete.

    Attributes:
        kind (Literal['direct_buried']): Fixed text that says: buried directly.
        cover (Length | Unset): A length with its unit.
        location (BurialLocation | Unset): Where it is buried.
        spacers (bool | Unset): Whether spacers hold its ducts apart, where there are several; in concrete they always
            do.
    """

    kind: Literal["direct_buried"]
    cover: Length | Unset = UNSET
    location: BurialLocation | Unset = UNSET
    spacers: bool | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        location: str | Unset = UNSET
        if not isinstance(self.location, Unset):
            location = self.location.value

        spacers = self.spacers

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if cover is not UNSET:
            field_dict["cover"] = cover
        if location is not UNSET:
            field_dict["location"] = location
        if spacers is not UNSET:
            field_dict["spacers"] = spacers

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["direct_buried"], d.pop("kind"))
        if kind != "direct_buried":
            raise ValueError(f"kind must match const 'direct_buried', got '{kind}'")

        _cover = d.pop("cover", UNSET)
        cover: Length | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = Length.from_dict(_cover)

        _location = d.pop("location", UNSET)
        location: BurialLocation | Unset
        if isinstance(_location, Unset):
            location = UNSET
        else:
            location = BurialLocation(_location)

        spacers = d.pop("spacers", UNSET)

        direct_buried_setting = cls(
            kind=kind,
            cover=cover,
            location=location,
            spacers=spacers,
        )

        return direct_buried_setting
