from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength


T = TypeVar("T", bound="SectionTension")


@_attrs_define
class SectionTension:
    """One section of the pull.

    Attributes:
        highest_tension (Force): A force with its unit; tension is a force.
        tension_in (Force): A force with its unit; tension is a force.
        tension_out (Force): A force with its unit; tension is a force.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    highest_tension: Force
    tension_in: Force
    tension_out: Force
    sidewall_pressure: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        highest_tension = self.highest_tension.to_dict()

        tension_in = self.tension_in.to_dict()

        tension_out = self.tension_out.to_dict()

        sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sidewall_pressure, Unset):
            sidewall_pressure = self.sidewall_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "highest_tension": highest_tension,
                "tension_in": tension_in,
                "tension_out": tension_out,
            }
        )
        if sidewall_pressure is not UNSET:
            field_dict["sidewall_pressure"] = sidewall_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415

        d = dict(src_dict)
        highest_tension = Force.from_dict(d.pop("highest_tension"))

        tension_in = Force.from_dict(d.pop("tension_in"))

        tension_out = Force.from_dict(d.pop("tension_out"))

        _sidewall_pressure = d.pop("sidewall_pressure", UNSET)
        sidewall_pressure: ForcePerLength | Unset
        if isinstance(_sidewall_pressure, Unset):
            sidewall_pressure = UNSET
        else:
            sidewall_pressure = ForcePerLength.from_dict(_sidewall_pressure)

        section_tension = cls(
            highest_tension=highest_tension,
            tension_in=tension_in,
            tension_out=tension_out,
            sidewall_pressure=sidewall_pressure,
        )

        section_tension.additional_properties = d
        return section_tension

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
