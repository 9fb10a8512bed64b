from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.conduit_type import ConduitType
from ..models.place_kind import PlaceKind
from ..models.run_end import RunEnd
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="RunPlace")


@_attrs_define
class RunPlace:
    """An end of the run, or a pull point in it.

    Attributes:
        kind (PlaceKind): What stands at an end of a run or at a pull point.
        cable_allowance (Length | Unset): A length with its unit.
        finish (RunEnd | Unset): How ducts finish at an end of a run: what is ordered and joined there.
        height (Length | Unset): A length with its unit.
        name (str | Unset): Its name.
        riser_conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        riser_radius (Length | Unset): A length with its unit.
    """

    kind: PlaceKind
    cable_allowance: Length | Unset = UNSET
    finish: RunEnd | Unset = UNSET
    height: Length | Unset = UNSET
    name: str | Unset = UNSET
    riser_conduit_type: ConduitType | Unset = UNSET
    riser_radius: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind.value

        cable_allowance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cable_allowance, Unset):
            cable_allowance = self.cable_allowance.to_dict()

        finish: str | Unset = UNSET
        if not isinstance(self.finish, Unset):
            finish = self.finish.value

        height: dict[str, Any] | Unset = UNSET
        if not isinstance(self.height, Unset):
            height = self.height.to_dict()

        name = self.name

        riser_conduit_type: str | Unset = UNSET
        if not isinstance(self.riser_conduit_type, Unset):
            riser_conduit_type = self.riser_conduit_type.value

        riser_radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.riser_radius, Unset):
            riser_radius = self.riser_radius.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if cable_allowance is not UNSET:
            field_dict["cable_allowance"] = cable_allowance
        if finish is not UNSET:
            field_dict["finish"] = finish
        if height is not UNSET:
            field_dict["height"] = height
        if name is not UNSET:
            field_dict["name"] = name
        if riser_conduit_type is not UNSET:
            field_dict["riser_conduit_type"] = riser_conduit_type
        if riser_radius is not UNSET:
            field_dict["riser_radius"] = riser_radius

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = PlaceKind(d.pop("kind"))

        _cable_allowance = d.pop("cable_allowance", UNSET)
        cable_allowance: Length | Unset
        if isinstance(_cable_allowance, Unset):
            cable_allowance = UNSET
        else:
            cable_allowance = Length.from_dict(_cable_allowance)

        _finish = d.pop("finish", UNSET)
        finish: RunEnd | Unset
        if isinstance(_finish, Unset):
            finish = UNSET
        else:
            finish = RunEnd(_finish)

        _height = d.pop("height", UNSET)
        height: Length | Unset
        if isinstance(_height, Unset):
            height = UNSET
        else:
            height = Length.from_dict(_height)

        name = d.pop("name", UNSET)

        _riser_conduit_type = d.pop("riser_conduit_type", UNSET)
        riser_conduit_type: ConduitType | Unset
        if isinstance(_riser_conduit_type, Unset):
            riser_conduit_type = UNSET
        else:
            riser_conduit_type = ConduitType(_riser_conduit_type)

        _riser_radius = d.pop("riser_radius", UNSET)
        riser_radius: Length | Unset
        if isinstance(_riser_radius, Unset):
            riser_radius = UNSET
        else:
            riser_radius = Length.from_dict(_riser_radius)

        run_place = cls(
            kind=kind,
            cable_allowance=cable_allowance,
            finish=finish,
            height=height,
            name=name,
            riser_conduit_type=riser_conduit_type,
            riser_radius=riser_radius,
        )

        return run_place
