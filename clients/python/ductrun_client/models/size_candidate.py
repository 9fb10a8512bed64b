from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.trade_size import TradeSize
from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area


T = TypeVar("T", bound="SizeCandidate")


@_attrs_define
class SizeCandidate:
    """One trade size of the type with what the set would take of it.

    Attributes:
        conduit_area (Area): An area with its unit.
        fill_percent (float): Conductor area in percent of conduit area.
        limit_area (Area): An area with its unit.
        passes_bore (bool): Whether every conductor is narrower than the bore.
        rounding_decided (bool): Whether it complies only by the 0.8 rule of Note 7.
        spare_area (Area): An area with its unit.
        trade_size (TradeSize): Trade sizes of conduit; a name, not a dimension.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        jam_ratio (float | Unset): Conduit over cable diameter; for three conductors or cables only.
        jam_ratio_with_ovality (float | Unset): The same times 1.05.
    """

    conduit_area: Area
    fill_percent: float
    limit_area: Area
    passes_bore: bool
    rounding_decided: bool
    spare_area: Area
    trade_size: TradeSize
    verdict: Verdict
    jam_ratio: float | Unset = UNSET
    jam_ratio_with_ovality: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conduit_area = self.conduit_area.to_dict()

        fill_percent = self.fill_percent

        limit_area = self.limit_area.to_dict()

        passes_bore = self.passes_bore

        rounding_decided = self.rounding_decided

        spare_area = self.spare_area.to_dict()

        trade_size = self.trade_size.value

        verdict = self.verdict.value

        jam_ratio = self.jam_ratio

        jam_ratio_with_ovality = self.jam_ratio_with_ovality

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conduit_area": conduit_area,
                "fill_percent": fill_percent,
                "limit_area": limit_area,
                "passes_bore": passes_bore,
                "rounding_decided": rounding_decided,
                "spare_area": spare_area,
                "trade_size": trade_size,
                "verdict": verdict,
            }
        )
        if jam_ratio is not UNSET:
            field_dict["jam_ratio"] = jam_ratio
        if jam_ratio_with_ovality is not UNSET:
            field_dict["jam_ratio_with_ovality"] = jam_ratio_with_ovality

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415

        d = dict(src_dict)
        conduit_area = Area.from_dict(d.pop("conduit_area"))

        fill_percent = d.pop("fill_percent")

        limit_area = Area.from_dict(d.pop("limit_area"))

        passes_bore = d.pop("passes_bore")

        rounding_decided = d.pop("rounding_decided")

        spare_area = Area.from_dict(d.pop("spare_area"))

        trade_size = TradeSize(d.pop("trade_size"))

        verdict = Verdict(d.pop("verdict"))

        jam_ratio = d.pop("jam_ratio", UNSET)

        jam_ratio_with_ovality = d.pop("jam_ratio_with_ovality", UNSET)

        size_candidate = cls(
            conduit_area=conduit_area,
            fill_percent=fill_percent,
            limit_area=limit_area,
            passes_bore=passes_bore,
            rounding_decided=rounding_decided,
            spare_area=spare_area,
            trade_size=trade_size,
            verdict=verdict,
            jam_ratio=jam_ratio,
            jam_ratio_with_ovality=jam_ratio_with_ovality,
        )

        size_candidate.additional_properties = d
        return size_candidate

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
