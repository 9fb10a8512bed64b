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

T = TypeVar("T", bound="OneListedConductor")


@_attrs_define
class OneListedConductor:
    """An insulated conductor by marking and size, from Chapter 9, Table 5.

    Attributes:
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table 5, means without an
            outer covering.
        kind (Literal['listed']): Fixed text that says: by insulation and size.
        size (ConductorSize): Sizes of conductors.
    """

    insulation: Insulation
    kind: Literal["listed"]
    size: ConductorSize

    def to_dict(self) -> dict[str, Any]:
        insulation = self.insulation.value

        kind = self.kind

        size = self.size.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "insulation": insulation,
                "kind": kind,
                "size": size,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        insulation = Insulation(d.pop("insulation"))

        kind = cast(Literal["listed"], d.pop("kind"))
        if kind != "listed":
            raise ValueError(f"kind must match const 'listed', got '{kind}'")

        size = ConductorSize(d.pop("size"))

        one_listed_conductor = cls(
            insulation=insulation,
            kind=kind,
            size=size,
        )

        return one_listed_conductor
