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

if TYPE_CHECKING:
    from ..models.grade import Grade
    from ..models.length import Length


T = TypeVar("T", bound="VerticalBendSection")


@_attrs_define
class VerticalBendSection:
    """A bend in a vertical plane; the slope rises through a sag and falls over a crest.

    Attributes:
        entry_grade (Grade): A grade with its unit; positive climbs in the direction of travel.
        exit_grade (Grade): A grade with its unit; positive climbs in the direction of travel.
        kind (Literal['vertical_bend']): Fixed text that says: a bend in a vertical plane.
        radius (Length): A length with its unit.
    """

    entry_grade: Grade
    exit_grade: Grade
    kind: Literal["vertical_bend"]
    radius: Length

    def to_dict(self) -> dict[str, Any]:
        entry_grade = self.entry_grade.to_dict()

        exit_grade = self.exit_grade.to_dict()

        kind = self.kind

        radius = self.radius.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "entry_grade": entry_grade,
                "exit_grade": exit_grade,
                "kind": kind,
                "radius": radius,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.grade import Grade  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        entry_grade = Grade.from_dict(d.pop("entry_grade"))

        exit_grade = Grade.from_dict(d.pop("exit_grade"))

        kind = cast(Literal["vertical_bend"], d.pop("kind"))
        if kind != "vertical_bend":
            raise ValueError(f"kind must match const 'vertical_bend', got '{kind}'")

        radius = Length.from_dict(d.pop("radius"))

        vertical_bend_section = cls(
            entry_grade=entry_grade,
            exit_grade=exit_grade,
            kind=kind,
            radius=radius,
        )

        return vertical_bend_section
