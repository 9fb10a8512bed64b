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


T = TypeVar("T", bound="Cable")


@_attrs_define
class Cable:
    """Multiconductor cables or cords; each counts as one, an elliptical one by its major diameter (Note 9).

    Attributes:
        count (int): How many.
        kind (Literal['cable']): Fixed text that says: a cable with an overall jacket.
        major_diameter (Length): A length with its unit.
    """

    count: int
    kind: Literal["cable"]
    major_diameter: Length

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        kind = self.kind

        major_diameter = self.major_diameter.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "kind": kind,
                "major_diameter": major_diameter,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        kind = cast(Literal["cable"], d.pop("kind"))
        if kind != "cable":
            raise ValueError(f"kind must match const 'cable', got '{kind}'")

        major_diameter = Length.from_dict(d.pop("major_diameter"))

        cable = cls(
            count=count,
            kind=kind,
            major_diameter=major_diameter,
        )

        return cable
