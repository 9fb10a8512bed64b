from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit
    from ..models.one_bare_conductor import OneBareConductor
    from ..models.one_cable import OneCable
    from ..models.one_compact_conductor import OneCompactConductor
    from ..models.one_listed_conductor import OneListedConductor
    from ..models.one_measured_conductor import OneMeasuredConductor


T = TypeVar("T", bound="ConductorCountRequest")


@_attrs_define
class ConductorCountRequest:
    """One conductor or cable, and the conduit to be filled with it.

    Attributes:
        conductor (OneBareConductor | OneCable | OneCompactConductor | OneListedConductor | OneMeasuredConductor):
        conduit (ListedConduit | MeasuredConduit):
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        nipple_length (Length | Unset): A length with its unit.
        single_cable_rounding (bool | Unset): Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless
            asked: the sentence speaks of a conductor, and a jacketed cable over 53 percent is often refused in the field. A
            single conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C are.
    """

    conductor: (
        OneBareConductor
        | OneCable
        | OneCompactConductor
        | OneListedConductor
        | OneMeasuredConductor
    )
    conduit: ListedConduit | MeasuredConduit
    code_edition: CodeEdition | Unset = UNSET
    nipple_length: Length | Unset = UNSET
    single_cable_rounding: bool | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.one_bare_conductor import OneBareConductor  # noqa: PLC0415
        from ..models.one_compact_conductor import OneCompactConductor  # noqa: PLC0415
        from ..models.one_listed_conductor import OneListedConductor  # noqa: PLC0415
        from ..models.one_measured_conductor import OneMeasuredConductor  # noqa: PLC0415

        conductor: dict[str, Any]
        if isinstance(self.conductor, OneListedConductor):
            conductor = self.conductor.to_dict()
        elif isinstance(self.conductor, OneCompactConductor):
            conductor = self.conductor.to_dict()
        elif isinstance(self.conductor, OneBareConductor):
            conductor = self.conductor.to_dict()
        elif isinstance(self.conductor, OneMeasuredConductor):
            conductor = self.conductor.to_dict()
        else:
            conductor = self.conductor.to_dict()

        conduit: dict[str, Any]
        if isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        nipple_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.nipple_length, Unset):
            nipple_length = self.nipple_length.to_dict()

        single_cable_rounding = self.single_cable_rounding

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "conductor": conductor,
                "conduit": conduit,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if nipple_length is not UNSET:
            field_dict["nipple_length"] = nipple_length
        if single_cable_rounding is not UNSET:
            field_dict["single_cable_rounding"] = single_cable_rounding

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415
        from ..models.one_bare_conductor import OneBareConductor  # noqa: PLC0415
        from ..models.one_cable import OneCable  # noqa: PLC0415
        from ..models.one_compact_conductor import OneCompactConductor  # noqa: PLC0415
        from ..models.one_listed_conductor import OneListedConductor  # noqa: PLC0415
        from ..models.one_measured_conductor import OneMeasuredConductor  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_conductor(
            data: object,
        ) -> (
            OneBareConductor
            | OneCable
            | OneCompactConductor
            | OneListedConductor
            | OneMeasuredConductor
        ):
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_one_conductor_type_0 = OneListedConductor.from_dict(data)

                return componentsschemas_one_conductor_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_one_conductor_type_1 = OneCompactConductor.from_dict(data)

                return componentsschemas_one_conductor_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_one_conductor_type_2 = OneBareConductor.from_dict(data)

                return componentsschemas_one_conductor_type_2
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_one_conductor_type_3 = OneMeasuredConductor.from_dict(data)

                return componentsschemas_one_conductor_type_3
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_one_conductor_type_4 = OneCable.from_dict(data)

            return componentsschemas_one_conductor_type_4

        conductor = _parse_conductor(d.pop("conductor"))

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

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _nipple_length = d.pop("nipple_length", UNSET)
        nipple_length: Length | Unset
        if isinstance(_nipple_length, Unset):
            nipple_length = UNSET
        else:
            nipple_length = Length.from_dict(_nipple_length)

        single_cable_rounding = d.pop("single_cable_rounding", UNSET)

        conductor_count_request = cls(
            conductor=conductor,
            conduit=conduit,
            code_edition=code_edition,
            nipple_length=nipple_length,
            single_cable_rounding=single_cable_rounding,
        )

        return conductor_count_request
