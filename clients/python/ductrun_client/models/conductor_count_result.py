from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.fill_limit_rule import FillLimitRule

if TYPE_CHECKING:
    from ..models.area import Area


T = TypeVar("T", bound="ConductorCountResult")


@_attrs_define
class ConductorCountResult:
    """How many may be in the conduit, and what decided.

    Attributes:
        conductor_area (Area): An area with its unit.
        conduit_area (Area): An area with its unit.
        exact_count (float): Percentage of the unrounded conduit area over one conductor's.
        fill_percent (float): What that many fill, in percent of conduit area.
        limit_percent (float): Percentage of that line.
        limit_reason (str): What that line says, in a sentence.
        limit_rule (FillLimitRule): Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit,
            or that of a nipple.
        maximum_count (int): Most conductors that comply; 0 if not even one does.
        rounding_decided (bool): Whether the count was rounded up, from 0.8 (Note 7).
    """

    conductor_area: Area
    conduit_area: Area
    exact_count: float
    fill_percent: float
    limit_percent: float
    limit_reason: str
    limit_rule: FillLimitRule
    maximum_count: int
    rounding_decided: bool
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conductor_area = self.conductor_area.to_dict()

        conduit_area = self.conduit_area.to_dict()

        exact_count = self.exact_count

        fill_percent = self.fill_percent

        limit_percent = self.limit_percent

        limit_reason = self.limit_reason

        limit_rule = self.limit_rule.value

        maximum_count = self.maximum_count

        rounding_decided = self.rounding_decided

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conductor_area": conductor_area,
                "conduit_area": conduit_area,
                "exact_count": exact_count,
                "fill_percent": fill_percent,
                "limit_percent": limit_percent,
                "limit_reason": limit_reason,
                "limit_rule": limit_rule,
                "maximum_count": maximum_count,
                "rounding_decided": rounding_decided,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415

        d = dict(src_dict)
        conductor_area = Area.from_dict(d.pop("conductor_area"))

        conduit_area = Area.from_dict(d.pop("conduit_area"))

        exact_count = d.pop("exact_count")

        fill_percent = d.pop("fill_percent")

        limit_percent = d.pop("limit_percent")

        limit_reason = d.pop("limit_reason")

        limit_rule = FillLimitRule(d.pop("limit_rule"))

        maximum_count = d.pop("maximum_count")

        rounding_decided = d.pop("rounding_decided")

        conductor_count_result = cls(
            conductor_area=conductor_area,
            conduit_area=conduit_area,
            exact_count=exact_count,
            fill_percent=fill_percent,
            limit_percent=limit_percent,
            limit_reason=limit_reason,
            limit_rule=limit_rule,
            maximum_count=maximum_count,
            rounding_decided=rounding_decided,
        )

        conductor_count_result.additional_properties = d
        return conductor_count_result

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
