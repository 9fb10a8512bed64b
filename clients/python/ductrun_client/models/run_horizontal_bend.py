from __future__ import annotations

from collections.abc import Mapping
from typing import (
    TYPE_CHECKING,
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.bend_made import BendMade
from ..models.turn import Turn
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length


T = TypeVar("T", bound="RunHorizontalBend")


@_attrs_define
class RunHorizontalBend:
    """A bend in a level plane.

    Attributes:
        angle (Angle): An angle with its unit.
        kind (Literal['horizontal_bend']): Fixed text that says: a bend in a level plane.
        made (BendMade | Unset): How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on
            a wide curve.
        radius (Length | Unset): A length with its unit.
        turn (Turn | Unset): To which side a bend turns, looking from start to end.
    """

    angle: Angle
    kind: Literal["horizontal_bend"]
    made: BendMade | Unset = UNSET
    radius: Length | Unset = UNSET
    turn: Turn | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        angle = self.angle.to_dict()

        kind = self.kind

        made: str | Unset = UNSET
        if not isinstance(self.made, Unset):
            made = self.made.value

        radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.radius, Unset):
            radius = self.radius.to_dict()

        turn: str | Unset = UNSET
        if not isinstance(self.turn, Unset):
            turn = self.turn.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "angle": angle,
                "kind": kind,
            }
        )
        if made is not UNSET:
            field_dict["made"] = made
        if radius is not UNSET:
            field_dict["radius"] = radius
        if turn is not UNSET:
            field_dict["turn"] = turn

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        angle = Angle.from_dict(d.pop("angle"))

        kind = cast(Literal["horizontal_bend"], d.pop("kind"))
        if kind != "horizontal_bend":
            raise ValueError(f"kind must match const 'horizontal_bend', got '{kind}'")

        _made = d.pop("made", UNSET)
        made: BendMade | Unset
        if isinstance(_made, Unset):
            made = UNSET
        else:
            made = BendMade(_made)

        _radius = d.pop("radius", UNSET)
        radius: Length | Unset
        if isinstance(_radius, Unset):
            radius = UNSET
        else:
            radius = Length.from_dict(_radius)

        _turn = d.pop("turn", UNSET)
        turn: Turn | Unset
        if isinstance(_turn, Unset):
            turn = UNSET
        else:
            turn = Turn(_turn)

        run_horizontal_bend = cls(
            angle=angle,
            kind=kind,
            made=made,
            radius=radius,
            turn=turn,
        )

        return run_horizontal_bend
