from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.pressure import Pressure


T = TypeVar("T", bound="TierInPour")


@_attrs_define
class TierInPour:
    """The ducts of one tier in wet concrete.

    Attributes:
        head (Length): A length with its unit.
        pressure (Pressure): A pressure or stress with its unit.
        tier (int): Tier, from 1 at the bottom.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        allowable_pressure (Pressure | Unset): A pressure or stress with its unit.
    """

    head: Length
    pressure: Pressure
    tier: int
    verdict: Verdict
    allowable_pressure: Pressure | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        head = self.head.to_dict()

        pressure = self.pressure.to_dict()

        tier = self.tier

        verdict = self.verdict.value

        allowable_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_pressure, Unset):
            allowable_pressure = self.allowable_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "head": head,
                "pressure": pressure,
                "tier": tier,
                "verdict": verdict,
            }
        )
        if allowable_pressure is not UNSET:
            field_dict["allowable_pressure"] = allowable_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        head = Length.from_dict(d.pop("head"))

        pressure = Pressure.from_dict(d.pop("pressure"))

        tier = d.pop("tier")

        verdict = Verdict(d.pop("verdict"))

        _allowable_pressure = d.pop("allowable_pressure", UNSET)
        allowable_pressure: Pressure | Unset
        if isinstance(_allowable_pressure, Unset):
            allowable_pressure = UNSET
        else:
            allowable_pressure = Pressure.from_dict(_allowable_pressure)

        tier_in_pour = cls(
            head=head,
            pressure=pressure,
            tier=tier,
            verdict=verdict,
            allowable_pressure=allowable_pressure,
        )

        tier_in_pour.additional_properties = d
        return tier_in_pour

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
