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


T = TypeVar("T", bound="OneCable")


@_attrs_define
class OneCable:
    """A multiconductor cable or cord: it counts as one, an elliptical one by its major diameter (Note 9).

    Attributes:
        kind (Literal['cable']): Fixed text that says: a cable with an overall jacket.
        major_diameter (Length): A length with its unit.
    """

    kind: Literal["cable"]
    major_diameter: Length

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        major_diameter = self.major_diameter.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "major_diameter": major_diameter,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["cable"], d.pop("kind"))
        if kind != "cable":
            raise ValueError(f"kind must match const 'cable', got '{kind}'")

        major_diameter = Length.from_dict(d.pop("major_diameter"))

        one_cable = cls(
            kind=kind,
            major_diameter=major_diameter,
        )

        return one_cable
