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
    from ..models.braking_case import BrakingCase
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.friction_case import FrictionCase
    from ..models.largest_complying import LargestComplying
    from ..models.length import Length
    from ..models.ordered_cable import OrderedCable
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
        arrangement (CableArrangement): How cables lie in the conduit; three cables lie triangular or cradled, triplexed
            if twisted at the factory.

            In the worst case each check takes the arrangement that asks most.
        bend_total (Angle): An angle with its unit.
        better_direction (PullDirection): From which end the cable is pulled.
        better_reason (str): Why that end, in a sentence.
        highest_tension (Force): A force with its unit; tension is a force.
        incoming_tension (Force): A force with its unit; tension is a force.
        lubricant_volume (Volume): A volume with its unit.
        reversed_ (ReversedPull): The same pull from the other end.
        sections (list[SectionTension]): The sections in the order of the pull.
        tension (Force): A force with its unit; tension is a force.
        utilization_percent (float): The largest share of tension, sidewall pressure and brake that is used.
        weight_correction_factor (float): Factor on friction for that arrangement.
        allowable_tension (Force | Unset): A force with its unit; tension is a force.
        brake_tension (Force | Unset): A force with its unit; tension is a force.
        braking_case (BrakingCase | Unset): The pull at the low friction, at which the cable runs away most, from its
            own least brake.
        cables_to_order (list[OrderedCable] | Unset): The cable to order, a line of cables each, if asked.
        clearance (Length | Unset): A length with its unit.
        friction_cases (list[FrictionCase] | Unset): The pull at low, expected and high friction, if asked.
        handbook_clearance (Length | Unset): A length with its unit.
        jam_ratio (float | Unset): Conduit over cable diameter, where three cables govern.
        jam_ratio_with_ovality (float | Unset): The same times 1.05, the handbook allowance for ovality in bends.
        largest (LargestComplying | Unset): The largest values with which the pull as given would still comply; absent
            where none does.
        profile (list[ProfilePoint] | Unset): Tension along the run for plotting, if asked.
        sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    allowable_sidewall_pressure: ForcePerLength
    arrangement: CableArrangement
    bend_total: Angle
    better_direction: PullDirection
    better_reason: str
    highest_tension: Force
    incoming_tension: Force
    lubricant_volume: Volume
    reversed_: ReversedPull
    sections: list[SectionTension]
    tension: Force
    utilization_percent: float
    weight_correction_factor: float
    allowable_tension: Force | Unset = UNSET
    brake_tension: Force | Unset = UNSET
    braking_case: BrakingCase | Unset = UNSET
    cables_to_order: list[OrderedCable] | Unset = UNSET
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

        arrangement = self.arrangement.value

        bend_total = self.bend_total.to_dict()

        better_direction = self.better_direction.value

        better_reason = self.better_reason

        highest_tension = self.highest_tension.to_dict()

        incoming_tension = self.incoming_tension.to_dict()

        lubricant_volume = self.lubricant_volume.to_dict()

        reversed_ = self.reversed_.to_dict()

        sections = []
        for sections_item_data in self.sections:
            sections_item = sections_item_data.to_dict()
            sections.append(sections_item)

        tension = self.tension.to_dict()

        utilization_percent = self.utilization_percent

        weight_correction_factor = self.weight_correction_factor

        allowable_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_tension, Unset):
            allowable_tension = self.allowable_tension.to_dict()

        brake_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_tension, Unset):
            brake_tension = self.brake_tension.to_dict()

        braking_case: dict[str, Any] | Unset = UNSET
        if not isinstance(self.braking_case, Unset):
            braking_case = self.braking_case.to_dict()

        cables_to_order: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.cables_to_order, Unset):
            cables_to_order = []
            for cables_to_order_item_data in self.cables_to_order:
                cables_to_order_item = cables_to_order_item_data.to_dict()
                cables_to_order.append(cables_to_order_item)

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
                "arrangement": arrangement,
                "bend_total": bend_total,
                "better_direction": better_direction,
                "better_reason": better_reason,
                "highest_tension": highest_tension,
                "incoming_tension": incoming_tension,
                "lubricant_volume": lubricant_volume,
                "reversed": reversed_,
                "sections": sections,
                "tension": tension,
                "utilization_percent": utilization_percent,
                "weight_correction_factor": weight_correction_factor,
            }
        )
        if allowable_tension is not UNSET:
            field_dict["allowable_tension"] = allowable_tension
        if brake_tension is not UNSET:
            field_dict["brake_tension"] = brake_tension
        if braking_case is not UNSET:
            field_dict["braking_case"] = braking_case
        if cables_to_order is not UNSET:
            field_dict["cables_to_order"] = cables_to_order
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
        from ..models.braking_case import BrakingCase  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.friction_case import FrictionCase  # noqa: PLC0415
        from ..models.largest_complying import LargestComplying  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.ordered_cable import OrderedCable  # noqa: PLC0415
        from ..models.profile_point import ProfilePoint  # noqa: PLC0415
        from ..models.reversed_pull import ReversedPull  # noqa: PLC0415
        from ..models.section_tension import SectionTension  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        allowable_sidewall_pressure = ForcePerLength.from_dict(d.pop("allowable_sidewall_pressure"))

        arrangement = CableArrangement(d.pop("arrangement"))

        bend_total = Angle.from_dict(d.pop("bend_total"))

        better_direction = PullDirection(d.pop("better_direction"))

        better_reason = d.pop("better_reason")

        highest_tension = Force.from_dict(d.pop("highest_tension"))

        incoming_tension = Force.from_dict(d.pop("incoming_tension"))

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

        _allowable_tension = d.pop("allowable_tension", UNSET)
        allowable_tension: Force | Unset
        if isinstance(_allowable_tension, Unset):
            allowable_tension = UNSET
        else:
            allowable_tension = Force.from_dict(_allowable_tension)

        _brake_tension = d.pop("brake_tension", UNSET)
        brake_tension: Force | Unset
        if isinstance(_brake_tension, Unset):
            brake_tension = UNSET
        else:
            brake_tension = Force.from_dict(_brake_tension)

        _braking_case = d.pop("braking_case", UNSET)
        braking_case: BrakingCase | Unset
        if isinstance(_braking_case, Unset):
            braking_case = UNSET
        else:
            braking_case = BrakingCase.from_dict(_braking_case)

        _cables_to_order = d.pop("cables_to_order", UNSET)
        cables_to_order: list[OrderedCable] | Unset = UNSET
        if _cables_to_order is not UNSET:
            cables_to_order = []
            for cables_to_order_item_data in _cables_to_order:
                cables_to_order_item = OrderedCable.from_dict(cables_to_order_item_data)

                cables_to_order.append(cables_to_order_item)

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
            arrangement=arrangement,
            bend_total=bend_total,
            better_direction=better_direction,
            better_reason=better_reason,
            highest_tension=highest_tension,
            incoming_tension=incoming_tension,
            lubricant_volume=lubricant_volume,
            reversed_=reversed_,
            sections=sections,
            tension=tension,
            utilization_percent=utilization_percent,
            weight_correction_factor=weight_correction_factor,
            allowable_tension=allowable_tension,
            brake_tension=brake_tension,
            braking_case=braking_case,
            cables_to_order=cables_to_order,
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
