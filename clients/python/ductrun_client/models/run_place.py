from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.box_wall import BoxWall
from ..models.conduit_type import ConduitType
from ..models.place_kind import PlaceKind
from ..models.run_end import RunEnd
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.box_size import BoxSize
    from ..models.length import Length
    from ..models.racking import Racking


T = TypeVar("T", bound="RunPlace")


@_attrs_define
class RunPlace:
    """An end of the run, or a pull point in it.

    Attributes:
        kind (PlaceKind): What stands at an end of a run or at a pull point.
        box (BoxSize | Unset): Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of
            the raceways.
        box_sizes (list[BoxSize] | Unset): Boxes that can be had: the smallest that holds the entries is named.
        cable_allowance (Length | Unset): A length with its unit.
        exit_wall (BoxWall | Unset): Walls of a box, looking at its front; of a manhole the front is its roof and the
            back its floor.
        finish (RunEnd | Unset): How ducts finish at an end of a run: what is ordered and joined there.
        height (Length | Unset): A length with its unit.
        name (str | Unset): Its name.
        racking (Racking | Unset): How cable leads from its ducts to the racks on a wall of a manhole, along its length.
        removable_cover (BoxWall | Unset): Walls of a box, looking at its front; of a manhole the front is its roof and
            the back its floor.
        riser_conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        riser_radius (Length | Unset): A length with its unit.
        spliced (bool | Unset): Whether the circuits that pass are spliced there.
    """

    kind: PlaceKind
    box: BoxSize | Unset = UNSET
    box_sizes: list[BoxSize] | Unset = UNSET
    cable_allowance: Length | Unset = UNSET
    exit_wall: BoxWall | Unset = UNSET
    finish: RunEnd | Unset = UNSET
    height: Length | Unset = UNSET
    name: str | Unset = UNSET
    racking: Racking | Unset = UNSET
    removable_cover: BoxWall | Unset = UNSET
    riser_conduit_type: ConduitType | Unset = UNSET
    riser_radius: Length | Unset = UNSET
    spliced: bool | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind.value

        box: dict[str, Any] | Unset = UNSET
        if not isinstance(self.box, Unset):
            box = self.box.to_dict()

        box_sizes: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.box_sizes, Unset):
            box_sizes = []
            for box_sizes_item_data in self.box_sizes:
                box_sizes_item = box_sizes_item_data.to_dict()
                box_sizes.append(box_sizes_item)

        cable_allowance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cable_allowance, Unset):
            cable_allowance = self.cable_allowance.to_dict()

        exit_wall: str | Unset = UNSET
        if not isinstance(self.exit_wall, Unset):
            exit_wall = self.exit_wall.value

        finish: str | Unset = UNSET
        if not isinstance(self.finish, Unset):
            finish = self.finish.value

        height: dict[str, Any] | Unset = UNSET
        if not isinstance(self.height, Unset):
            height = self.height.to_dict()

        name = self.name

        racking: dict[str, Any] | Unset = UNSET
        if not isinstance(self.racking, Unset):
            racking = self.racking.to_dict()

        removable_cover: str | Unset = UNSET
        if not isinstance(self.removable_cover, Unset):
            removable_cover = self.removable_cover.value

        riser_conduit_type: str | Unset = UNSET
        if not isinstance(self.riser_conduit_type, Unset):
            riser_conduit_type = self.riser_conduit_type.value

        riser_radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.riser_radius, Unset):
            riser_radius = self.riser_radius.to_dict()

        spliced = self.spliced

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if box is not UNSET:
            field_dict["box"] = box
        if box_sizes is not UNSET:
            field_dict["box_sizes"] = box_sizes
        if cable_allowance is not UNSET:
            field_dict["cable_allowance"] = cable_allowance
        if exit_wall is not UNSET:
            field_dict["exit_wall"] = exit_wall
        if finish is not UNSET:
            field_dict["finish"] = finish
        if height is not UNSET:
            field_dict["height"] = height
        if name is not UNSET:
            field_dict["name"] = name
        if racking is not UNSET:
            field_dict["racking"] = racking
        if removable_cover is not UNSET:
            field_dict["removable_cover"] = removable_cover
        if riser_conduit_type is not UNSET:
            field_dict["riser_conduit_type"] = riser_conduit_type
        if riser_radius is not UNSET:
            field_dict["riser_radius"] = riser_radius
        if spliced is not UNSET:
            field_dict["spliced"] = spliced

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.box_size import BoxSize  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.racking import Racking  # noqa: PLC0415

        d = dict(src_dict)
        kind = PlaceKind(d.pop("kind"))

        _box = d.pop("box", UNSET)
        box: BoxSize | Unset
        if isinstance(_box, Unset):
            box = UNSET
        else:
            box = BoxSize.from_dict(_box)

        _box_sizes = d.pop("box_sizes", UNSET)
        box_sizes: list[BoxSize] | Unset = UNSET
        if _box_sizes is not UNSET:
            box_sizes = []
            for box_sizes_item_data in _box_sizes:
                box_sizes_item = BoxSize.from_dict(box_sizes_item_data)

                box_sizes.append(box_sizes_item)

        _cable_allowance = d.pop("cable_allowance", UNSET)
        cable_allowance: Length | Unset
        if isinstance(_cable_allowance, Unset):
            cable_allowance = UNSET
        else:
            cable_allowance = Length.from_dict(_cable_allowance)

        _exit_wall = d.pop("exit_wall", UNSET)
        exit_wall: BoxWall | Unset
        if isinstance(_exit_wall, Unset):
            exit_wall = UNSET
        else:
            exit_wall = BoxWall(_exit_wall)

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

        _racking = d.pop("racking", UNSET)
        racking: Racking | Unset
        if isinstance(_racking, Unset):
            racking = UNSET
        else:
            racking = Racking.from_dict(_racking)

        _removable_cover = d.pop("removable_cover", UNSET)
        removable_cover: BoxWall | Unset
        if isinstance(_removable_cover, Unset):
            removable_cover = UNSET
        else:
            removable_cover = BoxWall(_removable_cover)

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

        spliced = d.pop("spliced", UNSET)

        run_place = cls(
            kind=kind,
            box=box,
            box_sizes=box_sizes,
            cable_allowance=cable_allowance,
            exit_wall=exit_wall,
            finish=finish,
            height=height,
            name=name,
            racking=racking,
            removable_cover=removable_cover,
            riser_conduit_type=riser_conduit_type,
            riser_radius=riser_radius,
            spliced=spliced,
        )

        return run_place
