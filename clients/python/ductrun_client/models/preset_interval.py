from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.spacer_preset import SpacerPreset

T = TypeVar("T", bound="PresetInterval")


@_attrs_define
class PresetInterval:
    """The interval of a published specification or of the trade, by name.

    Attributes:
        kind (Literal['preset']): Fixed text that says: by a specification.
        preset (SpacerPreset): Intervals of published specifications and of the trade, named after where they come from.
    """

    kind: Literal["preset"]
    preset: SpacerPreset

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        preset = self.preset.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "preset": preset,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        kind = cast(Literal["preset"], d.pop("kind"))
        if kind != "preset":
            raise ValueError(f"kind must match const 'preset', got '{kind}'")

        preset = SpacerPreset(d.pop("preset"))

        preset_interval = cls(
            kind=kind,
            preset=preset,
        )

        return preset_interval
