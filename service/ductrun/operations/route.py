"""The route of a pull: its sections as a request gives them, and as the formulas take them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import pulling as engineering
from ductrun.operations.defaults import quantity
from ductrun.operations.inputs import BendAngle, BendRadius, Form, Omissible, RunGrade, RunLength
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.units import Grade

LEVEL = quantity("pulling.grade", Grade)


class StraightSection(Form):
    """A straight length of conduit."""

    kind: Literal["straight"] = Field(description="Fixed text that says: a straight section.")
    length: RunLength = Field(description="Length along the conduit.", examples=[{"value": 150, "unit": "ft"}])
    grade: Omissible[RunGrade] = Field(
        default=None,
        description="Slope; positive climbs in the direction of the pull.",
        examples=[{"value": 0, "unit": "deg"}],
    )


class HorizontalBendSection(Form):
    """A bend in a level plane; an offset is two bends."""

    kind: Literal["horizontal_bend"] = Field(description="Fixed text that says: a bend in a level plane.")
    radius: BendRadius = Field(description="Radius to the centre line.", examples=[{"value": 3, "unit": "ft"}])
    angle: BendAngle = Field(description="Change of direction.", examples=[{"value": 90, "unit": "deg"}])


class VerticalBendSection(Form):
    """A bend in a vertical plane; the slope rises through a sag and falls over a crest."""

    kind: Literal["vertical_bend"] = Field(description="Fixed text that says: a bend in a vertical plane.")
    radius: BendRadius = Field(description="Radius to the centre line.", examples=[{"value": 3, "unit": "ft"}])
    entry_grade: RunGrade = Field(
        description="Slope where the cable enters; positive climbs.", examples=[{"value": 0, "unit": "deg"}]
    )
    exit_grade: RunGrade = Field(
        description="Slope where the cable leaves; positive climbs.", examples=[{"value": 90, "unit": "deg"}]
    )


RouteSection = TypeAliasType(
    "RouteSection",
    Annotated[StraightSection | HorizontalBendSection | VerticalBendSection, Field(discriminator="kind")],
)
Route = Annotated[list[RouteSection], Field(min_length=1, max_length=500)]


def sections_of(route: Sequence[RouteSection], sheet: Worksheet) -> list[engineering.Section]:
    """Give the sections in SI; a vertical bend that does not bend is refused."""
    sections: list[engineering.Section] = []
    faults: list[Fault] = []
    for index, given in enumerate(route):
        if given.kind == "straight":
            grade = given.grade
            if grade is None:
                grade = sheet.settle(f"#/sections/{index}/grade", None, LEVEL)
            sections.append(engineering.Straight(given.length.si, grade.si))
        elif given.kind == "horizontal_bend":
            sections.append(engineering.HorizontalBend(given.radius.si, given.angle.si))
        else:
            entry, leave = given.entry_grade.si, given.exit_grade.si
            if abs(entry - leave) < 1e-6:
                faults.append(
                    Fault(
                        f"#/sections/{index}/exit_grade",
                        "bend_without_angle",
                        f"The bend enters and leaves at the same grade, {given.entry_grade}: give it as a straight.",
                    )
                )
            sections.append(engineering.VerticalBend(given.radius.si, entry, leave))
    if faults:
        raise UnanswerableError(*faults)
    return sections
