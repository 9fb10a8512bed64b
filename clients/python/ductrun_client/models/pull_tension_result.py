from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.cable_arrangement import CableArrangement
from ..models.pull_direction import PullDirection
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.friction_case import FrictionCase
    from ..models.largest_complying import LargestComplying
    from ..models.length import Length
    from ..models.profile_point import ProfilePoint
    from ..models.reversed_pull import ReversedPull
    from ..models.section_tension import SectionTension
    from ..models.volume import Volume


T = TypeVar("T", bound="PullTensionResult")


@_attrs_define
class PullTensionResult:
    """The pull from the first section to the last, and from the other end.

    Attributes:
        allowable_sidewall_pressure (ForcePerLength): A force per length with its unit; sidewall pressure is one.
        allowable_tension (Force): A force with its unit; tension is a force.
        arrangement (CableArrangement): How cables lie in the conduit; three cables lie triangular or cradled.
        bend_total (Angle): An angle with its unit.
        better_direction (PullDirection): From which end the cable is pulled.
        better_reason (str): Why that end, in a sentence.
        highest_tension (Force): A force with its unit; tension is a force.
        lubricant_volume (Volume): A volume with its unit.
        reversed_ (ReversedPull): The same pull from the other end.
        sections (list[SectionTension]): The sections in the order of the pull.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The larger share of the two limits that is used.
        weight_correction_factor (float): Factor on friction for that arrangement.
        within_limits (bool): Whether tension and sidewall pressure keep their limits.
        clearance (Length | Unset): A length with its unit.
        friction_cases (list[FrictionCase] | Unset): The pull at low, expected and high friction, if asked.
        handbook_clearance (Length | Unset): A length with its unit.
        jam_ratio (float | Unset): Conduit over cable diameter; for three cables only.
        jam_ratio_with_ovality (float | Unset): The same times 1.05, the handbook allowance for ovality in bends.
        largest (LargestComplying | Unset): The largest values with which the pull as given would still comply; absent
            where none does.
        profile (list[ProfilePoint] | Unset): Tension along the run for plotting, if asked.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    allowable_sidewall_pressure: ForcePerLength
    allowable_tension: Force
    arrangement: CableArrangement
    bend_total: Angle
    better_direction: PullDirection
    better_reason: str
    highest_tension: Force
    lubricant_volume: Volume
    reversed_: ReversedPull
    sections: list[SectionTension]
    tension: Force
    utilization_percent: float
    weight_correction_factor: float
    within_limits: bool
    clearance: Length | Unset = UNSET
    friction_cases: list[FrictionCase] | Unset = UNSET
    handbook_clearance: Length | Unset = UNSET
    jam_ratio: float | Unset = UNSET
    jam_ratio_with_ovality: float | Unset = UNSET
    largest: LargestComplying | Unset = UNSET
    profile: list[ProfilePoint] | Unset = UNSET
    sidewall_pressure: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        allowable_sidewall_pressure = self.allowable_sidewall_pressure.to_dict()

        allowable_tension = self.allowable_tension.to_dict()

        arrangement = self.arrangement.value

        bend_total = self.bend_total.to_dict()

        better_direction = self.better_direction.value

        better_reason = self.better_reason

        highest_tension = self.highest_tension.to_dict()

        lubricant_volume = self.lubricant_volume.to_dict()

        reversed_ = self.reversed_.to_dict()

        sections = []
        for sections_item_data in self.sections:
            sections_item = sections_item_data.to_dict()
            sections.append(sections_item)

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        weight_correction_factor = self.weight_correction_factor

        within_limits = self.within_limits

        clearance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.clearance, Unset):
            clearance = self.clearance.to_dict()

        friction_cases: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.friction_cases, Unset):
            friction_cases = []
            for friction_cases_item_data in self.friction_cases:
                friction_cases_item = friction_cases_item_data.to_dict()
                friction_cases.append(friction_cases_item)

        handbook_clearance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.handbook_clearance, Unset):
            handbook_clearance = self.handbook_clearance.to_dict()

        jam_ratio = self.jam_ratio

        jam_ratio_with_ovality = self.jam_ratio_with_ovality

        largest: dict[str, Any] | Unset = UNSET
        if not isinstance(self.largest, Unset):
            largest = self.largest.to_dict()

        profile: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.profile, Unset):
            profile = []
            for profile_item_data in self.profile:
                profile_item = profile_item_data.to_dict()
                profile.append(profile_item)

        sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sidewall_pressure, Unset):
            sidewall_pressure = self.sidewall_pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "allowable_sidewall_pressure": allowable_sidewall_pressure,
                "allowable_tension": allowable_tension,
                "arrangement": arrangement,
                "bend_total": bend_total,
                "better_direction": better_direction,
                "better_reason": better_reason,
                "highest_tension": highest_tension,
                "lubricant_volume": lubricant_volume,
                "reversed": reversed_,
                "sections": sections,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "weight_correction_factor": weight_correction_factor,
                "within_limits": within_limits,
            }
        )
        if clearance is not UNSET:
            field_dict["clearance"] = clearance
        if friction_cases is not UNSET:
            field_dict["friction_cases"] = friction_cases
        if handbook_clearance is not UNSET:
            field_dict["handbook_clearance"] = handbook_clearance
        if jam_ratio is not UNSET:
            field_dict["jam_ratio"] = jam_ratio
        if jam_ratio_with_ovality is not UNSET:
            field_dict["jam_ratio_with_ovality"] = jam_ratio_with_ovality
        if largest is not UNSET:
            field_dict["largest"] = largest
        if profile is not UNSET:
            field_dict["profile"] = profile
        if sidewall_pressure is not UNSET:
            field_dict["sidewall_pressure"] = sidewall_pressure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.friction_case import FrictionCase  # noqa: PLC0415
        from ..models.largest_complying import LargestComplying  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.profile_point import ProfilePoint  # noqa: PLC0415
        from ..models.reversed_pull import ReversedPull  # noqa: PLC0415
        from ..models.section_tension import SectionTension  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        allowable_sidewall_pressure = ForcePerLength.from_dict(d.pop("allowable_sidewall_pressure"))

        allowable_tension = Force.from_dict(d.pop("allowable_tension"))

        arrangement = CableArrangement(d.pop("arrangement"))

        bend_total = Angle.from_dict(d.pop("bend_total"))

        better_direction = PullDirection(d.pop("better_direction"))

        better_reason = d.pop("better_reason")

        highest_tension = Force.from_dict(d.pop("highest_tension"))

        lubricant_volume = Volume.from_dict(d.pop("lubricant_volume"))

        reversed_ = ReversedPull.from_dict(d.pop("reversed"))

        sections = []
        _sections = d.pop("sections")
        for sections_item_data in _sections:
            sections_item = SectionTension.from_dict(sections_item_data)

            sections.append(sections_item)

        tension = Force.from_dict(d.pop("tension"))

        utilization_percent = d.pop("utilization_percent")

        weight_correction_factor = d.pop("weight_correction_factor")

        within_limits = d.pop("within_limits")

        _clearance = d.pop("clearance", UNSET)
        clearance: Length | Unset
        if isinstance(_clearance, Unset):
            clearance = UNSET
        else:
            clearance = Length.from_dict(_clearance)

        _friction_cases = d.pop("friction_cases", UNSET)
        friction_cases: list[FrictionCase] | Unset = UNSET
        if _friction_cases is not UNSET:
            friction_cases = []
            for friction_cases_item_data in _friction_cases:
                friction_cases_item = FrictionCase.from_dict(friction_cases_item_data)

                friction_cases.append(friction_cases_item)

        _handbook_clearance = d.pop("handbook_clearance", UNSET)
        handbook_clearance: Length | Unset
        if isinstance(_handbook_clearance, Unset):
            handbook_clearance = UNSET
        else:
            handbook_clearance = Length.from_dict(_handbook_clearance)

        jam_ratio = d.pop("jam_ratio", UNSET)

        jam_ratio_with_ovality = d.pop("jam_ratio_with_ovality", UNSET)

        _largest = d.pop("largest", UNSET)
        largest: LargestComplying | Unset
        if isinstance(_largest, Unset):
            largest = UNSET
        else:
            largest = LargestComplying.from_dict(_largest)

        _profile = d.pop("profile", UNSET)
        profile: list[ProfilePoint] | Unset = UNSET
        if _profile is not UNSET:
            profile = []
            for profile_item_data in _profile:
                profile_item = ProfilePoint.from_dict(profile_item_data)

                profile.append(profile_item)

        _sidewall_pressure = d.pop("sidewall_pressure", UNSET)
        sidewall_pressure: ForcePerLength | Unset
        if isinstance(_sidewall_pressure, Unset):
            sidewall_pressure = UNSET
        else:
            sidewall_pressure = ForcePerLength.from_dict(_sidewall_pressure)

        pull_tension_result = cls(
            allowable_sidewall_pressure=allowable_sidewall_pressure,
            allowable_tension=allowable_tension,
            arrangement=arrangement,
            bend_total=bend_total,
            better_direction=better_direction,
            better_reason=better_reason,
            highest_tension=highest_tension,
            lubricant_volume=lubricant_volume,
            reversed_=reversed_,
            sections=sections,
            tension=tension,
            utilization_percent=utilization_percent,
            weight_correction_factor=weight_correction_factor,
            within_limits=within_limits,
            clearance=clearance,
            friction_cases=friction_cases,
            handbook_clearance=handbook_clearance,
            jam_ratio=jam_ratio,
            jam_ratio_with_ovality=jam_ratio_with_ovality,
            largest=largest,
            profile=profile,
            sidewall_pressure=sidewall_pressure,
        )

        pull_tension_result.additional_properties = d
        return pull_tension_result

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
