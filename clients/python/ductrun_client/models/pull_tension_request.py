from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.attachment import Attachment
from ..models.cable_arrangement import CableArrangement
from ..models.code_edition import CodeEdition
from ..models.conductor_counting import ConductorCounting
from ..models.weight_correction_use import WeightCorrectionUse
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_line import CableLine
    from ..models.cable_order import CableOrder
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.friction_range import FrictionRange
    from ..models.horizontal_bend_section import HorizontalBendSection
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit
    from ..models.straight_section import StraightSection
    from ..models.vertical_bend_section import VerticalBendSection


T = TypeVar("T", bound="PullTensionRequest")


@_attrs_define
class PullTensionRequest:
    """Cables, conduit, and the route in the order of the pull; and what to find beside the tension.

    Attributes:
        cables (list[CableLine]): The cables pulled together, one line for each kind.
        conduit (ListedConduit | MeasuredConduit):
        sections (list[HorizontalBendSection | StraightSection | VerticalBendSection]): The route, in the order of the
            pull, every bend and elbow included.
        allowable_sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is
            one.
        allowable_tension (Force | Unset): A force with its unit; tension is a force.
        arrangement (CableArrangement | Unset): How cables lie in the conduit; three cables lie triangular or cradled,
            triplexed if twisted at the factory.

            In the worst case each check takes the arrangement that asks most.
        attachment (Attachment | Unset): Ways to hold the cable: by its conductors or by its jacket.
        brake_limit (Force | Unset): A force with its unit; tension is a force.
        braking_friction_coefficient (float | Unset): Low coefficient of friction, at which a cable runs away downhill
            most: the reel brake reckons with it.
        cable_order (CableOrder | Unset): What is added to the route at each of its two ends, and how the cable comes.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        conductor_counting (ConductorCounting | Unset): Published rules for how many conductors share the pull: all of
            three, or two of three single conductors.
        device_limit (Force | Unset): A force with its unit; tension is a force.
        feed_length (Length | Unset): A length with its unit.
        find_largest (bool | Unset): Whether to find the largest friction, incoming tension and last straight that still
            comply.
        friction_coefficient (float | Unset): Coefficient of friction of one cable against the conduit.
        friction_range (FrictionRange | Unset): A low and a high coefficient of friction beside the expected one.
        grip_limit (Force | Unset): A force with its unit; tension is a force.
        incoming_tension (Force | Unset): A force with its unit; tension is a force.
        profile_spacing (Length | Unset): A length with its unit.
        weight_correction_factor (float | Unset): Factor on friction for cables side by side, in place of the one of
            their arrangement.
        weight_correction_in (WeightCorrectionUse | Unset): Two readings of the weight correction: in the bend exponent
            as well, or on straights alone.
    """

    cables: list[CableLine]
    conduit: ListedConduit | MeasuredConduit
    sections: list[HorizontalBendSection | StraightSection | VerticalBendSection]
    allowable_sidewall_pressure: ForcePerLength | Unset = UNSET
    allowable_tension: Force | Unset = UNSET
    arrangement: CableArrangement | Unset = UNSET
    attachment: Attachment | Unset = UNSET
    brake_limit: Force | Unset = UNSET
    braking_friction_coefficient: float | Unset = UNSET
    cable_order: CableOrder | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    conductor_counting: ConductorCounting | Unset = UNSET
    device_limit: Force | Unset = UNSET
    feed_length: Length | Unset = UNSET
    find_largest: bool | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    friction_range: FrictionRange | Unset = UNSET
    grip_limit: Force | Unset = UNSET
    incoming_tension: Force | Unset = UNSET
    profile_spacing: Length | Unset = UNSET
    weight_correction_factor: float | Unset = UNSET
    weight_correction_in: WeightCorrectionUse | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.horizontal_bend_section import HorizontalBendSection  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.straight_section import StraightSection  # noqa: PLC0415

        cables = []
        for cables_item_data in self.cables:
            cables_item = cables_item_data.to_dict()
            cables.append(cables_item)

        conduit: dict[str, Any]
        if isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        sections = []
        for sections_item_data in self.sections:
            sections_item: dict[str, Any]
            if isinstance(sections_item_data, StraightSection):
                sections_item = sections_item_data.to_dict()
            elif isinstance(sections_item_data, HorizontalBendSection):
                sections_item = sections_item_data.to_dict()
            else:
                sections_item = sections_item_data.to_dict()

            sections.append(sections_item)

        allowable_sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_sidewall_pressure, Unset):
            allowable_sidewall_pressure = self.allowable_sidewall_pressure.to_dict()

        allowable_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_tension, Unset):
            allowable_tension = self.allowable_tension.to_dict()

        arrangement: str | Unset = UNSET
        if not isinstance(self.arrangement, Unset):
            arrangement = self.arrangement.value

        attachment: str | Unset = UNSET
        if not isinstance(self.attachment, Unset):
            attachment = self.attachment.value

        brake_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_limit, Unset):
            brake_limit = self.brake_limit.to_dict()

        braking_friction_coefficient = self.braking_friction_coefficient

        cable_order: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cable_order, Unset):
            cable_order = self.cable_order.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        conductor_counting: str | Unset = UNSET
        if not isinstance(self.conductor_counting, Unset):
            conductor_counting = self.conductor_counting.value

        device_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.device_limit, Unset):
            device_limit = self.device_limit.to_dict()

        feed_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.feed_length, Unset):
            feed_length = self.feed_length.to_dict()

        find_largest = self.find_largest

        friction_coefficient = self.friction_coefficient

        friction_range: dict[str, Any] | Unset = UNSET
        if not isinstance(self.friction_range, Unset):
            friction_range = self.friction_range.to_dict()

        grip_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.grip_limit, Unset):
            grip_limit = self.grip_limit.to_dict()

        incoming_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.incoming_tension, Unset):
            incoming_tension = self.incoming_tension.to_dict()

        profile_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.profile_spacing, Unset):
            profile_spacing = self.profile_spacing.to_dict()

        weight_correction_factor = self.weight_correction_factor

        weight_correction_in: str | Unset = UNSET
        if not isinstance(self.weight_correction_in, Unset):
            weight_correction_in = self.weight_correction_in.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "cables": cables,
                "conduit": conduit,
                "sections": sections,
            }
        )
        if allowable_sidewall_pressure is not UNSET:
            field_dict["allowable_sidewall_pressure"] = allowable_sidewall_pressure
        if allowable_tension is not UNSET:
            field_dict["allowable_tension"] = allowable_tension
        if arrangement is not UNSET:
            field_dict["arrangement"] = arrangement
        if attachment is not UNSET:
            field_dict["attachment"] = attachment
        if brake_limit is not UNSET:
            field_dict["brake_limit"] = brake_limit
        if braking_friction_coefficient is not UNSET:
            field_dict["braking_friction_coefficient"] = braking_friction_coefficient
        if cable_order is not UNSET:
            field_dict["cable_order"] = cable_order
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if conductor_counting is not UNSET:
            field_dict["conductor_counting"] = conductor_counting
        if device_limit is not UNSET:
            field_dict["device_limit"] = device_limit
        if feed_length is not UNSET:
            field_dict["feed_length"] = feed_length
        if find_largest is not UNSET:
            field_dict["find_largest"] = find_largest
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if friction_range is not UNSET:
            field_dict["friction_range"] = friction_range
        if grip_limit is not UNSET:
            field_dict["grip_limit"] = grip_limit
        if incoming_tension is not UNSET:
            field_dict["incoming_tension"] = incoming_tension
        if profile_spacing is not UNSET:
            field_dict["profile_spacing"] = profile_spacing
        if weight_correction_factor is not UNSET:
            field_dict["weight_correction_factor"] = weight_correction_factor
        if weight_correction_in is not UNSET:
            field_dict["weight_correction_in"] = weight_correction_in

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_line import CableLine  # noqa: PLC0415
        from ..models.cable_order import CableOrder  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.friction_range import FrictionRange  # noqa: PLC0415
        from ..models.horizontal_bend_section import HorizontalBendSection  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415
        from ..models.straight_section import StraightSection  # noqa: PLC0415
        from ..models.vertical_bend_section import VerticalBendSection  # noqa: PLC0415

        d = dict(src_dict)
        cables = []
        _cables = d.pop("cables")
        for cables_item_data in _cables:
            cables_item = CableLine.from_dict(cables_item_data)

            cables.append(cables_item)

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_conduit_type_0 = ListedConduit.from_dict(data)

                return componentsschemas_conduit_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_conduit_type_1 = MeasuredConduit.from_dict(data)

            return componentsschemas_conduit_type_1

        conduit = _parse_conduit(d.pop("conduit"))

        sections = []
        _sections = d.pop("sections")
        for sections_item_data in _sections:

            def _parse_sections_item(
                data: object,
            ) -> HorizontalBendSection | StraightSection | VerticalBendSection:
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_route_section_type_0 = StraightSection.from_dict(data)

                    return componentsschemas_route_section_type_0
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_route_section_type_1 = HorizontalBendSection.from_dict(data)

                    return componentsschemas_route_section_type_1
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_route_section_type_2 = VerticalBendSection.from_dict(data)

                return componentsschemas_route_section_type_2

            sections_item = _parse_sections_item(sections_item_data)

            sections.append(sections_item)

        _allowable_sidewall_pressure = d.pop("allowable_sidewall_pressure", UNSET)
        allowable_sidewall_pressure: ForcePerLength | Unset
        if isinstance(_allowable_sidewall_pressure, Unset):
            allowable_sidewall_pressure = UNSET
        else:
            allowable_sidewall_pressure = ForcePerLength.from_dict(_allowable_sidewall_pressure)

        _allowable_tension = d.pop("allowable_tension", UNSET)
        allowable_tension: Force | Unset
        if isinstance(_allowable_tension, Unset):
            allowable_tension = UNSET
        else:
            allowable_tension = Force.from_dict(_allowable_tension)

        _arrangement = d.pop("arrangement", UNSET)
        arrangement: CableArrangement | Unset
        if isinstance(_arrangement, Unset):
            arrangement = UNSET
        else:
            arrangement = CableArrangement(_arrangement)

        _attachment = d.pop("attachment", UNSET)
        attachment: Attachment | Unset
        if isinstance(_attachment, Unset):
            attachment = UNSET
        else:
            attachment = Attachment(_attachment)

        _brake_limit = d.pop("brake_limit", UNSET)
        brake_limit: Force | Unset
        if isinstance(_brake_limit, Unset):
            brake_limit = UNSET
        else:
            brake_limit = Force.from_dict(_brake_limit)

        braking_friction_coefficient = d.pop("braking_friction_coefficient", UNSET)

        _cable_order = d.pop("cable_order", UNSET)
        cable_order: CableOrder | Unset
        if isinstance(_cable_order, Unset):
            cable_order = UNSET
        else:
            cable_order = CableOrder.from_dict(_cable_order)

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _conductor_counting = d.pop("conductor_counting", UNSET)
        conductor_counting: ConductorCounting | Unset
        if isinstance(_conductor_counting, Unset):
            conductor_counting = UNSET
        else:
            conductor_counting = ConductorCounting(_conductor_counting)

        _device_limit = d.pop("device_limit", UNSET)
        device_limit: Force | Unset
        if isinstance(_device_limit, Unset):
            device_limit = UNSET
        else:
            device_limit = Force.from_dict(_device_limit)

        _feed_length = d.pop("feed_length", UNSET)
        feed_length: Length | Unset
        if isinstance(_feed_length, Unset):
            feed_length = UNSET
        else:
            feed_length = Length.from_dict(_feed_length)

        find_largest = d.pop("find_largest", UNSET)

        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _friction_range = d.pop("friction_range", UNSET)
        friction_range: FrictionRange | Unset
        if isinstance(_friction_range, Unset):
            friction_range = UNSET
        else:
            friction_range = FrictionRange.from_dict(_friction_range)

        _grip_limit = d.pop("grip_limit", UNSET)
        grip_limit: Force | Unset
        if isinstance(_grip_limit, Unset):
            grip_limit = UNSET
        else:
            grip_limit = Force.from_dict(_grip_limit)

        _incoming_tension = d.pop("incoming_tension", UNSET)
        incoming_tension: Force | Unset
        if isinstance(_incoming_tension, Unset):
            incoming_tension = UNSET
        else:
            incoming_tension = Force.from_dict(_incoming_tension)

        _profile_spacing = d.pop("profile_spacing", UNSET)
        profile_spacing: Length | Unset
        if isinstance(_profile_spacing, Unset):
            profile_spacing = UNSET
        else:
            profile_spacing = Length.from_dict(_profile_spacing)

        weight_correction_factor = d.pop("weight_correction_factor", UNSET)

        _weight_correction_in = d.pop("weight_correction_in", UNSET)
        weight_correction_in: WeightCorrectionUse | Unset
        if isinstance(_weight_correction_in, Unset):
            weight_correction_in = UNSET
        else:
            weight_correction_in = WeightCorrectionUse(_weight_correction_in)

        pull_tension_request = cls(
            cables=cables,
            conduit=conduit,
            sections=sections,
            allowable_sidewall_pressure=allowable_sidewall_pressure,
            allowable_tension=allowable_tension,
            arrangement=arrangement,
            attachment=attachment,
            brake_limit=brake_limit,
            braking_friction_coefficient=braking_friction_coefficient,
            cable_order=cable_order,
            code_edition=code_edition,
            conductor_counting=conductor_counting,
            device_limit=device_limit,
            feed_length=feed_length,
            find_largest=find_largest,
            friction_coefficient=friction_coefficient,
            friction_range=friction_range,
            grip_limit=grip_limit,
            incoming_tension=incoming_tension,
            profile_spacing=profile_spacing,
            weight_correction_factor=weight_correction_factor,
            weight_correction_in=weight_correction_in,
        )

        return pull_tension_request
