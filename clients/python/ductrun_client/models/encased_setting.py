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
from ..models.pour_practice import PourPractice
from ..models.pour_shape import PourShape
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.concrete_cover import ConcreteCover
    from ..models.length import Length


T = TypeVar("T", bound="EncasedSetting")


@_attrs_define
class EncasedSetting:
    """In concrete, in a trench.

    Attributes:
        kind (Literal['encased']): Fixed text that says: encased in concrete.
        concrete_cover (ConcreteCover | Unset): Concrete outside the ducts.
        cover (Length | Unset): A length with its unit.
        location (BurialLocation | Unset): Where it is buried.
        pour (PourPractice | Unset): Against what concrete is poured.
        pour_shape (PourShape | Unset): Whether concrete fills the bounding rectangle or steps with the tiers.
    """

    kind: Literal["encased"]
    concrete_cover: ConcreteCover | Unset = UNSET
    cover: Length | Unset = UNSET
    location: BurialLocation | Unset = UNSET
    pour: PourPractice | Unset = UNSET
    pour_shape: PourShape | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        concrete_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_cover, Unset):
            concrete_cover = self.concrete_cover.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        location: str | Unset = UNSET
        if not isinstance(self.location, Unset):
            location = self.location.value

        pour: str | Unset = UNSET
        if not isinstance(self.pour, Unset):
            pour = self.pour.value

        pour_shape: str | Unset = UNSET
        if not isinstance(self.pour_shape, Unset):
            pour_shape = self.pour_shape.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if concrete_cover is not UNSET:
            field_dict["concrete_cover"] = concrete_cover
        if cover is not UNSET:
            field_dict["cover"] = cover
        if location is not UNSET:
            field_dict["location"] = location
        if pour is not UNSET:
            field_dict["pour"] = pour
        if pour_shape is not UNSET:
            field_dict["pour_shape"] = pour_shape

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.concrete_cover import ConcreteCover  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["encased"], d.pop("kind"))
        if kind != "encased":
            raise ValueError(f"kind must match const 'encased', got '{kind}'")

        _concrete_cover = d.pop("concrete_cover", UNSET)
        concrete_cover: ConcreteCover | Unset
        if isinstance(_concrete_cover, Unset):
            concrete_cover = UNSET
        else:
            concrete_cover = ConcreteCover.from_dict(_concrete_cover)

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

        _pour = d.pop("pour", UNSET)
        pour: PourPractice | Unset
        if isinstance(_pour, Unset):
            pour = UNSET
        else:
            pour = PourPractice(_pour)

        _pour_shape = d.pop("pour_shape", UNSET)
        pour_shape: PourShape | Unset
        if isinstance(_pour_shape, Unset):
            pour_shape = UNSET
        else:
            pour_shape = PourShape(_pour_shape)

        encased_setting = cls(
            kind=kind,
            concrete_cover=concrete_cover,
            cover=cover,
            location=location,
            pour=pour,
            pour_shape=pour_shape,
        )

        return encased_setting
