from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.attachment import Attachment
from ..models.code_edition import CodeEdition
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_set import CableSet
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.horizontal_bend_section import HorizontalBendSection
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit
    from ..models.straight_section import StraightSection
    from ..models.vertical_bend_section import VerticalBendSection


T = TypeVar("T", bound="PullTensionRequest")


@_attrs_define
class PullTensionRequest:
    """Cables, conduit, and the route in the order of the pull.

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
        friction_coefficient (float | Unset): Coefficient of friction of one cable against the conduit.
        incoming_tension (Force | Unset): A force with its unit; tension is a force.
    """

    cables: CableSet
    conduit: ListedConduit | MeasuredConduit
    sections: list[HorizontalBendSection | StraightSection | VerticalBendSection]
    allowable_sidewall_pressure: ForcePerLength | Unset = UNSET
    allowable_tension: Force | Unset = UNSET
    attachment: Attachment | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    incoming_tension: Force | Unset = UNSET

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

        friction_coefficient = self.friction_coefficient

        incoming_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.incoming_tension, Unset):
            incoming_tension = self.incoming_tension.to_dict()

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
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if incoming_tension is not UNSET:
            field_dict["incoming_tension"] = incoming_tension

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_set import CableSet  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.horizontal_bend_section import HorizontalBendSection  # noqa: PLC0415
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

        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _incoming_tension = d.pop("incoming_tension", UNSET)
        incoming_tension: Force | Unset
        if isinstance(_incoming_tension, Unset):
            incoming_tension = UNSET
        else:
            incoming_tension = Force.from_dict(_incoming_tension)

        pull_tension_request = cls(
            cables=cables,
            conduit=conduit,
            sections=sections,
            allowable_sidewall_pressure=allowable_sidewall_pressure,
            allowable_tension=allowable_tension,
            attachment=attachment,
            code_edition=code_edition,
            friction_coefficient=friction_coefficient,
            incoming_tension=incoming_tension,
        )

        return pull_tension_request
