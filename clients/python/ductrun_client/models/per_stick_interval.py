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


T = TypeVar("T", bound="PerStickInterval")


@_attrs_define
class PerStickInterval:
    """So many stations for each stick of duct.

    Attributes:
        count (int): Stations for each stick.
        kind (Literal['per_stick']): Fixed text that says: by stick.
        stick_length (Length): A length with its unit.
    """

    count: int
    kind: Literal["per_stick"]
    stick_length: Length

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        kind = self.kind

        stick_length = self.stick_length.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "kind": kind,
                "stick_length": stick_length,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        kind = cast(Literal["per_stick"], d.pop("kind"))
        if kind != "per_stick":
            raise ValueError(f"kind must match const 'per_stick', got '{kind}'")

        stick_length = Length.from_dict(d.pop("stick_length"))

        per_stick_interval = cls(
            count=count,
            kind=kind,
            stick_length=stick_length,
        )

        return per_stick_interval
