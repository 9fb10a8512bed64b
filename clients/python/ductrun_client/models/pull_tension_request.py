from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.attachment import Attachment
from ..models.code_edition import CodeEdition
from ..models.conductor_counting import ConductorCounting
from ..models.weight_correction_use import WeightCorrectionUse
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_set import CableSet
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
        cables (CableSet): Equal cables pulled together.
        conduit (ListedConduit | MeasuredConduit):
        sections (list[HorizontalBendSection | StraightSection | VerticalBendSection]): The route, in the order of the
            pull, every bend and elbow included.
        allowable_sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is
            one.
        allowable_tension (Force | Unset): A force with its unit; tension is a force.
        attachment (Attachment | Unset): Ways to hold the cable: by its conductors or by its jacket.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        conductor_counting (ConductorCounting | Unset): Published rules for how many conductors share the pull: all of
            three, or two of three single conductors.
        device_limit (Force | Unset): A force with its unit; tension is a force.
        find_largest (bool | Unset): Whether to find the largest friction, incoming tension and last straight that still
            comply.
        friction_coefficient (float | Unset): Coefficient of friction of one cable against the conduit.
        friction_range (FrictionRange | Unset): A low and a high coefficient of friction beside the expected one.
        grip_limit (Force | Unset): A force with its unit; tension is a force.
        incoming_tension (Force | Unset): A force with its unit; tension is a force.
        profile_spacing (Length | Unset): A length with its unit.
        weight_correction_in (WeightCorrectionUse | Unset): Two readings of the weight correction: in the bend exponent
            as well, or on straights alone.
    """

    cables: CableSet
    conduit: ListedConduit | MeasuredConduit
    sections: list[HorizontalBendSection | StraightSection | VerticalBendSection]
    allowable_sidewall_pressure: ForcePerLength | Unset = UNSET
    allowable_tension: Force | Unset = UNSET
    attachment: Attachment | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    conductor_counting: ConductorCounting | Unset = UNSET
    device_limit: Force | Unset = UNSET
    find_largest: bool | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    friction_range: FrictionRange | Unset = UNSET
    grip_limit: Force | Unset = UNSET
    incoming_tension: Force | Unset = UNSET
    profile_spacing: Length | Unset = UNSET
    weight_correction_in: WeightCorrectionUse | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.horizontal_bend_section import HorizontalBendSection  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.straight_section import StraightSection  # noqa: PLC0415

        cables = self.cables.to_dict()

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

        attachment: str | Unset = UNSET
        if not isinstance(self.attachment, Unset):
            attachment = self.attachment.value

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        conductor_counting: str | Unset = UNSET
        if not isinstance(self.conductor_counting, Unset):
            conductor_counting = self.conductor_counting.value

        device_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.device_limit, Unset):
            device_limit = self.device_limit.to_dict()

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
        if attachment is not UNSET:
            field_dict["attachment"] = attachment
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if conductor_counting is not UNSET:
            field_dict["conductor_counting"] = conductor_counting
        if device_limit is not UNSET:
            field_dict["device_limit"] = device_limit
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
        if weight_correction_in is not UNSET:
            field_dict["weight_correction_in"] = weight_correction_in

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_set import CableSet  # noqa: PLC0415
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
        cables = CableSet.from_dict(d.pop("cables"))

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

        _attachment = d.pop("attachment", UNSET)
        attachment: Attachment | Unset
        if isinstance(_attachment, Unset):
            attachment = UNSET
        else:
            attachment = Attachment(_attachment)

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
            attachment=attachment,
            code_edition=code_edition,
            conductor_counting=conductor_counting,
            device_limit=device_limit,
            find_largest=find_largest,
            friction_coefficient=friction_coefficient,
            friction_range=friction_range,
            grip_limit=grip_limit,
            incoming_tension=incoming_tension,
            profile_spacing=profile_spacing,
            weight_correction_in=weight_correction_in,
        )

        return pull_tension_request
