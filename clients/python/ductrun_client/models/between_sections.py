from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

T = TypeVar("T", bound="BetweenSections")


@_attrs_define
class BetweenSections:
    """Pull points may stand at either end of every straight.

    Attributes:
        kind (Literal['between_sections']): Fixed text that says: at the ends of straights.
    """

    kind: Literal["between_sections"]

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        kind = cast(Literal["between_sections"], d.pop("kind"))
        if kind != "between_sections":
            raise ValueError(f"kind must match const 'between_sections', got '{kind}'")

        between_sections = cls(
            kind=kind,
        )

        return between_sections
