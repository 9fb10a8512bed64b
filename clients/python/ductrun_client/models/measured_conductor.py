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

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="MeasuredConductor")


@_attrs_define
class MeasuredConductor:
    """Single conductors by measured diameter over the insulation (Chapter 9, Table 1, Note 5).

    Attributes:
        count (int): How many, grounding and bonding conductors included.
        diameter (Length): A length with its unit.
        kind (Literal['measured']): Fixed text that says: by diameter.
    """

    count: int
    diameter: Length
    kind: Literal["measured"]

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        diameter = self.diameter.to_dict()

        kind = self.kind

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "diameter": diameter,
                "kind": kind,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        diameter = Length.from_dict(d.pop("diameter"))

        kind = cast(Literal["measured"], d.pop("kind"))
        if kind != "measured":
            raise ValueError(f"kind must match const 'measured', got '{kind}'")

        measured_conductor = cls(
            count=count,
            diameter=diameter,
            kind=kind,
        )

        return measured_conductor
