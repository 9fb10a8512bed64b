"""The run laid out: every section of every stretch in SI, with the risers at its ends, and where stretches begin."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import alignment as engineering
from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend
from ductrun.engineering.rounding import over
from ductrun.kit.wording import text_of, without_noise
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.elbows import standard_radius
from ductrun.subjects.duct_run.alignment import RunSection
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import Turn
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.places import Stop
from ductrun.subjects.duct_run.practice import MemberSheet
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.parts.route import LEVEL, MADE
from ductrun.units import Length

LEVEL_RADIANS = LEVEL.value.si
UPRIGHT = math.pi / 2
BURIED = {"encased", "direct_buried"}


class LaidSection(NamedTuple):
    """A section laid out: the element in SI, how a bend is made, if that was given, to which side it turns, what the
    section is called, the sheet of its place, and the stop it comes up to, if it is of a riser.
    """

    element: Section
    made: BendMade | None
    turn: Turn | None
    name: str
    sheet: Worksheet
    riser: Stop | None

    @property
    def is_elbow(self) -> bool:
        """Whether it is bought as an elbow."""
        return not isinstance(self.element, Straight) and (self.made or MADE.value) is BendMade.FACTORY_ELBOW


class LaidStretch(NamedTuple):
    """A stretch laid out: its sections in order, where it begins in plan [m], and its lengths [m] in plan and along
    the conduit, risers left out of the plan of the trench alone where they stand in it.
    """

    given: Stretch
    name: str
    sheet: Worksheet
    sections: list[LaidSection]
    station: float
    plan_length: float

    @property
    def length(self) -> float:
        """Length along the conduit [m], risers included."""
        return sum([one.element.developed_length for one in self.sections])


class Riser(NamedTuple):
    """An elbow by which ducts come up to a stop: what stands there, and its radius [m]."""

    stop: Stop
    radius: float


def conduit_of_riser(stop: Stop, conduit: ListedConduit | MeasuredConduit) -> ListedConduit | MeasuredConduit:
    """Give the conduit of a riser: that of the stretch, in the type asked for."""
    kind = stop.given.riser_conduit_type
    if kind is None or kind is conduit.type:
        return conduit
    size = conduit.trade_size
    if size is None:
        raise UnanswerableError(
            stop.sheet.fault(
                "riser_conduit_type", "trade_size_not_listed", "The duct has no trade size to keep in its riser."
            )
        )
    return ListedConduit(kind="listed", type=kind, trade_size=size)


def riser_sheet(stop: Stop, conduit_sheet: Worksheet) -> Worksheet:
    """Give the sheet of the conduit of a riser, beside that of the duct that comes up in it."""
    return conduit_sheet if stop.given.riser_conduit_type is None else MemberSheet(stop.sheet, "riser_conduit_type")


def riser_of(stop: Stop | None, bank: RunBank, stretch: Stretch) -> Riser | None:
    """Give the elbow at an end of a stretch, None where the ducts do not come up there."""
    if stop is None or stop.given.height is None:
        return None
    if stretch.setting.kind not in BURIED:
        raise UnanswerableError(
            stop.sheet.fault(
                "height",
                "no_riser_here",
                "Ducts come up out of a buried stretch alone: leave the height out, and give the way up as sections.",
            )
        )
    conduit = conduit_of_riser(stop, bank.ducts[0].conduit)
    return Riser(stop, standard_radius(stop.given.riser_radius, conduit, stop.sheet, "riser_radius"))


def leg_of(riser: Riser, above: float, bank: RunBank) -> float:
    """Give the straight leg of a riser [m]; `above` is what lies over the top of the ducts there [m]."""
    height = riser.stop.given.height
    assert height is not None  # noqa: S101  (else there is no riser)
    leg = above + bank.below_the_top + height.si - riser.radius
    if leg <= 0.0:
        least = Length(without_noise(height.unit.from_si(height.si - leg)), height.unit)
        raise UnanswerableError(
            riser.stop.sheet.fault(
                "height/value",
                "elbow_stands_out",
                "The elbow alone is higher than that: come up higher, lie deeper, or take a tighter elbow.",
                minimum=least,
            )
        )
    return leg


class Laying(NamedTuple):
    """How a stretch is laid: what lengths of straights are, the line of heights that a profile gives, if there is one,
    the grade [rad] with which the stretch before it ends, level after a pull point, and whether it is bored.
    """

    to_intersections: bool
    line: engineering.Line | None
    grade: float
    bored: bool


def lay_line(
    stretch: Stretch, name: str, sheet: Worksheet, bank: RunBank, risers: tuple[Riser | None, Riser | None], how: Laying
) -> list[LaidSection]:
    """Lay out a stretch between its risers, without its profile."""
    _refuse_both(stretch, sheet)
    start, end = risers
    if stretch.sections is None:
        return _single(stretch, name, sheet, start, end)
    line = _sections(stretch.sections, name, sheet, bank.ducts[0].conduit, how)
    return _to_tangents(line, start, end, stretch.sections) if how.to_intersections else line


def climb(riser: Riser, leg: float, *, down: bool, grade: float) -> list[LaidSection]:
    """Give elbow and leg [m] of a riser as they are met from the start of the run: down from it, or up to it."""
    sheet, name = riser.stop.sheet.within("height"), f"The riser at {riser.stop.name}"
    upright = -UPRIGHT if down else UPRIGHT
    straight = LaidSection(Straight(leg, upright), None, None, name, sheet, riser.stop)
    bend = VerticalBend(riser.radius, upright, grade) if down else VerticalBend(riser.radius, grade, upright)
    elbow = LaidSection(bend, BendMade.FACTORY_ELBOW, None, name, sheet, riser.stop)
    return [straight, elbow] if down else [elbow, straight]


def _refuse_both(stretch: Stretch, sheet: Worksheet) -> None:
    if (stretch.length is None) == (stretch.sections is None):
        both = stretch.length is not None
        words = "Give either length or sections, not both." if both else "Give either length or sections."
        raise UnanswerableError(sheet.fault("sections" if both else "length", "one_of_two", words))


def _single(stretch: Stretch, name: str, sheet: Worksheet, start: Riser | None, end: Riser | None) -> list[LaidSection]:
    """Give the one straight of a stretch by its length, which is measured to the risers at its ends."""
    length = stretch.length
    assert length is not None  # noqa: S101  (looked at before)
    taken = sum(riser.radius for riser in (start, end) if riser is not None)
    if length.si <= taken:
        raise UnanswerableError(
            sheet.fault(
                "length/value",
                "shorter_than_its_elbows",
                "The elbows of its risers take more than that.",
                minimum=Length(without_noise(length.unit.from_si(taken)), length.unit),
            )
        )
    element = Straight(length.si - taken, LEVEL_RADIANS)
    return [LaidSection(element, None, None, name, sheet.within("length"), None)]


def _sections(
    given: Sequence[RunSection],
    name: str,
    sheet: Worksheet,
    conduit: ListedConduit | MeasuredConduit,
    how: Laying,
) -> list[LaidSection]:
    """Give the sections of a stretch, each going on with the grade of the one before; all faults at once."""
    faults = Gathering()
    laid: list[LaidSection] = []
    last = how.grade
    for index, one in enumerate(given):
        place = sheet.within(f"sections/{index}")
        with faults:
            made = None if one.kind == "straight" else one.made
            if made is None and how.bored:
                made = BendMade.LAID_ON_CURVE
            element, last = _element(one, last, made, conduit, place, profiled=how.line is not None)
            turn = one.turn if one.kind == "horizontal_bend" else None
            laid.append(LaidSection(element, made, turn, f"Section {index + 1} of {name}", place, None))
    faults.stop()
    return laid


def _element(
    given: RunSection,
    grade: float,
    made: BendMade | None,
    conduit: ListedConduit | MeasuredConduit,
    place: Worksheet,
    *,
    profiled: bool,
) -> tuple[Section, float]:
    """Give a section in SI, and the grade with which it ends."""
    if given.kind == "horizontal_bend":
        return HorizontalBend(_radius(given.radius, made, conduit, place), given.angle.si), grade
    if profiled:
        _refuse_grades(given, place)
    if given.kind == "straight":
        along = grade if given.grade is None else given.grade.si
        return Straight(given.length.si, along), along
    entry = grade if given.entry_grade is None else given.entry_grade.si
    leave = given.exit_grade.si
    if abs(entry - leave) < 1e-6:
        raise UnanswerableError(
            place.fault(
                "exit_grade",
                "bend_without_angle",
                f"The bend enters and leaves at the same grade, {given.exit_grade}: give it as a straight.",
            )
        )
    return VerticalBend(_radius(given.radius, made, conduit, place), entry, leave), leave


def _refuse_grades(given: RunSection, place: Worksheet) -> None:
    words = "The profile gives every grade: leave this out."
    if given.kind == "vertical_bend":
        raise UnanswerableError(place.fault("kind", "given_by_the_profile", words, ["straight", "horizontal_bend"]))
    if given.kind == "straight" and given.grade is not None:
        raise UnanswerableError(place.fault("grade", "given_by_the_profile", words))


def _radius(
    given: Length | None, made: BendMade | None, conduit: ListedConduit | MeasuredConduit, place: Worksheet
) -> float:
    """Give the radius of a bend [m]: as given, or that of the standard elbow where it is one."""
    if given is None and made is not None and made is not BendMade.FACTORY_ELBOW:
        raise UnanswerableError(
            place.fault("radius", "missing", f"What is {made.replace('_', ' ')} has no standard radius: give it.")
        )
    return standard_radius(given, conduit, place, "radius")


def _to_tangents(
    laid: list[LaidSection], start: Riser | None, end: Riser | None, given: Sequence[RunSection]
) -> list[LaidSection]:
    """Take from straights that are dimensioned to intersections what the bends beside them take."""
    tangents = [
        0.0 if isinstance(one.element, Straight) else engineering.tangent_length(one.element.radius, one.element.angle)
        for one in laid
    ]
    before = [0.0 if start is None else start.radius, *tangents]
    after = [*tangents[1:], 0.0 if end is None else end.radius]
    faults = Gathering()
    shortened = []
    for index, one in enumerate(laid):
        element = one.element
        if not isinstance(element, Straight):
            shortened.append(one)
            continue
        with faults:
            length = _shortened(element.length, before[index] + after[index], given[index], one.sheet)
            shortened.append(one._replace(element=Straight(length, element.grade)))
    faults.stop()
    return shortened


def _shortened(length: float, taken: float, given: RunSection, sheet: Worksheet) -> float:
    if over(taken, length) or length <= taken:
        unit = given.length.unit  # type: ignore[union-attr]  # a straight
        raise UnanswerableError(
            sheet.fault(
                "length/value",
                "shorter_than_its_bends",
                "Measured to the intersections, the bends beside it take more than that.",
                minimum=Length(without_noise(unit.from_si(taken)), unit),
            )
        )
    return length - taken


def along_profile(laid: Sequence[LaidSection], line: engineering.Line, station: float) -> list[LaidSection]:
    """Give the sections of a stretch the grades of a line of heights; `station` [m] is where the stretch begins.

    A straight is cut where the line breaks, and a bend that is laid on a curve: the ducts follow it by their joints.
    """
    found = []
    for one in laid:
        element = one.element
        parts: Sequence[Section] = [element]
        if isinstance(element, Straight):
            parts = engineering.straights_along(line, station, station + element.length)
        elif isinstance(element, HorizontalBend):
            follows = one.made is BendMade.LAID_ON_CURVE
            parts = engineering.bends_along(line, station, element, follows=follows)
        for part in parts:
            beyond = f", beyond station {text_of(one.sheet.tell.distance(station))}" if part is not parts[0] else ""
            found.append(one._replace(element=part, name=f"{one.name}{beyond}"))
            station += engineering.plan_length(part)
    return found
