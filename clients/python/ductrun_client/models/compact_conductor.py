from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.conductor_size import ConductorSize
from ..models.insulation import Insulation

T = TypeVar("T", bound="CompactConductor")


@_attrs_define
class CompactConductor:
    """Insulated conductors of compact stranding by marking and size, from Chapter 9, Table 5A.

    Attributes:
        count (int): How many, grounding and bonding conductors included.
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table 5, means without an
            outer covering.
        kind (Literal['compact']): Fixed text that says: compact stranding.
        size (ConductorSize): Sizes of conductors.
    """

    count: int
    insulation: Insulation
    kind: Literal["compact"]
    size: ConductorSize

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        insulation = self.insulation.value

        kind = self.kind

        size = self.size.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "insulation": insulation,
                "kind": kind,
                "size": size,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        count = d.pop("count")

        insulation = Insulation(d.pop("insulation"))

        kind = cast(Literal["compact"], d.pop("kind"))
        if kind != "compact":
            raise ValueError(f"kind must match const 'compact', got '{kind}'")

        size = ConductorSize(d.pop("size"))

        compact_conductor = cls(
            count=count,
            insulation=insulation,
            kind=kind,
            size=size,
        )

        return compact_conductor
