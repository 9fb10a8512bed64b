from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

T = TypeVar("T", bound="ExistingSetting")


@_attrs_define
class ExistingSetting:
    """Ducts that are there already: nothing is bought for them but cable, cord and proofing.

    Attributes:
        kind (Literal['existing']): Fixed text that says: ducts that are there already.
    """

    kind: Literal["existing"]

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
        kind = cast(Literal["existing"], d.pop("kind"))
        if kind != "existing":
            raise ValueError(f"kind must match const 'existing', got '{kind}'")

        existing_setting = cls(
            kind=kind,
        )

        return existing_setting
