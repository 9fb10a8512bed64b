from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="Fittings")


@_attrs_define
class Fittings:
    """The expansion fittings of a run, as `expansion` counts them: one in each of as many equal pieces.

    Attributes:
        fitting_count (int): Expansion fittings of the run.
        fitting_travel (Length | Unset): A length with its unit.
        piston_engagement (Length | Unset): A length with its unit.
    """

    fitting_count: int
    fitting_travel: Length | Unset = UNSET
    piston_engagement: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        fitting_count = self.fitting_count

        fitting_travel: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_travel, Unset):
            fitting_travel = self.fitting_travel.to_dict()

        piston_engagement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.piston_engagement, Unset):
            piston_engagement = self.piston_engagement.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "fitting_count": fitting_count,
            }
        )
        if fitting_travel is not UNSET:
            field_dict["fitting_travel"] = fitting_travel
        if piston_engagement is not UNSET:
            field_dict["piston_engagement"] = piston_engagement

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        fitting_count = d.pop("fitting_count")

        _fitting_travel = d.pop("fitting_travel", UNSET)
        fitting_travel: Length | Unset
        if isinstance(_fitting_travel, Unset):
            fitting_travel = UNSET
        else:
            fitting_travel = Length.from_dict(_fitting_travel)

        _piston_engagement = d.pop("piston_engagement", UNSET)
        piston_engagement: Length | Unset
        if isinstance(_piston_engagement, Unset):
            piston_engagement = UNSET
        else:
            piston_engagement = Length.from_dict(_piston_engagement)

        fittings = cls(
            fitting_count=fitting_count,
            fitting_travel=fitting_travel,
            piston_engagement=piston_engagement,
        )

        return fittings
