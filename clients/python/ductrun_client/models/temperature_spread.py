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
    from ..models.temperature_difference import TemperatureDifference


T = TypeVar("T", bound="TemperatureSpread")


@_attrs_define
class TemperatureSpread:
    """The difference between the highest and lowest temperature of the conduit, sun included.

    Attributes:
        difference (TemperatureDifference): A difference between two temperatures with its unit.
        kind (Literal['difference']): Fixed text that says: by the difference.
    """

    difference: TemperatureDifference
    kind: Literal["difference"]

    def to_dict(self) -> dict[str, Any]:
        difference = self.difference.to_dict()

        kind = self.kind

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "difference": difference,
                "kind": kind,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.temperature_difference import TemperatureDifference  # noqa: PLC0415

        d = dict(src_dict)
        difference = TemperatureDifference.from_dict(d.pop("difference"))

        kind = cast(Literal["difference"], d.pop("kind"))
        if kind != "difference":
            raise ValueError(f"kind must match const 'difference', got '{kind}'")

        temperature_spread = cls(
            difference=difference,
            kind=kind,
        )

        return temperature_spread
