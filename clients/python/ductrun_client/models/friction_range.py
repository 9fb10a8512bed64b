from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define

T = TypeVar("T", bound="FrictionRange")


@_attrs_define
class FrictionRange:
    """A low and a high coefficient of friction beside the expected one.

    Attributes:
        high (float): High coefficient, dry.
        low (float): Low coefficient, lubricated.
    """

    high: float
    low: float

    def to_dict(self) -> dict[str, Any]:
        high = self.high

        low = self.low

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "high": high,
                "low": low,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        high = d.pop("high")

        low = d.pop("low")

        friction_range = cls(
            high=high,
            low=low,
        )

        return friction_range
