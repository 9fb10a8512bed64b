"""What is found of a bank that was rated: conductors too hot, what the method leaves out, what the code says beside."""

from __future__ import annotations

from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE, WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number, quantity
from ductrun.kit.wording import apart, in_percent, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.choices import AmpacityMethod, CircuitSystem, WallMaterial
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.feeder.rating import Ampacity, Rated
from ductrun.subjects.feeder.solving import Solved
from ductrun.subjects.feeder.thermal import surround
from ductrun.units import Temperature

APART = number("feeder.methods_apart_percent")
DRY_OUT = quantity("feeder.dry_out_temperature", Temperature)
_MET = 1e-6  # [K] of a limit that was solved for


def report(found: Ampacity, sheet: Worksheet) -> None:
    """Tell what is found of a bank, and the cautions of the work."""
    for rated in found.circuits:
        report_circuit(rated)
    report_bank(found, sheet)


def report_circuit(rated: Rated) -> None:
    """Tell what is found of one circuit of a bank."""
    _judge_temperature(rated)
    _check_terminals(rated)
    _check_grounding(rated)
    _caution_shields(rated)


def report_bank(found: Ampacity, sheet: Worksheet) -> None:
    """Tell what is found of a bank as a whole, and the cautions of the work."""
    _caution_section(found, sheet)
    _compare_table(found)
    _compare_methods(found, sheet)
    _caution_always(sheet)


def _judge_temperature(rated: Rated) -> None:
    """Hold the hottest conductor of a circuit against its limit, where its current is given."""
    load, sheet = rated.load, rated.load.sheet
    tell = sheet.tell
    if load.current is None:
        if rated.ampacity == 0.0:
            sheet.judge(within=False)
            sheet.find(
                Severity.VIOLATION,
                "nothing_left_to_carry",
                "What else heats the bank leaves this circuit nothing to carry: load the others less, or lay it "
                "elsewhere.",
                WORKED_OUT,
                tell.current(0.0),
                member="",
            )
        return
    within = rated.conductor <= load.limit + _MET
    sheet.judge(within)
    if within:
        return
    hot, limit = apart(tell.temperature(rated.conductor), tell.temperature(load.limit))
    most = "" if rated.ampacity is None else f"; {text_of(tell.current(rated.ampacity))} is what it may carry here"
    sheet.find(
        Severity.VIOLATION,
        "conductor_too_hot",
        f"At {text_of(tell.current(load.current))} the conductors reach {hot}, over {limit}{most}. Load it less, take "
        "larger conductors, or lay the ducts farther apart.",
        sheet.rule("conductor_temperature"),
        tell.temperature(rated.conductor),
        tell.temperature(load.limit),
        member="current",
    )


def _check_terminals(rated: Rated) -> None:
    """Hold a circuit against what its terminals allow."""
    checked, load, sheet = rated.checked, rated.load, rated.load.sheet
    allowed = checked.terminal_ampacity
    if allowed is None:
        return
    told = sheet.tell.current(allowed)
    if load.current is not None:
        sheet.judge(not over(load.current, allowed))
        if over(load.current, allowed):
            sheet.find(
                Severity.VIOLATION,
                "over_terminal_rating",
                f"{text_of(sheet.tell.current(load.current))} is over the {text_of(told)} that terminals for "
                f"{checked.terminals} degC allow this conductor: take a larger one, or terminals marked for more.",
                sheet.rule("terminations"),
                sheet.tell.current(load.current),
                told,
                member="current",
            )
    elif rated.ampacity is not None and over(rated.ampacity, allowed):
        sheet.find(
            Severity.CAUTION,
            "terminals_decide",
            f"The bank would carry {text_of(sheet.tell.current(rated.ampacity))}, but terminals for "
            f"{checked.terminals} degC allow this conductor {text_of(told)}: that is the most.",
            sheet.rule("terminations"),
            sheet.tell.current(rated.ampacity),
            told,
            member="",
        )


def _check_grounding(rated: Rated) -> None:
    least, sheet = rated.checked.grounding, rated.load.cable.sheet
    if least is None or rated.checked.is_grounded:
        return
    sheet.find(
        Severity.CAUTION,
        "no_grounding_conductor",
        f"No conductor beside those like the loaded ones is large enough to ground this circuit: every duct of it "
        f"takes {least.copper} of copper or {least.aluminum} of aluminum, unless a metal raceway serves.",
        sheet.rule("equipment_grounding"),
        member="",
    )


def _caution_shields(rated: Rated) -> None:
    """Caution of shields that carry currents between ducts."""
    load = rated.load
    alone = load.cable.shield is not None and load.cable.conductors == 1 and len(load.ducts) > 1
    if alone and load.grounded_at_both_ends and load.system is not CircuitSystem.DIRECT_CURRENT:
        load.sheet.find(
            Severity.CAUTION,
            "shields_heat_between_ducts",
            "With one conductor in each duct and shields grounded at both ends, the shields carry much current: it is "
            "taken at the largest distance of the ducts for all of them. Ground them at one point to avoid it.",
            PRACTICE,
            member="shield_grounding",
        )


def _caution_section(found: Ampacity, sheet: Worksheet) -> None:
    """Caution of an envelope beyond the method, of steel, and of earth that would dry."""
    question = found.solved.question
    if not surround(question).valid:
        sheet.find(
            Severity.CAUTION,
            "envelope_beyond_the_method",
            "The envelope is longer than three times its short side, or lies at the surface: the method has no figure "
            "for that, and the nearest one that allows less was taken. Have it calculated numerically.",
            WORKED_OUT,
        )
    steel = next((load for load in question.loads if _in_steel(found, load)), None)
    if steel is not None:
        sheet.judge(None)
        steel.ducts_sheet.find(
            Severity.CAUTION,
            "steel_conduit_not_judged",
            "The current heats steel conduit too, which was not judged: the conductors are hotter than told. Take "
            "nonmetallic or aluminum duct, or have it calculated.",
            PRACTICE,
            member="",
        )
    hottest = max([duct.outside for duct in found.solved.balance.ducts])
    if hottest > DRY_OUT.value.si and question.earth.concrete is None:
        told, limit = sheet.tell.temperature(hottest), sheet.tell.given(DRY_OUT.value)
        sheet.find(
            Severity.CAUTION,
            "earth_may_dry",
            f"The earth beside the ducts reaches {text_of(told)}: above {text_of(limit)} it loses its water and lets "
            "less heat through. Take a backfill whose resistivity is known when dry.",
            DRY_OUT.backing,
            told,
            limit,
            member="earth_thermal_resistivity",
        )


def _in_steel(found: Ampacity, load: CircuitLoad) -> bool:
    """Say whether alternating current of a circuit flows in steel conduit."""
    walls = found.solved.question.section.walls
    steel = any(walls[duct].material is WallMaterial.STEEL for duct in load.ducts)
    return steel and load.system is not CircuitSystem.DIRECT_CURRENT


def _compare_table(found: Ampacity) -> None:
    """Say why the table with its corrections has another figure for the circuit that governs."""
    load, _ = found.solved.governing
    rated = next(one for one in found.circuits if one.load is load)
    adjusted, ampacity = rated.checked.adjusted, rated.ampacity
    if adjusted is None or ampacity is None or rated.checked.column is None:
        return
    tell = load.sheet.tell
    why = (
        "the table knows no ducts that warm each other, and no load factor"
        if ampacity < adjusted
        else "the table is made for one raceway in ground of its own, whatever its load factor"
    )
    load.sheet.find(
        Severity.NOTE,
        "table_ampacity",
        f"The table of the code, corrected for the earth and the count in a duct, has "
        f"{text_of(tell.current(adjusted))} where {text_of(tell.current(ampacity))} is calculated: {why}.",
        load.sheet.rule("ampacity_table"),
        tell.current(ampacity),
        tell.current(adjusted),
        member="",
    )


def _compare_methods(found: Ampacity, sheet: Worksheet) -> None:
    question, other = found.solved.question, found.other
    both = (found.solved, other) if other is not None else (found.solved,)
    if any(one.question.method is AmpacityMethod.IEC_60287 for one in both) and any(
        load.load_factor < 1.0 for load in question.loads
    ):
        sheet.find(
            Severity.NOTE,
            "steady_load_taken",
            "By the international method a steady load was taken: it has no daily cycle, so that its ampacity is the "
            "lower one.",
            WORKED_OUT,
            member="method",
        )
    if other is None:
        return
    percent = difference_percent(found.solved, other)
    if over(percent, APART.value):
        sheet.find(
            Severity.CAUTION,
            "methods_apart",
            f"The two methods part by {percent:.1f} percent, more than {APART.value:g}: the lower one is told. Look at "
            "load factor, small cables and shields, in which they differ.",
            APART.backing,
            in_percent(percent),
            in_percent(APART.value),
            member="method",
        )


def within_limits(rated: Rated, found: Ampacity) -> bool | None:
    """Say whether a circuit whose current is given keeps its limits; None where steel around it was not judged."""
    load, allowed = rated.load, rated.checked.terminal_ampacity
    over_terminals = allowed is not None and over(load.current or 0.0, allowed)
    if rated.conductor > load.limit + _MET or over_terminals or not load.is_insulated:
        return False
    return None if _in_steel(found, load) else True


def difference_percent(told: Solved, other: Solved) -> float:
    """Give by how much the other method allows more [percent]."""
    return (other.ampacity / told.ampacity - 1.0) * 100.0 if told.ampacity > 0.0 else 0.0


def _caution_always(sheet: Worksheet) -> None:
    sheet.caution(
        "engineering_supervision",
        "A calculated ampacity holds only under engineering supervision: the designer of record checks soil, cables "
        "and method, and decides.",
        sheet.rule("engineered_ampacity"),
    )
    sheet.caution(
        "energized_parts",
        "Cables in the bank may be energized: de-energize, lock out and test before anyone touches them.",
        PRACTICE,
    )
    sheet.caution(
        "neutral_without_heat",
        "Neutrals are taken to carry no heat and currents to have no harmonics: where loads are electronic, count the "
        "neutral among the loaded conductors.",
        sheet.rule("neutral_counted"),
    )
