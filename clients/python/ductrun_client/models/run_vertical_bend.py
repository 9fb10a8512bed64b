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
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.grade import Grade
    from ..models.length import Length


T = TypeVar("T", bound="RunVerticalBend")


@_attrs_define
class RunVerticalBend:
    """A bend in a vertical plane, from the grade of what is before it; none with a profile.

    Attributes:
        exit_grade (Grade): A grade with its unit; positive climbs in the direction of travel.
        kind (Literal['vertical_bend']): Fixed text that says: a bend in a vertical plane.
        entry_grade (Grade | Unset): A grade with its unit; positive climbs in the direction of travel.
        made (BendMade | Unset): How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on
            a wide curve.
        radius (Length | Unset): A length with its unit.
    """

    exit_grade: Grade
    kind: Literal["vertical_bend"]
    entry_grade: Grade | Unset = UNSET
    made: BendMade | Unset = UNSET
    radius: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        exit_grade = self.exit_grade.to_dict()

        kind = self.kind

        entry_grade: dict[str, Any] | Unset = UNSET
        if not isinstance(self.entry_grade, Unset):
            entry_grade = self.entry_grade.to_dict()

        made: str | Unset = UNSET
        if not isinstance(self.made, Unset):
            made = self.made.value

        radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.radius, Unset):
            radius = self.radius.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "exit_grade": exit_grade,
                "kind": kind,
            }
        )
        if entry_grade is not UNSET:
            field_dict["entry_grade"] = entry_grade
        if made is not UNSET:
            field_dict["made"] = made
        if radius is not UNSET:
            field_dict["radius"] = radius

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.grade import Grade  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        exit_grade = Grade.from_dict(d.pop("exit_grade"))

        kind = cast(Literal["vertical_bend"], d.pop("kind"))
        if kind != "vertical_bend":
            raise ValueError(f"kind must match const 'vertical_bend', got '{kind}'")

        _entry_grade = d.pop("entry_grade", UNSET)
        entry_grade: Grade | Unset
        if isinstance(_entry_grade, Unset):
            entry_grade = UNSET
        else:
            entry_grade = Grade.from_dict(_entry_grade)

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

        run_vertical_bend = cls(
            exit_grade=exit_grade,
            kind=kind,
            entry_grade=entry_grade,
            made=made,
            radius=radius,
        )

        return run_vertical_bend
