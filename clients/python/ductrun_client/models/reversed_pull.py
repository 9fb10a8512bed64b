from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.section_tension import SectionTension


T = TypeVar("T", bound="ReversedPull")


@_attrs_define
class ReversedPull:
    """The same pull from the other end.

    Attributes:
        sections (list[SectionTension]): The sections in the order of this pull: the route from its last section to its
            first.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The larger share of the two limits that is used.
        within_limits (bool): Whether tension and sidewall pressure keep their limits.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    sections: list[SectionTension]
    tension: Force
    utilization_percent: float
    within_limits: bool
    sidewall_pressure: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        sections = []
        for sections_item_data in self.sections:
            sections_item = sections_item_data.to_dict()
            sections.append(sections_item)

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        within_limits = self.within_limits

        sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sidewall_pressure, Unset):
            sidewall_pressure = self.sidewall_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "sections": sections,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "within_limits": within_limits,
            }
        )
        if sidewall_pressure is not UNSET:
            field_dict["sidewall_pressure"] = sidewall_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.section_tension import SectionTension  # noqa: PLC0415

        d = dict(src_dict)
        sections = []
        _sections = d.pop("sections")
        for sections_item_data in _sections:
            sections_item = SectionTension.from_dict(sections_item_data)

            sections.append(sections_item)

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        within_limits = d.pop("within_limits")

        _sidewall_pressure = d.pop("sidewall_pressure", UNSET)
        sidewall_pressure: ForcePerLength | Unset
        if isinstance(_sidewall_pressure, Unset):
            sidewall_pressure = UNSET
        else:
            sidewall_pressure = ForcePerLength.from_dict(_sidewall_pressure)

        reversed_pull = cls(
            sections=sections,
            tension=tension,
            utilization_percent=utilization_percent,
            within_limits=within_limits,
            sidewall_pressure=sidewall_pressure,
        )

        reversed_pull.additional_properties = d
        return reversed_pull

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
