from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="ConcreteCover")


@_attrs_define
class ConcreteCover:
    """Concrete outside the ducts.

    Attributes:
        bottom (Length | Unset): A length with its unit.
        side (Length | Unset): A length with its unit.
        top (Length | Unset): A length with its unit.
    """

    bottom: Length | Unset = UNSET
    side: Length | Unset = UNSET
    top: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bottom: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bottom, Unset):
            bottom = self.bottom.to_dict()

        side: dict[str, Any] | Unset = UNSET
        if not isinstance(self.side, Unset):
            side = self.side.to_dict()

        top: dict[str, Any] | Unset = UNSET
        if not isinstance(self.top, Unset):
            top = self.top.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if bottom is not UNSET:
            field_dict["bottom"] = bottom
        if side is not UNSET:
            field_dict["side"] = side
        if top is not UNSET:
            field_dict["top"] = top

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        _bottom = d.pop("bottom", UNSET)
        bottom: Length | Unset
        if isinstance(_bottom, Unset):
            bottom = UNSET
        else:
            bottom = Length.from_dict(_bottom)

        _side = d.pop("side", UNSET)
        side: Length | Unset
        if isinstance(_side, Unset):
            side = UNSET
        else:
            side = Length.from_dict(_side)

        _top = d.pop("top", UNSET)
        top: Length | Unset
        if isinstance(_top, Unset):
            top = UNSET
        else:
            top = Length.from_dict(_top)

        concrete_cover = cls(
            bottom=bottom,
            side=side,
            top=top,
        )

        return concrete_cover
