from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.fittings import Fittings
    from ..models.length import Length
    from ..models.supported_conduit import SupportedConduit


T = TypeVar("T", bound="SupportsRequest")


@_attrs_define
class SupportsRequest:
    """A straight run above ground.

    Attributes:
        conduit (SupportedConduit): A conduit with a rule of support spacing, by type and trade size.
        length (Length): A length with its unit.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        end_distance (Length | Unset): A length with its unit.
        fittings (Fittings | Unset): The expansion fittings of a run, as `expansion` counts them: one in each of as many
            equal pieces.
        termination_count (int | Unset): Ends of the run at a box or other termination; with one, the run goes on.
    """

    conduit: SupportedConduit
    length: Length
    code_edition: CodeEdition | Unset = UNSET
    end_distance: Length | Unset = UNSET
    fittings: Fittings | Unset = UNSET
    termination_count: int | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        conduit = self.conduit.to_dict()

        length = self.length.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        end_distance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.end_distance, Unset):
            end_distance = self.end_distance.to_dict()

        fittings: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fittings, Unset):
            fittings = self.fittings.to_dict()

        termination_count = self.termination_count

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "conduit": conduit,
                "length": length,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if end_distance is not UNSET:
            field_dict["end_distance"] = end_distance
        if fittings is not UNSET:
            field_dict["fittings"] = fittings
        if termination_count is not UNSET:
            field_dict["termination_count"] = termination_count

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.fittings import Fittings  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.supported_conduit import SupportedConduit  # noqa: PLC0415

        d = dict(src_dict)
        conduit = SupportedConduit.from_dict(d.pop("conduit"))

        length = Length.from_dict(d.pop("length"))

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _end_distance = d.pop("end_distance", UNSET)
        end_distance: Length | Unset
        if isinstance(_end_distance, Unset):
            end_distance = UNSET
        else:
            end_distance = Length.from_dict(_end_distance)

        _fittings = d.pop("fittings", UNSET)
        fittings: Fittings | Unset
        if isinstance(_fittings, Unset):
            fittings = UNSET
        else:
            fittings = Fittings.from_dict(_fittings)

        termination_count = d.pop("termination_count", UNSET)

        supports_request = cls(
            conduit=conduit,
            length=length,
            code_edition=code_edition,
            end_distance=end_distance,
            fittings=fittings,
            termination_count=termination_count,
        )

        return supports_request
