"""The crew page, one side: where, how deep, what to set, what to call for, how to pull, and when to stop."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from msgspec import UNSET, json

from ductrun.drawings.bores import bore_table
from ductrun.drawings.calculation_sheet import pictures, title_of
from ductrun.drawings.crew_pulls import pull_rows
from ductrun.drawings.depths import depth_table
from ductrun.drawings.markup import NOTHING, Document, Markup, element, joined, table
from ductrun.drawings.readable import by_tape, quantity_text, shown, words_of
from ductrun.drawings.run_drawings import rack_drawings, section_drawings
from ductrun.drawings.run_route import run_route
from ductrun.drawings.run_tables import above_ground, opening_table
from ductrun.drawings.sheet_parts import hash_of, page, verdict_line
from ductrun.drawings.steel import steel_words
from ductrun.engineering.rounding import over
from ductrun.kit.answers import Answer, Finding
from ductrun.kit.choices import Severity
from ductrun.kit.telling import Telling
from ductrun.subjects.conduit.choices import JoiningMethod
from ductrun.subjects.duct_run.assessment import AssessedStretch, DuctRun
from ductrun.subjects.duct_run.groundwater import stands_in_water
from ductrun.subjects.duct_run.places import CONFINED
from ductrun.subjects.duct_run.told import DuctRunResult
from ductrun.subjects.duct_run.told_stretches import RunStretch, StretchRiser
from ductrun.units import AnyQuantity

MOST_SECTIONS_DRAWN: Final = 2


def crew_page(run: DuctRun, answer: Answer, telling: Telling, body: bytes) -> Document:
    """Write the page that a crew works by."""
    result: DuctRunResult = answer.result
    request = json.decode(body)
    zero = run.stops[0].name
    sections, racks = section_drawings(run, telling), rack_drawings(run, telling)
    drawings = [run_route(run, telling), *sections[:MOST_SECTIONS_DRAWN], *racks[:1]]
    return page(
        title_of("Crew page", request),
        hash_of(body),
        [
            element("h1", title_of("Crew page", request)),
            element("p", request["note"]) if "note" in request else NOTHING,
            verdict_line(answer),
            _broken(answer.findings),
            element("p", f"Stations from zero at {zero}, in plan. Sections look from {zero} to {run.stops[-1].name}."),
            pictures(drawings),
            _trenches(result.stretches),
            depth_table(run, telling),
            bore_table(run, telling),
            _banks(run, result.stretches, telling),
            _walls(run, result.stretches),
            pull_rows(run, result, telling),
            element("h2", "Before you start"),
            element("ul", *[element("li", text) for text in _cautions(run, result)]),
        ],
        kind="crew",
        paper="margin:9mm 10mm 12mm;",
    )


def _broken(findings: Sequence[Finding]) -> Markup:
    """Say what is broken: such a run is not built as it is."""
    broken = [finding.message for finding in findings if finding.severity is Severity.VIOLATION]
    if not broken:
        return NOTHING
    said = [element("li", message) for message in broken]
    return joined([element("p", "Do not build it so. Ask the office about:", kind="mark"), element("ul", *said)])


def _value(record: Any, name: str) -> str:
    value = UNSET if record is UNSET else getattr(record, name, UNSET)
    return "" if value is UNSET else shown(value, name)


def _by_tape(record: Any, name: str) -> str:
    value = UNSET if record is UNSET else getattr(record, name, UNSET)
    return "" if value is UNSET else by_tape(value)


def _to(one: RunStretch) -> AnyQuantity:
    return AnyQuantity(one.station.value + one.plan_length.value, one.station.unit)


def _trenches(stretches: Sequence[RunStretch]) -> Markup:
    dug = [one for one in stretches if one.trench is not UNSET]
    if not dug:
        return NOTHING
    rows = [
        (
            one.name,
            f"{quantity_text(one.station)} to {quantity_text(_to(one))}",
            words_of(one.setting),
            *[_by_tape(one.trench, name) for name in ("width", "depth")],
            _by_tape(one.cover, "cover_over_raceway"),
            _by_tape(one.trench, "warning_tape_depth"),
        )
        for one in dug
    ]
    header = (
        "Stretch",
        "Stations",
        "Setting",
        "Trench, wide",
        "Deep at most",
        "Least cover on ducts",
        "Tape below grade",
    )
    return joined([element("h2", "Dig"), table(header, rows, kind="dense")])


def _banks(run: DuctRun, stretches: Sequence[RunStretch], telling: Telling) -> Markup:
    """Say where spacers and tie-downs stand, what steel is set, in which lifts to pour, what concrete to call for."""
    steel = any(_steel(one, telling) for one in run.stretches)
    rows = [
        (
            told.name,
            _spacers(one, telling),
            *((_steel(one, telling),) if steel else ()),
            *(("", "", "") if told.encasement is UNSET else (_tie_downs(told), _lift(run, telling), _pour(told))),
        )
        for one, told in zip(run.stretches, stretches, strict=True)
        if told.encasement is not UNSET or told.spacers is not UNSET
    ]
    header = ("Stretch", "Spacers", *(("Steel",) if steel else ()), "Tie-downs", "Lift", "Concrete to call for")
    return joined([element("h2", "Set and pour"), table(header, rows, kind="dense")]) if rows else NOTHING


def _lift(run: DuctRun, telling: Telling) -> str:
    """Give the height of a lift, if the pour is to come in lifts of one."""
    given = None if run.given.flotation is None else run.given.flotation.lift_height
    return "at once" if given is None else by_tape(telling.given(given))


def _spacers(one: AssessedStretch, telling: Telling) -> str:
    spacers = None if one.burial is None else one.burial.spacers
    if spacers is None:
        return ""
    stations = spacers.stations
    first = quantity_text(telling.distance(one.laid.station + stations.first))
    if stations.number == 1:
        return f"one, at station {first}"
    apart = quantity_text(telling.distance(stations.spacing))
    along = " along the ducts" if over(one.laid.duct_length, one.laid.plan_length) else ""
    return f"{stations.number}, the first at station {first}, then every {apart}{along}"


def _steel(one: AssessedStretch, telling: Telling) -> str:
    pour = None if one.burial is None else one.burial.encasement
    bars = None if pour is None else pour.bars
    return "" if bars is None else steel_words(bars, telling, counted=True)


def _tie_downs(told: RunStretch) -> str:
    held = told.flotation
    if held is UNSET:
        return "not judged"
    count, force = _value(held, "tie_down_count"), quantity_text(held.hold_down_per_station)
    if not held.hold_down_per_station.value > 0:
        return "none needed"
    return f"{count} at each station, {force} in all" if count else f"{force} at each station: ask how"


def _pour(told: RunStretch) -> str:
    pour = told.encasement
    loads = _value(pour, "truck_load_count")
    return f"{_value(pour, 'order_volume')}, {loads} load{'' if loads == '1' else 's'}"


def _walls(run: DuctRun, stretches: Sequence[RunStretch]) -> Markup:
    parts = []
    on_moving = {told.name for one, told in zip(run.stretches, stretches, strict=True) if _lies_on_moving(one)}
    for name, one in above_ground(stretches):
        said = [*_straps(one), *_fittings(one, shaded=name in on_moving), *_at_joints(one)]
        if said:
            parts += [element("h3", name), *said]
    return joined([element("h2", "Strap and set"), *parts]) if parts else NOTHING


def _lies_on_moving(one: AssessedStretch) -> bool:
    """Say whether the sun, which heats a conduit alone, moves it by more than its structure follows."""
    seen = None if one.above is None or one.above.movement is None else one.above.movement
    return seen is not None and seen.coefficient.apart is not None and seen.seen.sun > 0.0


def _of_straight(number: int, count: int) -> str:
    return f"Straight {number}: " if count > 1 else ""


def _straps(one: RunStretch | StretchRiser) -> list[Markup]:
    told = [] if one.supports is UNSET else one.supports if isinstance(one.supports, list) else [one.supports]
    return [
        element(
            "p",
            f"{_of_straight(number, len(told))}straps at {_value(straps, 'positions')} from its start. ",
            _holding(straps),
        )
        for number, straps in enumerate(told, start=1)
    ]


def _fittings(one: RunStretch | StretchRiser, *, shaded: bool) -> list[Markup]:
    """Say where fittings stand and how far they are opened; straights whose fittings open alike share a table."""
    runs = [] if one.expansion is UNSET else one.expansion.runs
    when = ", in the shade, with the structure as warm:" if shaded else ":"
    by_table: dict[str, list[str]] = {}
    for number, run in enumerate(runs, start=1):
        if run.fitting_count:
            at = f"{_of_straight(number, len(runs))}expansion fittings at {_value(run, 'fitting_positions')}."
            by_table.setdefault(opening_table(run, by_tape), []).append(at)
    said: list[Markup] = []
    for table_, places in by_table.items():
        words = ("Set the piston by the conduit's own temperature" + when) if table_ else ""
        said += [element("p", " ".join([*places, words])), Markup(table_)]
    return said


def _at_joints(one: RunStretch | StretchRiser) -> list[Markup]:
    """Say which fittings lie over joints of the structure; those that open alike share a table."""
    joints = UNSET if isinstance(one, StretchRiser) else one.structure_joints
    by_table: dict[str, list[str]] = {}
    for joint in [] if joints is UNSET else joints:
        words = (
            f"{_value(joint, 'position')} (moves {_value(joint, 'movement')}; {_value(joint, 'fitting_travel')} travel)"
        )
        by_table.setdefault(opening_table(joint, by_tape, "Structure at"), []).append(words)
    said: list[Markup] = []
    for table_, places in by_table.items():
        words = (
            f"Over joints of the structure, in every duct, an expansion fitting at {', '.join(places)} from its start. "
        )
        words += "Clamp barrel and piston each to its own side of the joint."
        words += " Set the piston by the temperature of the structure:" if table_ else ""
        said += [element("p", words), Markup(table_)]
    return said


def _holding(strapped: Any) -> str:
    held = _value(strapped, "holding_strap_positions")
    return f"Those at {held} hold; all others let it slide." if held and held != "none" else ""


def _cautions(run: DuctRun, result: DuctRunResult) -> list[str]:
    """Give what the work at hand asks for, a line each for digging, setting and pulling."""
    buried = [stretch.burial for stretch in run.stretches if stretch.burial is not None]
    poured = any(burial.encasement is not None for burial in buried)
    joints = [one.joints for stretch in result.stretches for one in stretch.conduits]
    cemented = any(one is not UNSET and one.method is JoiningMethod.CEMENTED for one in joints)
    confined = any(stop.given.kind in CONFINED for stop in run.stops)
    lines = (
        [
            "Locate utilities before digging; nobody enters an unprotected trench." if buried else "",
            "Groundwater stands above the trench floor: draw it down first; nobody enters while water stands in it."
            if any(stands_in_water(burial, run.given) for burial in buried)
            else "",
            "Nobody enters a vault or manhole before the air is tested: ventilate, permit entry." if confined else "",
        ],
        [
            "Empty ducts float in fresh concrete: tie down first, place in lifts. Wet concrete burns skin."
            if poured
            else "",
            "Cement vapor is flammable and harmful: ventilate, no flame." if cemented else "",
        ],
        [
            "Treat every cable that is there as live. Nobody in line with a rope under tension or below a cable held "
            "back; stop at the stop tension."
            if run.circuits
            else ""
        ],
    )
    return [said for said in (" ".join(filter(None, line)) for line in lines) if said]
