"""The sections of a stretch in SI, without its profile and between its risers."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import alignment as engineering
from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend
from ductrun.engineering.rounding import over
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.elbows import standard_radius
from ductrun.subjects.duct_run.alignment import RunSection
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.risers import Riser
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.parts.route import LEVEL
from ductrun.units import Length

LEVEL_RADIANS = LEVEL.value.si


class Laying(NamedTuple):
    """How a stretch is laid: what lengths of straights are, the line of heights that a profile gives, if there is one,
    the grade [rad] with which the stretch before it ends, level after a pull point, and whether it is bored.
    """

    to_intersections: bool
    line: engineering.Line | None
    grade: float
    bored: bool


def lay_sections(
    stretch: Stretch, name: str, sheet: Worksheet, bank: RunBank, risers: tuple[Riser | None, Riser | None], how: Laying
) -> list[LaidSection]:
    """Lay out a stretch between its risers, without its profile."""
    _refuse_both(stretch, sheet)
    start, end = risers
    if stretch.sections is None:
        return _single(stretch, name, sheet, start, end)
    line = _sections(stretch.sections, name, sheet, bank.ducts[0].conduit, how)
    return _to_tangents(line, start, end, stretch.sections) if how.to_intersections else line


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
