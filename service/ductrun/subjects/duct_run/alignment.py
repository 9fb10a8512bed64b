"""The sections of a stretch as a drawing has them, and the profile of a run."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import BendAngle, BendRadius, Form, Omissible, RoutePosition, RunGrade, RunLength, between
from ductrun.subjects.duct_run.choices import ProfileReference, Turn
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.route import GRADE_BEFORE, MADE
from ductrun.units import Length

_STANDARD_RADIUS = by_rule("of a factory elbow that of the standard elbow of the size")
Elevation = Annotated[Length, between(Length, -100_000, 100_000, "ft")]


class RunStraight(Form):
    """A straight; in plan where a profile gives the heights, else along the conduit."""

    kind: Literal["straight"] = Field(description="Fixed text that says: a straight section.")
    length: RunLength = Field(description="Its length.", examples=[{"value": 160, "unit": "ft"}])
    grade: Omissible[RunGrade] = Field(
        default=None,
        description="Slope, positive climbs toward the end of the run; none with a profile.",
        examples=[{"value": 0, "unit": "deg"}],
        json_schema_extra=GRADE_BEFORE,
    )


class _AnyBend(Form):
    radius: Omissible[BendRadius] = Field(
        default=None,
        description="Radius to the center line.",
        examples=[{"value": 36, "unit": "in"}],
        json_schema_extra=_STANDARD_RADIUS,
    )
    made: Omissible[BendMade] = Field(
        default=None,
        description="Whether it is bought, bent on site, or laid on a curve.",
        examples=["factory_elbow"],
        json_schema_extra=by_rule(f"{MADE.value}; in a bore laid_on_curve"),
    )


class RunHorizontalBend(_AnyBend):
    """A bend in a level plane."""

    kind: Literal["horizontal_bend"] = Field(description="Fixed text that says: a bend in a level plane.")
    angle: BendAngle = Field(description="Change of direction.", examples=[{"value": 90, "unit": "deg"}])
    turn: Omissible[Turn] = Field(
        default=None,
        description="To which side; nothing is reckoned with it, it is drawn.",
        examples=["left"],
        json_schema_extra=by_rule("drawn to the left"),
    )


class RunVerticalBend(_AnyBend):
    """A bend in a vertical plane, from the grade of what is before it; none with a profile."""

    kind: Literal["vertical_bend"] = Field(description="Fixed text that says: a bend in a vertical plane.")
    entry_grade: Omissible[RunGrade] = Field(
        default=None,
        description="Slope where it begins, positive climbs.",
        examples=[{"value": 0, "unit": "deg"}],
        json_schema_extra=GRADE_BEFORE,
    )
    exit_grade: RunGrade = Field(
        description="Slope where it ends, positive climbs.", examples=[{"value": 45, "unit": "deg"}]
    )


RunSection = TypeAliasType(
    "RunSection",
    Annotated[
        RunStraight | RunHorizontalBend | RunVerticalBend,
        Field(discriminator="kind", description="One section of a run in plan or profile: a straight or a bend."),
    ],
)
MOST_RUN_SECTIONS = 200
RunSections = Annotated[list[RunSection], Field(min_length=1, max_length=MOST_RUN_SECTIONS)]


class ElevationPoint(Form):
    """Ground and line at one station."""

    station: RoutePosition = Field(
        description="Distance in plan from the start of the run.", examples=[{"value": 160, "unit": "ft"}]
    )
    ground: Elevation = Field(description="Elevation of finished grade.", examples=[{"value": 13.1, "unit": "ft"}])
    line: Elevation = Field(description="Elevation of the line.", examples=[{"value": 10.2, "unit": "ft"}])


MOST_PROFILE_POINTS = 500


class Profile(Form):
    """Elevations along the run, straight between the points: they give grades and cover."""

    reference: ProfileReference = Field(
        description="What the line is: top of the envelope, of the ducts alone, or the invert of the lowest duct, the "
        "bottom of its bore.",
        examples=["top_of_envelope"],
    )
    points: Annotated[list[ElevationPoint], Field(min_length=2, max_length=MOST_PROFILE_POINTS)] = Field(
        description="The points from the start of the run to its end."
    )
