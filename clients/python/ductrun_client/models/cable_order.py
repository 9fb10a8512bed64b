from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="CableOrder")


@_attrs_define
class CableOrder:
    """What is added to the route at each of its two ends, and how the cable comes.

    Attributes:
        racking (Length | Unset): A length with its unit.
        reel_length (Length | Unset): A length with its unit.
        splice (Length | Unset): A length with its unit.
        tail (Length | Unset): A length with its unit.
        waste_percent (float | Unset): Waste added to the length.
    """

    racking: Length | Unset = UNSET
    reel_length: Length | Unset = UNSET
    splice: Length | Unset = UNSET
    tail: Length | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        racking: dict[str, Any] | Unset = UNSET
        if not isinstance(self.racking, Unset):
            racking = self.racking.to_dict()

        reel_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reel_length, Unset):
            reel_length = self.reel_length.to_dict()

        splice: dict[str, Any] | Unset = UNSET
        if not isinstance(self.splice, Unset):
            splice = self.splice.to_dict()

        tail: dict[str, Any] | Unset = UNSET
        if not isinstance(self.tail, Unset):
            tail = self.tail.to_dict()

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if racking is not UNSET:
            field_dict["racking"] = racking
        if reel_length is not UNSET:
            field_dict["reel_length"] = reel_length
        if splice is not UNSET:
            field_dict["splice"] = splice
        if tail is not UNSET:
            field_dict["tail"] = tail
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        _racking = d.pop("racking", UNSET)
        racking: Length | Unset
        if isinstance(_racking, Unset):
            racking = UNSET
        else:
            racking = Length.from_dict(_racking)

        _reel_length = d.pop("reel_length", UNSET)
        reel_length: Length | Unset
        if isinstance(_reel_length, Unset):
            reel_length = UNSET
        else:
            reel_length = Length.from_dict(_reel_length)

        _splice = d.pop("splice", UNSET)
        splice: Length | Unset
        if isinstance(_splice, Unset):
            splice = UNSET
        else:
            splice = Length.from_dict(_splice)

        _tail = d.pop("tail", UNSET)
        tail: Length | Unset
        if isinstance(_tail, Unset):
            tail = UNSET
        else:
            tail = Length.from_dict(_tail)

        waste_percent = d.pop("waste_percent", UNSET)

        cable_order = cls(
            racking=racking,
            reel_length=reel_length,
            splice=splice,
            tail=tail,
            waste_percent=waste_percent,
        )

        return cable_order
