from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force_per_length import ForcePerLength


T = TypeVar("T", bound="InService")


@_attrs_define
class InService:
    """Empty ducts in groundwater.

    Attributes:
        hold_down_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        uplift_per_length (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        factor_ratio (float | Unset): The second over the first; absent where nothing lifts.
    """

    hold_down_per_length: ForcePerLength
    uplift_per_length: ForcePerLength
    verdict: Verdict
    factor_ratio: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        hold_down_per_length = self.hold_down_per_length.to_dict()

        uplift_per_length = self.uplift_per_length.to_dict()

        verdict = self.verdict.value

        factor_ratio = self.factor_ratio

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "hold_down_per_length": hold_down_per_length,
                "uplift_per_length": uplift_per_length,
                "verdict": verdict,
            }
        )
        if factor_ratio is not UNSET:
            field_dict["factor_ratio"] = factor_ratio

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        hold_down_per_length = ForcePerLength.from_dict(d.pop("hold_down_per_length"))

        uplift_per_length = ForcePerLength.from_dict(d.pop("uplift_per_length"))

        verdict = Verdict(d.pop("verdict"))

        factor_ratio = d.pop("factor_ratio", UNSET)

        in_service = cls(
            hold_down_per_length=hold_down_per_length,
            uplift_per_length=uplift_per_length,
            verdict=verdict,
            factor_ratio=factor_ratio,
        )

        in_service.additional_properties = d
        return in_service

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
