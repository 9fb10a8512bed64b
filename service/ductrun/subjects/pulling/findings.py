"""What is found of a pull: limits broken, brakes needed, bends too many, and the caution every pull needs."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Case
from ductrun.engineering.rounding import over
from ductrun.engineering.tension import capstan
from ductrun.kit.backing import PRACTICE, WORKED_OUT, Backing
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.choices import BendMade, ConduitType
from ductrun.subjects.parts.route import MADE, PlacedRoute
from ductrun.subjects.pulling.direction import Carried, Direction
from ductrun.subjects.pulling.friction import family_of
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.settling import BEND_TOTAL_LIMIT
from ductrun.subjects.pulling.sliding import report_sliding
from ductrun.units import Length

BURN_LENGTH = quantity("pulling.elbow_burn_length", Length)
_BEND_RULES = {
    ConduitType.HDPE_SCHEDULE_40: "bend_total_hdpe",
    ConduitType.RTRC: "bend_total_rtrc",
    ConduitType.RMC: "bend_total_rmc",
    ConduitType.IMC: "bend_total_imc",
    ConduitType.EMT: "bend_total_emt",
    ConduitType.FMC: "bend_total_fmc",
    ConduitType.LFMC: "bend_total_lfmc",
    ConduitType.LFNC_A: "bend_total_lfnc",
    ConduitType.LFNC_B: "bend_total_lfnc",
    ConduitType.ENT: "bend_total_ent",
    **{kind: "bend_total_pvc" for kind in ConduitType if kind.value.startswith("pvc_")},
}

BRAKE_GIVEN = Backing("the brake limit given", Standing.CALLER)


def report_direction(
    way: Direction, pulling: Pulling, sheet: Worksheet, *, may_turn: bool, turned: bool = False
) -> None:
    """Find where a pull breaks a limit of cable or gear, and what its reel must hold.

    `may_turn` says that the pull from the other end breaks none, as far as it was judged; `turned` that this is the
    pull from the other end.
    """
    if over(way.use.share, 1.0):
        _report_tension(way, pulling, sheet, may_turn=may_turn, turned=turned)
        _report_pressure(way, pulling, sheet, turned=turned)
    report_brake(way, pulling, sheet)


def _at_low_friction(way: Direction, one: Carried) -> str:
    if one is not way.braking:
        return ""
    return " with the brake that the low friction needs"


def _cases(way: Direction) -> list[Carried]:
    return [one for one in (way.pulling, way.braking) if one is not None]


def _in_route(section: int, pulling: Pulling, *, turned: bool) -> int:
    """Give the index in the route of a section of the pull."""
    return len(pulling.sections) - 1 - section if turned else section


def _report_tension(way: Direction, pulling: Pulling, sheet: Worksheet, *, may_turn: bool, turned: bool) -> None:
    case = max(_cases(way), key=lambda one: one.case.highest)
    highest, section = case.case.highest, _in_route(case.tension_at, pulling, turned=turned)
    if not over(highest, pulling.limits.tension):
        return
    told, most = sheet.tell.force(highest), sheet.tell.force(pulling.limits.tension)
    pulling.route.at(section).find(
        Severity.VIOLATION,
        "tension_exceeded",
        f"{pulling.route.named(section)}: the pull reaches {text_of(told)}{_at_low_friction(way, case)}; "
        f"{text_of(most)} is allowed. Divide the run{' or pull from the other end' if may_turn else ''}.",
        pulling.tension_rule,
        told,
        most,
        member="",
    )


def _report_pressure(way: Direction, pulling: Pulling, sheet: Worksheet, *, turned: bool) -> None:
    case = max(_cases(way), key=lambda one: one.case.pressure)
    pressure = case.case.pressure
    if case.pressure_at is None or not over(pressure, pulling.limits.pressure):
        return
    section = _in_route(case.pressure_at, pulling, turned=turned)
    told, limit = sheet.tell.force_per_length(pressure), sheet.tell.given(pulling.pressure_limit)
    pulling.route.at(section).find(
        Severity.VIOLATION,
        "sidewall_pressure_exceeded",
        f"{pulling.route.named(section)}: sidewall pressure reaches {text_of(told)} in the "
        f"bend{_at_low_friction(way, case)}; {text_of(limit)} is allowed. Widen the bend, move it toward the "
        "reel, or take the limit of the cable's maker.",
        pulling.pressure_rule,
        told,
        limit,
        member="",
    )


def report_brake(way: Direction, pulling: Pulling, sheet: Worksheet, where: str = "") -> None:
    """Say with how much the reel must hold back, at the pulling and at the low friction, and whether it can; and what
    draws on the cable when it is let go.

    `where` begins the sentence where a plan has several pulls.
    """
    _report_overbraking(way, pulling, sheet, where)
    report_sliding(way, pulling, sheet, where)
    brakes = [one.brake for one in _cases(way) if one.brake is not None]
    limit = pulling.limits.brake
    if not brakes:
        if limit is not None and over(pulling.load.held, limit):
            _report_weak_brake(pulling.load.held, limit, sheet, where)
        return
    least, most = (sheet.tell.force(brake) for brake in (min(brakes), max(brakes)))
    span = text_of(most) if len(brakes) == 1 or least == most else f"{text_of(least)} to {text_of(most)}"
    needs = f"{where}The cable runs away downhill: the reel must hold back with {span}"
    if limit is None:
        sheet.find(
            Severity.CAUTION,
            "brake_not_judged",
            f"{needs}. What its brake can hold is not known, and the pull is not judged: give the brake limit, or pull "
            "from the other end.",
            WORKED_OUT,
            most,
            member="brake_limit",
        )
        return
    told = sheet.tell.force(limit)
    broken = over(max(brakes), limit)
    do = (
        "take a stronger brake, divide the run, or pull from the other end"
        if broken
        else ("brake only as much as keeps the cable taut")
    )
    sheet.find(
        Severity.VIOLATION if broken else Severity.CAUTION,
        "brake_exceeded" if broken else "brake_needed",
        f"{needs}: {text_of(told)} is allowed; {do}.",
        BRAKE_GIVEN,
        most,
        told,
        member="brake_limit",
    )


def report_other_end(way: Direction, sheet: Worksheet) -> None:
    """Say that the pull from the other end was not judged, where its brake is not known."""
    if way.use.judged:
        return
    most = sheet.tell.force(max(one.case.entering for one in _cases(way)))
    sheet.find(
        Severity.NOTE,
        "other_end_not_judged",
        f"From the other end the reel must hold back with up to {text_of(most)}. What its brake can hold is not known, "
        "and that pull is not judged: give the brake limit.",
        WORKED_OUT,
        most,
        member="brake_limit",
    )


def _report_weak_brake(incoming: float, limit: float, sheet: Worksheet, where: str) -> None:
    told, most = sheet.tell.force(incoming), sheet.tell.force(limit)
    sheet.find(
        Severity.VIOLATION,
        "brake_exceeded",
        f"{where}The cable enters with {text_of(told)}: the reel brake holds {text_of(most)} and no more. "
        "Take a stronger brake, or a lower incoming tension.",
        BRAKE_GIVEN,
        told,
        most,
        member="brake_limit",
    )


def overbraked_beyond_limits(way: Direction, pulling: Pulling) -> Case | None:
    """Give the pull that would break a limit, were the brake of the low friction kept on while friction is high; None
    where that breaks none, or the pull breaks one anyway.
    """
    braked, limits = way.overbraked, pulling.limits
    if braked is None or over(way.use.share, 1.0):
        return None
    broken = over(braked.highest, limits.tension) or over(braked.pressure, limits.pressure)
    return braked if broken else None


def _report_overbraking(way: Direction, pulling: Pulling, sheet: Worksheet, where: str) -> None:
    """Caution where the brake of the low friction, kept on while friction is high, would break a limit."""
    braked = overbraked_beyond_limits(way, pulling)
    if braked is None:
        return
    tension = over(braked.highest, pulling.limits.tension)
    told = sheet.tell.force(braked.highest) if tension else sheet.tell.force_per_length(braked.pressure)
    most = sheet.tell.force(pulling.limits.tension) if tension else sheet.tell.given(pulling.pressure_limit)
    sheet.find(
        Severity.CAUTION,
        "brake_no_more_than_needed",
        f"{where}Held back with {text_of(sheet.tell.force(braked.entering))} while friction is high, the pull would "
        f"reach {text_of(told)}; {text_of(most)} is allowed: brake only as much as keeps the cable taut.",
        WORKED_OUT,
        told,
        most,
    )


def report_bend_total(route: PlacedRoute, total: float) -> None:
    """Find too many bends between pull points."""
    if not over(total, BEND_TOTAL_LIMIT.value.si):
        return
    sheet = route.sheet
    bends = (conduit for given, conduit in zip(route.given, route.conduits, strict=True) if given.kind != "straight")
    listed = next((conduit.type for conduit in bends if conduit.type is not None), None)
    rule = sheet.rule(_BEND_RULES.get(listed, "bend_total_other") if listed else "bend_total_other")
    told = sheet.tell.angle(total)
    sheet.find(
        Severity.VIOLATION,
        "too_many_bends",
        f"The bends add up to {text_of(told)}; {BEND_TOTAL_LIMIT.value} is the most between pull points.",
        rule,
        told,
        sheet.tell.given(BEND_TOTAL_LIMIT.value),
        member="",
    )


def report_burning_rope(route: PlacedRoute, length: float, within: Sequence[int]) -> None:
    """Caution where the rope of a long pull may cut through PVC elbows before the cable is there.

    `length` [m] is that of the pull, `within` are the sections it goes through.
    """
    if not over(length, BURN_LENGTH.value.si):
        return
    for index in within:
        given = route.given[index]
        if given.kind == "straight" or (given.made or MADE.value) is not BendMade.FACTORY_ELBOW:
            continue
        if family_of(route.conduits[index]) == "pvc":
            sheet = route.at(index)
            told = sheet.tell.distance(length)
            sheet.find(
                Severity.CAUTION,
                "rope_may_cut_elbow",
                f"{route.named(index)}: over a pull of {text_of(told)} the rope can burn through PVC elbows. Take "
                "steel or fiberglass elbows, or a wide flat tape and lubricant ahead of the cable.",
                BURN_LENGTH.backing,
                told,
                sheet.tell.given(BURN_LENGTH.value),
                member="",
            )
            return


def caution_rope(sheet: Worksheet, *, braked: bool) -> None:
    """Give the caution every pull needs, and the one of a cable that is held back."""
    sheet.caution(
        "rope_under_tension",
        "Nobody stands in line with a rope under tension; use rated gear, watch the tension, and stop if it rises "
        "unexpectedly. The limits of the cable's maker govern.",
        PRACTICE,
    )
    if braked:
        sheet.caution("braked_cable", "Nobody stands below a cable that is held back.", PRACTICE)


def show_working(way: Direction, pulling: Pulling, sheet: Worksheet) -> None:
    """Write out the forward pull: the brakes, each section, and beside each bend the plain capstan and the sidewall."""
    tell, lie = sheet.tell, pulling.worst_lie
    for one in pulling.lies:
        sheet.show("wc", f"weight correction, {one.arrangement.value}", f"D/d = {one.ratio:.5g}", one.weight_correction)
    sheet.show("share", "of T / R on the worst cable", f"{lie.arrangement.value}, the worst way", lie.sidewall_factor)
    weight = tell.force_per_length(pulling.cables.weight)
    sheet.show("w", "weight of all cables", "count x mass per length x 9.80665 m/s2", weight)
    for name, case in (("brake", way.pulling), ("brake, low friction", way.braking)):
        if case is not None and case.brake is not None:
            formula = "least entry tension that leaves no point of the cable slack, backwards from the low points"
            sheet.show(name, formula, f"from section {len(case.sections)} to 1", tell.force(case.brake))
    for index, (section, step) in enumerate(zip(way.pulling.sections, way.pulling.pulled, strict=True), start=1):
        _show_section(index, section, step, pulling)


def _show_section(index: int, section: engineering.Section, step: engineering.SectionPull, pulling: Pulling) -> None:
    sheet = pulling.route.at(index - 1)
    tell, weight = sheet.tell, pulling.cables.weight
    entering, leaving, highest, pressed = step
    start = f"T1 = {entering:.6g} N, w = {weight:.6g} N/m, K = {section.friction:.6g}"
    if isinstance(section, engineering.Straight):
        given = f"{start}, L = {section.length:.6g} m, phi = {section.grade:.6g} rad"
        sheet.show(f"T{index}", "T1 + w L (K cos phi + sin phi), not below 0", given, tell.force(leaving))
        return
    bend = f"{start}, R = {section.radius:.6g} m"
    if isinstance(section, engineering.HorizontalBend):
        formula = "T1 cosh(K theta) + sinh(K theta) sqrt(T1^2 + (w R)^2)"
        given = f"{bend}, theta = {section.angle:.6g} rad"
        if section.grade:
            formula = "dT/dtheta = K sqrt((T cos phi)^2 + (w R)^2) + w R tan phi, integrated, not below 0"
            given += f", phi = {section.grade:.6g} rad"
    else:
        formula = "dT/dphi = K |T -+ w R cos phi| + w R sin phi, in closed form piece by piece, not below 0"
        given = f"{bend}, phi = {section.entry_grade:.6g} to {section.exit_grade:.6g} rad"
    sheet.show(f"T{index}", formula, given, tell.force(leaving))
    plain = capstan(entering, section.friction, section.angle)
    off = f"{(plain - leaving) / leaving * 100:+.2f} percent of the form with weight" if leaving else "against none"
    formula = "T1 e^(K theta), the weight of the cable neglected"
    sheet.show(f"T{index} plain", formula, f"theta = {section.angle:.6g} rad; {off}", tell.force(plain))
    told = f"highest T in the bend {highest:.6g} N, R = {section.radius:.6g} m"
    sheet.show(f"T/R {index}", "T / R", told, tell.force_per_length(highest / section.radius))
    if pressed is not None:
        sheet.show(f"P{index}", "share x T / R", f"share = {section.share:.6g}", tell.force_per_length(pressed))
