from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.box_wall import BoxWall
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="BoxEntry")


@_attrs_define
class BoxEntry:
    """A raceway that enters a box, or above the threshold voltage a cable.

    Attributes:
        circuits (list[str]): Names of the circuits in it.
        wall (BoxWall): Walls of a box, looking at its front; of a manhole the front is its roof and the back its floor.
        conduit (ListedConduit | MeasuredConduit | Unset):
        offset (Length | Unset): A length with its unit.
        position (Length | Unset): A length with its unit.
        row (int | Unset): Row of its wall, from 1 at the back; of the back itself from the bottom.
    """

    circuits: list[str]
    wall: BoxWall
    conduit: ListedConduit | MeasuredConduit | Unset = UNSET
    offset: Length | Unset = UNSET
    position: Length | Unset = UNSET
    row: int | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        circuits = self.circuits

        wall = self.wall.value

        conduit: dict[str, Any] | Unset
        if isinstance(self.conduit, Unset):
            conduit = UNSET
        elif isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        offset: dict[str, Any] | Unset = UNSET
        if not isinstance(self.offset, Unset):
            offset = self.offset.to_dict()

        position: dict[str, Any] | Unset = UNSET
        if not isinstance(self.position, Unset):
            position = self.position.to_dict()

        row = self.row

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "circuits": circuits,
                "wall": wall,
            }
        )
        if conduit is not UNSET:
            field_dict["conduit"] = conduit
        if offset is not UNSET:
            field_dict["offset"] = offset
        if position is not UNSET:
            field_dict["position"] = position
        if row is not UNSET:
            field_dict["row"] = row

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415

        d = dict(src_dict)
        circuits = cast(list[str], d.pop("circuits"))

        wall = BoxWall(d.pop("wall"))

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit | Unset:
            if isinstance(data, Unset):
                return data
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

        conduit = _parse_conduit(d.pop("conduit", UNSET))

        _offset = d.pop("offset", UNSET)
        offset: Length | Unset
        if isinstance(_offset, Unset):
            offset = UNSET
        else:
            offset = Length.from_dict(_offset)

        _position = d.pop("position", UNSET)
        position: Length | Unset
        if isinstance(_position, Unset):
            position = UNSET
        else:
            position = Length.from_dict(_position)

        row = d.pop("row", UNSET)

        box_entry = cls(
            circuits=circuits,
            wall=wall,
            conduit=conduit,
            offset=offset,
            position=position,
            row=row,
        )

        return box_entry
