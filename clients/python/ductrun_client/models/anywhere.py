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


T = TypeVar("T", bound="Anywhere")


@_attrs_define
class Anywhere:
    """Pull points may stand anywhere on a straight, at places no more than a spacing apart.

    Attributes:
        kind (Literal['anywhere']): Fixed text that says: anywhere on straights.
        spacing (Length): A length with its unit.
    """

    kind: Literal["anywhere"]
    spacing: Length

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        spacing = self.spacing.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "spacing": spacing,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["anywhere"], d.pop("kind"))
        if kind != "anywhere":
            raise ValueError(f"kind must match const 'anywhere', got '{kind}'")

        spacing = Length.from_dict(d.pop("spacing"))

        anywhere = cls(
            kind=kind,
            spacing=spacing,
        )

        return anywhere
