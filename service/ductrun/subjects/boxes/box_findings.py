"""What is found of a box: dimensions it has not, entries too close, and what its use asks for."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import PRACTICE, Backing, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import apart as written_apart
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.boxes.choices import BoxDimension, Structure
from ductrun.subjects.boxes.distances import Sides, Through, through_box
from ductrun.subjects.boxes.filling import SmallConductors
from ductrun.subjects.boxes.placing import Entered, Entry, Pull
from ductrun.subjects.boxes.requiring import Requirement, in_inches
from ductrun.subjects.parts.excavation import EXCAVATION_SAFETY
from ductrun.units import Length, Volume

DIMENSIONS = tuple(BoxDimension)
RACKED_FROM = quantity("box.rack_dimension", Length)
_PLACES = "give position and offset of each entry in its wall."
_PLACES_IN_A_RUN = (
    "a run holds no places of entries, so ask for this box alone, as a pull box with position and offset of each entry."
)
_EXCAVATION_RULES = published("osha-1926-subpart-p")


def find_box(
    sides: tuple[float, float, float],
    least: Sequence[Requirement | None],
    small: SmallConductors | None,
    entries: Sequence[Entry],
    sheet: Worksheet,
) -> None:
    """Hold a box against the least of each dimension and the volume of its small conductors."""
    kept = True
    for dimension, side, need in zip(DIMENSIONS, sides, least, strict=True):
        if need is None or not under(side, need.least):
            continue
        kept = False
        told, limit = sheet.tell.given(in_inches(side)), sheet.tell.given(in_inches(need.least))
        has, needs = written_apart(told, limit)
        for_what = f" for {_in_words(need, entries)}" if need.entries else ""
        sheet.find(
            Severity.VIOLATION,
            "box_too_small",
            f"The {dimension} of {has} is less than the {needs} required{for_what}: take a larger box.",
            need.backing,
            told,
            limit,
            member=dimension.value,
        )
    volume = sides[0] * sides[1] * sides[2]
    if small is not None and under(volume, small.volume):
        kept = False
        tell = sheet.tell.of(Volume, "box_volume")
        told_volume, least_volume = tell(volume), tell(small.volume)
        has, needs = written_apart(told_volume, least_volume)
        sheet.find(
            Severity.VIOLATION,
            "box_volume_too_small",
            f"The {small.conductor_count} small conductors take {needs} and the box has {has}: take a larger one.",
            sheet.rule("box_fill"),
            told_volume,
            least_volume,
            member="",
        )
    sheet.judge(kept)


def _in_words(need: Requirement, entries: Sequence[Entry]) -> str:
    walls = list(dict.fromkeys(entries[at].wall.value for at in need.entries))
    return f"what enters through the {' and the '.join(walls)}"


def find_distances(pulls: Sequence[Through], entered: Entered, *, in_a_box: bool) -> None:
    """Hold the entries of every circuit that turns against the distance they must have.

    Without positions that is open: told once, and judged only where there is a box to be judged.
    """
    open_ones = []
    for one in pulls:
        if one.apart is None:
            continue
        sheet = entered.entries[one.pull.other].sheet
        if one.kept is None:
            open_ones.append((one.apart, one.pull, sheet))
            continue
        sheet.judge(one.kept)
        if not one.kept:
            _find_too_close(one.pull, one.apart, one.gap, one.most or 0.0, entered)
    if in_a_box and open_ones:
        apart, pull, sheet = max(open_ones, key=lambda one: one[0])
        limit = sheet.tell.given(in_inches(apart))
        sheet.judge(None)
        sheet.find(
            Severity.CAUTION,
            "entry_distance_not_judged",
            f"{_first(pull)} hold the same conductors and must be at least {text_of(limit)} apart between their near "
            f"edges, which was not judged: {_PLACES if pull.duct is None else _PLACES_IN_A_RUN}",
            _apart_rule(entered, sheet),
            limit=limit,
            member="position",
        )


def _find_too_close(pull: Pull, apart: float, gap: float | None, most: float, entered: Entered) -> None:
    """Find two entries of a circuit that lie too close, or that can lie no farther apart in the box."""
    sheet = entered.entries[pull.other].sheet
    told, limit = sheet.tell.size(most if gap is None else gap), sheet.tell.given(in_inches(apart))
    has, needs = written_apart(told, limit)
    where = f"{_first(pull)} hold the same conductors and"
    sheet.find(
        Severity.VIOLATION,
        "entries_too_close",
        f"{where} are {has} apart between their near edges, less than {needs}: set them farther apart."
        if gap is not None
        else f"{where} can lie at most {has} apart in this box, less than {needs}: take a larger box.",
        _apart_rule(entered, sheet),
        told,
        limit,
        member="position",
    )


def _first(pull: Pull) -> str:
    """Name the entries of a pull at the beginning of a sentence."""
    words = pull.entries
    return f"{words[0].upper()}{words[1:]}"


def _apart_rule(entered: Entered, sheet: Worksheet) -> Backing:
    return sheet.rule("box_above_angle" if entered.by_cable else "box_angle")


def find_least_too_near(entered: Entered, least: Sides) -> None:
    """Say which entries could not lie far enough apart in a box of the least dimensions, which must then be larger."""
    if 0.0 in least:
        return
    for pull in entered.pulls:
        one = through_box(entered, pull, least)
        if one.kept is False and one.apart is not None and one.gap is None:
            sheet = entered.entries[pull.other].sheet
            told, limit = sheet.tell.size(one.most or 0.0), sheet.tell.given(in_inches(one.apart))
            has, needs = written_apart(told, limit)
            sheet.find(
                Severity.CAUTION,
                "least_box_too_small_for_distance",
                f"In a box of the least dimensions {pull.entries}, which hold the same conductors, can lie at most "
                f"{has} apart, less than {needs}: take a larger one.",
                _apart_rule(entered, sheet),
                told,
                limit,
                member="position",
            )
            return


def find_sizes(least: Sequence[Requirement | None], sheet: Worksheet, *, judged: bool) -> None:
    """Say that none of the boxes that can be had is large enough: a note where the box at hand is judged by itself."""
    needs = [one for one in least if one is not None]
    words = " by ".join(text_of(sheet.tell.given(in_inches(one.least))) for one in needs)
    if judged:
        sheet.judge(False)
    sheet.find(
        Severity.VIOLATION if judged else Severity.NOTE,
        "no_size_large_enough",
        f"None of the boxes listed holds the entries: it takes {words} at least, and room for its conductors.",
        needs[0].backing if needs else PRACTICE,
        member="box_sizes",
    )


def find_use(structure: Structure, sides: Sequence[float], by_cable: bool, sheet: Worksheet) -> None:
    """Say what the size and the use of a box ask for."""
    largest = max(sides)
    if over(largest, RACKED_FROM.value.si):
        told, most = sheet.tell.distance(largest), sheet.tell.given(RACKED_FROM.value)
        sheet.find(
            Severity.CAUTION,
            "rack_the_conductors",
            f"With a dimension of {text_of(told)}, over {text_of(most)}, all conductors are to be cabled or racked: "
            "plan the racks.",
            PRACTICE if by_cable else sheet.rule("box_racked"),
            told,
            most,
            member="structure",
        )
    sheet.caution(
        "treat_as_energized",
        "Whatever cable is in it already is treated as energized until it is tested and grounded.",
        PRACTICE,
    )
    if structure is Structure.PULL_BOX:
        return
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, _EXCAVATION_RULES)
    sheet.caution(
        "structural_design",
        "Walls and lids that bear earth or traffic are a structural engineer's: the dimensions here are for cable "
        "alone.",
        PRACTICE,
    )
    if structure is Structure.MANHOLE:
        sheet.caution(
            "confined_space",
            "A manhole or vault is a confined space: test the air, ventilate, keep an attendant outside, and enter by "
            "permit alone.",
            PRACTICE,
        )
