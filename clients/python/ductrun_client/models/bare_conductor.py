from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.bare_stranding import BareStranding
from ..models.conductor_size import ConductorSize
from ..types import UNSET, Unset

T = TypeVar("T", bound="BareConductor")


@_attrs_define
class BareConductor:
    """Bare conductors by size, from Chapter 9, Table 8; the circle around all strands counts.

    Attributes:
        count (int): How many, grounding and bonding conductors included.
        kind (Literal['bare']): Fixed text that says: bare.
        size (ConductorSize): Sizes of conductors.
        stranding (BareStranding | Unset): Make-up of a bare conductor.
    """

    count: int
    kind: Literal["bare"]
    size: ConductorSize
    stranding: BareStranding | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        kind = self.kind

        size = self.size.value

        stranding: str | Unset = UNSET
        if not isinstance(self.stranding, Unset):
            stranding = self.stranding.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "kind": kind,
                "size": size,
            }
        )
        if stranding is not UNSET:
            field_dict["stranding"] = stranding

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        count = d.pop("count")

        kind = cast(Literal["bare"], d.pop("kind"))
        if kind != "bare":
            raise ValueError(f"kind must match const 'bare', got '{kind}'")

        size = ConductorSize(d.pop("size"))

        _stranding = d.pop("stranding", UNSET)
        stranding: BareStranding | Unset
        if isinstance(_stranding, Unset):
            stranding = UNSET
        else:
            stranding = BareStranding(_stranding)

        bare_conductor = cls(
            count=count,
            kind=kind,
            size=size,
            stranding=stranding,
        )

        return bare_conductor
