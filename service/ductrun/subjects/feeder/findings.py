"""What is found of a bank that was rated: conductors too hot, what the method leaves out, what the code says beside."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE, WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.wording import apart, in_percent, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.choices import AmpacityMethod, CircuitSystem, WallMaterial
from ductrun.subjects.feeder.circuits import IN_A_SET, CircuitLoad
from ductrun.subjects.feeder.code_findings import breaks_code, in_metal, report_code
from ductrun.subjects.feeder.loaded_cable import cores_of
from ductrun.subjects.feeder.rating import Ampacity, Rated
from ductrun.subjects.feeder.section_findings import caution_section
from ductrun.subjects.feeder.solving import Solved

APART = number("feeder.methods_apart_percent")
_MET = 1e-6  # [K] of a limit that was solved for


def report(found: Ampacity, sheet: Worksheet) -> None:
    """Tell what is found of a bank, and the cautions of the work."""
    for rated in found.circuits:
        report_circuit(rated, found)
    report_bank(found, sheet)


def report_circuit(rated: Rated, found: Ampacity, alike: Sequence[Rated] = ()) -> None:
    """Tell what is found of one circuit of a bank; of circuits too hot `alike`, all that they reach."""
    _judge_temperature(rated, alike or [rated])
    report_code(rated, found)
    _find_stray(rated)
    _caution_shields(rated)
    _caution_unknown_voltage(rated)


def report_bank(found: Ampacity, sheet: Worksheet) -> None:
    """Tell what is found of a bank as a whole, and the cautions of the work."""
    caution_section(found, sheet)
    _find_steel(found, sheet)
    _compare_table(found)
    _compare_methods(found, sheet)
    _caution_always(sheet)
    if any(_may_have_neutrals(load, found) for load in found.solved.question.loads):
        _caution_neutrals(sheet)


def alike_but_for_heat(circuits: Sequence[Rated]) -> list[list[Rated]]:
    """Give for every circuit of a bank those that are too hot as it is: of one current, limit and ampacity."""
    alike: dict[tuple[object, ...], list[Rated]] = {}
    for rated in circuits:
        alike.setdefault(_limits(rated), []).append(rated)
    return [alike[_limits(rated)] for rated in circuits]


def _limits(rated: Rated) -> tuple[object, ...]:
    tell, load = rated.load.sheet.tell, rated.load
    current, ampacity = (None if one is None else text_of(tell.current(one)) for one in (load.current, rated.ampacity))
    return _is_hot(rated), current, load.limit, ampacity


def _is_hot(rated: Rated) -> bool:
    """Say whether the hottest conductor of a circuit is hotter than it may be."""
    return rated.conductor > rated.load.limit + _MET


def _judge_temperature(rated: Rated, alike: Sequence[Rated]) -> None:
    """Hold the hottest conductor of a circuit against its limit, where its current is given; say how hot those of
    circuits `alike` become.
    """
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
    within = not _is_hot(rated)
    sheet.judge(within)
    if within:
        return
    coolest, hottest = (tell.temperature(bound(one.conductor for one in alike)) for bound in (min, max))
    hot, limit = apart(coolest, tell.temperature(load.limit))
    if text_of(hottest) != text_of(coolest):
        hot = f"{hot} to {text_of(hottest)}"
    most = "" if rated.ampacity is None else f"; {text_of(tell.current(rated.ampacity))} is what it may carry here"
    sheet.find(
        Severity.VIOLATION,
        "conductor_too_hot",
        f"At {text_of(tell.current(load.current))} the conductors reach {hot}, over {limit}{most}. Load it less, take "
        "larger conductors, or lay the ducts farther apart.",
        sheet.rule("conductor_temperature"),
        hottest,
        tell.temperature(load.limit),
        member="current",
    )


def _find_stray(rated: Rated) -> None:
    """Tell of conductors in the ducts of a circuit that may be another one."""
    stray, load = rated.checked.stray, rated.load
    if stray is None:
        return
    load.sheet.judge(None)
    load.cables_sheet.find(
        Severity.CAUTION,
        "other_conductors_not_judged",
        "Beside the loaded conductors the duct has more than a neutral and a ground for each set: if these carry load "
        "they heat this circuit, which was not judged. Give each circuit a duct of its own, and the neutral and the "
        "ground of this one a line each.",
        PRACTICE,
        member=str(stray),
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


def _caution_unknown_voltage(rated: Rated) -> None:
    """Caution of a shielded cable whose voltage, and with it the loss in its insulation, is not given."""
    load = rated.load
    if load.cable.shield is not None and load.given.voltage is None:
        load.sheet.find(
            Severity.CAUTION,
            "voltage_not_given",
            "Cables with shields are made for medium voltage, and none is given: no loss in their insulation was "
            "counted. Give the voltage of the circuit.",
            PRACTICE,
            member="voltage",
        )


def _find_steel(found: Ampacity, sheet: Worksheet) -> None:
    """Tell of steel around alternating current."""
    question = found.solved.question
    for load in question.loads:
        _find_alone_in_steel(found, load)
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


def _in_steel(found: Ampacity, load: CircuitLoad) -> bool:
    """Say whether alternating current of a circuit flows in steel conduit."""
    walls = found.solved.question.section.walls
    steel = any(walls[duct].material is WallMaterial.STEEL for duct in load.ducts)
    return steel and load.system is not CircuitSystem.DIRECT_CURRENT


def _alone_in_steel(found: Ampacity, load: CircuitLoad) -> bool:
    """Say whether a duct of steel holds no whole set of a circuit of alternating current."""
    return _in_steel(found, load) and load.phases_in_a_duct % IN_A_SET[load.system] != 0


def _find_alone_in_steel(found: Ampacity, load: CircuitLoad) -> None:
    if not _alone_in_steel(found, load):
        return
    load.ducts_sheet.find(
        Severity.VIOLATION,
        "set_split_in_steel",
        f"A steel duct of this circuit holds no whole set of {IN_A_SET[load.system]}: the current heats the steel "
        "around it by induction. Lay all conductors of a set in each steel duct, or take nonmetallic duct.",
        load.sheet.rule("conductors_grouped"),
        load.phases_in_a_duct,
        member="",
    )


def _compare_table(found: Ampacity) -> None:
    """Say why the table with its corrections has another figure for the circuit that governs."""
    load, _ = found.solved.governing
    rated = next(one for one in found.circuits if one.load is load)
    adjusted, ampacity = rated.checked.adjusted, rated.ampacity
    if adjusted is None or ampacity is None or rated.checked.column is None:
        return
    tell = load.sheet.tell
    if ampacity >= adjusted:
        why = "the table is made for one raceway in ground of its own, whatever its load factor"
    elif len(found.loaded) > 1:
        why = "the table knows no ducts that warm each other"
    else:
        why = "the table knows neither the depth of the duct nor what earth and duct let through"
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
    """Say whether a circuit whose current is given keeps its limits; None where what heats it more was not judged."""
    load = rated.load
    if rated.conductor > load.limit + _MET or not load.is_insulated or breaks_code(rated, found):
        return False
    if _alone_in_steel(found, load):
        return False
    return None if _in_steel(found, load) or rated.checked.stray is not None else True


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


def _may_have_neutrals(load: CircuitLoad, found: Ampacity) -> bool:
    """Say whether a duct of alternating current may hold a neutral of which nothing was said: one like those that are
    loaded, or an insulated one more than that which grounds the circuit where no bare one does.
    """
    if load.system is CircuitSystem.DIRECT_CURRENT or load.given.loaded_neutral_count is not None:
        return False
    alike, beside = -load.cable.conductors, 0
    for line in load.lines:
        count = line.count * cores_of(line.cable)
        if line.cable == load.cable.given:
            alike += count
        elif line.cable.kind != "bare":
            beside += count
    grounded = in_metal(load, found) or any(line.cable.kind == "bare" for line in load.lines)
    return alike > 0 or beside > (0 if grounded else 1)


def _caution_neutrals(sheet: Worksheet) -> None:
    sheet.caution(
        "neutral_without_heat",
        "Neutrals are taken to carry no heat and currents to have no harmonics: where loads are electronic, lay "
        "neutrals as large as the phases and give them as loaded_neutral_count.",
        sheet.rule("neutral_counted"),
    )
