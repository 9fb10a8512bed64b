from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.current import Current


T = TypeVar("T", bound="AmpacitySensitivity")


@_attrs_define
class AmpacitySensitivity:
    """What a member of the request, greater by a step, makes of the ampacity.

    Attributes:
        ampacity (Current): An electric current with its unit.
        ampacity_change_percent (float): Negative where it costs.
        member (str): The member.
        step_percent (float): By how much it is greater.
    """

    ampacity: Current
    ampacity_change_percent: float
    member: str
    step_percent: float
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ampacity = self.ampacity.to_dict()

        ampacity_change_percent = self.ampacity_change_percent

        member = self.member

        step_percent = self.step_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ampacity": ampacity,
                "ampacity_change_percent": ampacity_change_percent,
                "member": member,
                "step_percent": step_percent,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.current import Current  # noqa: PLC0415

        d = dict(src_dict)
        ampacity = Current.from_dict(d.pop("ampacity"))

        ampacity_change_percent = d.pop("ampacity_change_percent")

        member = d.pop("member")

        step_percent = d.pop("step_percent")

        ampacity_sensitivity = cls(
            ampacity=ampacity,
            ampacity_change_percent=ampacity_change_percent,
            member=member,
            step_percent=step_percent,
        )

        ampacity_sensitivity.additional_properties = d
        return ampacity_sensitivity

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
