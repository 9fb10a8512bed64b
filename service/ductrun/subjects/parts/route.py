"""The route of a pull: its sections as a request gives them, as the formulas take them, and where their grades part."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal, NamedTuple

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, choice, quantity
from ductrun.kit.forms import BendAngle, BendRadius, Form, FrictionCoefficient, Omissible, RunGrade, RunLength
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_set import BorePlace
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.conduit import Conduit, ListedConduit, MeasuredConduit, inside_diameter
from ductrun.units import Angle, Grade

MADE = choice("pulling.bend_made", BendMade)
LEVEL = quantity("pulling.grade", Grade)
JOINT_DEFLECTION = quantity("pulling.joint_deflection", Angle)
GRADE_BREAK_LIMIT = quantity("pulling.grade_break_limit", Angle)

GRADE_BEFORE = by_rule("the grade with which the section before it ends; level at the start")


class _AnySection(Form):
    """What may differ from the rest of the route."""

    conduit: Omissible[Conduit] = Field(default=None, description="Conduit of this section, where it differs.")
    friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None, description="Coefficient of friction of this section, where it differs.", examples=[0.5]
    )


class StraightSection(_AnySection):
    """A straight length of conduit."""

    kind: Literal["straight"] = Field(description="Fixed text that says: a straight section.")
    length: RunLength = Field(description="Length along the conduit.", examples=[{"value": 150, "unit": "ft"}])
    grade: Omissible[RunGrade] = Field(
        default=None,
        description="Slope; positive climbs in the direction of the pull. Left out, that with which the last straight "
        "or vertical bend ends.",
        examples=[{"value": 0, "unit": "deg"}],
        json_schema_extra=GRADE_BEFORE,
    )


class HorizontalBendSection(_AnySection):
    """A bend in a level plane; an offset is two bends."""

    kind: Literal["horizontal_bend"] = Field(description="Fixed text that says: a bend in a level plane.")
    radius: BendRadius = Field(description="Radius to the center line.", examples=[{"value": 3, "unit": "ft"}])
    angle: BendAngle = Field(description="Change of direction.", examples=[{"value": 90, "unit": "deg"}])
    made: Omissible[BendMade] = Field(
        default=None,
        description="Whether it is bought or bent on site.",
        examples=["factory_elbow"],
        json_schema_extra=MADE.stated,
    )


class VerticalBendSection(_AnySection):
    """A bend in a vertical plane; the slope rises through a sag and falls over a crest."""

    kind: Literal["vertical_bend"] = Field(description="Fixed text that says: a bend in a vertical plane.")
    radius: BendRadius = Field(description="Radius to the center line.", examples=[{"value": 3, "unit": "ft"}])
    entry_grade: Omissible[RunGrade] = Field(
        default=None,
        description="Slope where the cable enters; positive climbs. Left out, that with which the last straight "
        "or vertical bend ends.",
        examples=[{"value": 0, "unit": "deg"}],
        json_schema_extra=GRADE_BEFORE,
    )
    exit_grade: RunGrade = Field(
        description="Slope where the cable leaves; positive climbs.", examples=[{"value": 90, "unit": "deg"}]
    )
    made: Omissible[BendMade] = Field(
        default=None,
        description="Whether it is bought or bent on site.",
        examples=["factory_elbow"],
        json_schema_extra=MADE.stated,
    )


RouteSection = TypeAliasType(
    "RouteSection",
    Annotated[
        StraightSection | HorizontalBendSection | VerticalBendSection,
        Field(discriminator="kind", description="One section of a route: a straight or a bend."),
    ],
)
MOST_SECTIONS = 500
Route = Annotated[list[RouteSection], Field(min_length=1, max_length=MOST_SECTIONS)]


def inside(words: str) -> str:
    """Give within a sentence what begins one."""
    return f"{words[0].lower()}{words[1:]}"


class SectionPlace(NamedTuple):
    """What a section is called in a sentence, and the sheets of its own place and of its conduit's."""

    name: str
    sheet: Worksheet
    conduit_sheet: Worksheet


class PlacedRoute(NamedTuple):
    """A route in SI: its `sections` without friction, as given, the conduit and the `bores` [m] of each, the `sheet`
    whose members the sections are, and that of the conduit they share.

    A route put together from several places has them in `places`, and what is said of all of it on its sheet.
    """

    sections: list[engineering.Section]
    given: Sequence[RouteSection]
    conduits: list[ListedConduit | MeasuredConduit]
    bores: list[float]
    sheet: Worksheet
    conduit_sheet: Worksheet
    places: Sequence[SectionPlace] | None = None

    def at(self, section: int) -> Worksheet:
        """Give the sheet of one section, for what is said of it."""
        return self.sheet.within(str(section)) if self.places is None else self.places[section].sheet

    def named(self, section: int) -> str:
        """Give what a section is called at the start of a sentence."""
        return f"Section {section + 1}" if self.places is None else self.places[section].name

    def before(self, section: int) -> str:
        """Say at the start of a sentence where a section begins."""
        if self.places is None:
            return f"Between sections {section} and {section + 1}"
        return f"Between {inside(self.places[section - 1].name)} and {inside(self.places[section].name)}"

    def conduit_at(self, section: int) -> BorePlace:
        """Give the place of the conduit of one section."""
        if self.places is not None:
            return BorePlace(self.places[section].conduit_sheet, None, filled=True)
        if self.given[section].conduit is None:
            return BorePlace(self.conduit_sheet, None)
        return BorePlace(self.sheet.within(f"{section}/conduit"), section)


def place_route(
    route: Sequence[RouteSection], conduit: ListedConduit | MeasuredConduit, sheet: Worksheet, conduit_sheet: Worksheet
) -> PlacedRoute:
    """Settle a route whose sections have a conduit, unless they have their own; all faults at once.

    `sheet` is that of the list of sections, `conduit_sheet` that of the conduit.
    """
    faults = Gathering()
    bores: list[float] = []
    sections: list[engineering.Section] = []
    with faults:
        bores = _bores(route, conduit, sheet, conduit_sheet)
    with faults:
        sections = _sections(route, sheet)
    faults.stop()
    return PlacedRoute(sections, route, [given.conduit or conduit for given in route], bores, sheet, conduit_sheet)


def _bores(
    route: Sequence[RouteSection], conduit: ListedConduit | MeasuredConduit, sheet: Worksheet, conduit_sheet: Worksheet
) -> list[float]:
    """Give the bore [m] of every section; a conduit that no section uses is not looked at."""
    own = {index: given.conduit for index, given in enumerate(route) if given.conduit is not None}
    if not own:
        return [inside_diameter(conduit, conduit_sheet)] * len(route)
    faults = Gathering()
    general = 0.0
    if len(own) < len(route):
        with faults:
            general = inside_diameter(conduit, conduit_sheet)
    bores = [general] * len(route)
    for index, other in own.items():
        with faults:
            bores[index] = inside_diameter(other, sheet.within(f"{index}/conduit"))
    faults.stop()
    return bores


class GradeBreak(NamedTuple):
    """A joint before section `joint` where the grades part by `angle` [rad], and the section to name for it.

    `lost` says that a bend was left out here: by this break, or by those that add up to it.
    """

    joint: int
    section: int
    angle: float
    lost: bool


def _sections(route: Sequence[RouteSection], sheet: Worksheet) -> list[engineering.Section]:
    """Give the sections in SI, each going on with the grade of the one before; refuses a bend without angle."""
    sections: list[engineering.Section] = []
    faults: list[Fault] = []
    last: float | None = None
    for index, given in enumerate(route):
        if given.kind == "horizontal_bend":
            sections.append(engineering.HorizontalBend(given.radius.si, given.angle.si))
            continue
        name = "grade" if given.kind == "straight" else "entry_grade"
        grade = given.grade if given.kind == "straight" else given.entry_grade
        if grade is not None:
            last = grade.si
        elif last is None:
            last = sheet.settle(f"{index}/{name}", None, LEVEL).si
        if given.kind == "straight":
            sections.append(engineering.Straight(given.length.si, last))
            continue
        leave = given.exit_grade.si
        if abs(last - leave) < 1e-6:
            faults.append(
                sheet.fault(
                    f"{index}/exit_grade",
                    "bend_without_angle",
                    f"The bend enters and leaves at the same grade, {given.exit_grade}: give it as a straight.",
                )
            )
        sections.append(engineering.VerticalBend(given.radius.si, last, leave))
        last = leave
    if faults:
        raise UnanswerableError(*faults)
    return sections


def grade_breaks(sections: Sequence[engineering.Section]) -> list[GradeBreak]:
    """Give the joints where the grade breaks by more than joints deflect; a level bend on a slope is named itself.

    Breaks add up along the route, those of joints too: no stretch between two lost bends turns by more than the limit
    of one break.
    """
    breaks = []
    turned = 0.0
    for joint in range(1, len(sections)):
        before, after = sections[joint - 1], sections[joint]
        angle = abs(after.entry_grade - before.exit_grade)
        turned += angle
        lost = over(turned, GRADE_BREAK_LIMIT.value.si)
        if lost or over(angle, JOINT_DEFLECTION.value.si):
            at_bend = isinstance(before, engineering.HorizontalBend)
            breaks.append(GradeBreak(joint, joint - 1 if at_bend else joint, angle, lost))
            turned = 0.0 if lost else turned
    return breaks


def unjudged(breaks: Sequence[GradeBreak]) -> list[int]:
    """Give the joints whose break is a bend that was left out."""
    return [one.joint for one in breaks if one.lost]


def report_breaks(route: PlacedRoute, breaks: Sequence[GradeBreak]) -> None:
    """Caution where the grade breaks without a bend, once a place; beyond a joint's worth the pull is not judged."""
    worst: dict[int, GradeBreak] = {}
    for one in breaks:
        if one.section not in worst or (one.lost, one.angle) > (worst[one.section].lost, worst[one.section].angle):
            worst[one.section] = one
    for section, one in worst.items():
        sheet = route.at(section)
        told = sheet.tell.angle(one.angle)
        lost = one.lost
        limit = GRADE_BREAK_LIMIT if lost else JOINT_DEFLECTION
        summed = lost and not over(one.angle, limit.value.si)
        name = route.named(section)
        where = f"{route.before(section)} the grade breaks by {text_of(told)} without a bend"
        if isinstance(route.sections[section], engineering.HorizontalBend):
            where = f"{name} is a level bend and stands beside a slope of {text_of(told)}"
        if summed:
            where += f"; with the breaks before it that is more than {limit.value}"
        do = (
            "give the vertical bend that lies there. Until then the pull is not judged"
            if lost
            else (f"joints deflect by {limit.value} at most. Give the bend, if there is one")
        )
        sheet.find(
            Severity.CAUTION,
            "bend_left_out" if lost else "grade_breaks",
            f"{where}: {do}.",
            limit.backing,
            told,
            sheet.tell.given(limit.value),
            member="",
        )
