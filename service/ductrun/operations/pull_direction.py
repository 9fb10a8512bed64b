"""One direction of a pull: the tension carried through, and what is found on the way."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Load
from ductrun.engineering.pulling_limits import sidewall_pressure
from ductrun.operations import answers
from ductrun.operations.choices import ConduitType, Severity
from ductrun.operations.conduits import ListedConduit, MeasuredConduit
from ductrun.operations.pull_inputs import BEND_TOTAL_LIMIT, Pulling
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of

_BEYOND_ANY_ROPE = 1e9  # N
_BEND_RULES = {
    ConduitType.HDPE_SCHEDULE_40: "bend_total_hdpe",
    ConduitType.RMC: "bend_total_rmc",
    **{kind: "bend_total_pvc" for kind in ConduitType if kind.value.startswith("pvc_")},
}


class SectionTension(Struct, frozen=True, gc=False):
    """One section of the pull."""

    tension_in: Annotated[answers.Force, Meta(description="Tension entering the section.")]
    tension_out: Annotated[answers.Force, Meta(description="Tension leaving the section.")]
    hold_back: Annotated[
        answers.Force,
        Meta(description="Force with which the reel must hold back on the way down; 0 for none."),
    ]
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Pressure on the worst cable; bends only.")
    ] = UNSET


class Direction:
    """One direction of the pull: the told sections and the figures that are held against limits."""

    __slots__ = ("final", "highest", "hold_back", "pressure", "pulled", "sections")

    def __init__(
        self,
        route: Sequence[engineering.Section],
        load: Load,
        sheet: Worksheet,
    ) -> None:
        """Carry the tension through a route; refuses one that no rope could pull."""
        try:
            pulled = engineering.pull(route, load.weight, load.friction, load.incoming)
        except OverflowError:
            raise _beyond_any_rope() from None
        force, per_length = sheet.tell.force, sheet.tell.force_per_length
        none = force(0.0)
        entering = force(load.incoming)
        sections = []
        highest, worst, most_held = load.incoming, -1.0, 0.0
        for section, (_, tension_out, held) in zip(route, pulled, strict=True):
            leaving = force(tension_out)
            highest = max(highest, tension_out)
            hold_back = none
            if held > 0.0:
                hold_back = force(held)
                most_held = max(most_held, held)
            if isinstance(section, engineering.Straight):
                sections.append(SectionTension(entering, leaving, hold_back))
            else:
                pressed = sidewall_pressure(tension_out, section.radius, load.sidewall_factor)
                worst = pressed if pressed > worst else worst
                sections.append(SectionTension(entering, leaving, hold_back, per_length(pressed)))
            entering = leaving
        if not highest < _BEYOND_ANY_ROPE:
            raise _beyond_any_rope()
        self.pulled = pulled
        self.sections = sections
        self.final = pulled[-1].tension_out
        self.highest = highest
        self.pressure = worst if worst >= 0.0 else None
        self.hold_back = most_held

    def use_of(self, allowed: float, allowed_pressure: float) -> float:
        """Give the larger share of the two limits that this direction uses."""
        return max(self.highest / allowed, (self.pressure or 0.0) / allowed_pressure)


def _beyond_any_rope() -> UnanswerableError:
    return UnanswerableError(
        Fault(
            "#/sections",
            "tension_beyond_any_rope",
            "Friction and bends multiply the tension beyond any rope (1e9 N): check the friction coefficient and the "
            "bends, or divide the route by pull points.",
        )
    )


def hold_against_limits(way: Direction, pulling: Pulling, sheet: Worksheet) -> None:
    """Find where the pull breaks a limit of the cable or the gear."""
    tell = sheet.tell
    if way.highest > pulling.limits.tension * (1 + 1e-9):
        told, most = tell.force(way.highest), tell.force(pulling.limits.tension)
        sheet.find(
            Severity.VIOLATION,
            "tension_exceeded",
            f"The pull reaches {text_of(told)}; {text_of(most)} is allowed ({pulling.tension_rule}). Divide the run "
            "or pull from the other end.",
            pulling.tension_rule,
            told,
            most,
        )
    if way.pressure is not None and way.pressure > pulling.limits.pressure * (1 + 1e-9):
        told_pressure, limit = tell.force_per_length(way.pressure), tell.given(pulling.pressure_limit)
        sheet.find(
            Severity.VIOLATION,
            "sidewall_pressure_exceeded",
            f"Sidewall pressure reaches {text_of(told_pressure)} in a bend; "
            f"{text_of(limit)} is allowed. Widen the bend, move it toward the reel, or "
            "take the limit of the cable's maker.",
            pulling.pressure_rule,
            told_pressure,
            limit,
        )


def report_route(conduit: ListedConduit | MeasuredConduit, way: Direction, total: float, sheet: Worksheet) -> None:
    """Find too many bends, a cable that runs away, and give the caution every pull needs."""
    tell = sheet.tell
    if total > BEND_TOTAL_LIMIT.value.si * (1 + 1e-9):
        listed = conduit.type if conduit.kind == "listed" else None
        rule = sheet.rule(_BEND_RULES.get(listed, "bend_total_other") if listed else "bend_total_other")
        told = tell.angle(total)
        sheet.find(
            Severity.VIOLATION,
            "too_many_bends",
            f"The bends add up to {text_of(told)}; {BEND_TOTAL_LIMIT.value} is the most between pull points.",
            rule,
            told,
            tell.given(BEND_TOTAL_LIMIT.value),
        )
    if way.hold_back > 0.0:
        told_hold = tell.force(way.hold_back)
        sheet.find(
            Severity.CAUTION,
            "hold_back",
            f"The cable runs away downhill: the reel must hold back with {text_of(told_hold)}. Brake the reel.",
            "derived",
            told_hold,
        )
    sheet.find(
        Severity.CAUTION,
        "rope_under_tension",
        "Nobody stands in line with a rope under tension; use rated gear, watch the tension, and stop if it rises "
        "unexpectedly. The limits of the cable's maker govern.",
        "common practice, no source",
    )


def show_working(way: Direction, pulling: Pulling, sheet: Worksheet) -> None:
    """Write out the forward pull, with the plain capstan figure and its shortfall beside each bend."""
    tell, lie, load = sheet.tell, pulling.lie, pulling.load
    friction = load.friction
    sheet.show("wc", f"weight correction, {lie.arrangement.value}", f"D/d = {lie.ratio:.5g}", lie.weight_correction)
    for name, value in (("K straights", friction.straights), ("K bends", friction.bends)):
        sheet.show(name, "weight correction where it applies, x coefficient", f"{pulling.coefficient:g}", value)
    sheet.show("w", "weight of all cables", "count x mass per length x 9.80665 m/s2", tell.force_per_length(lie.weight))
    for index, (section, step) in enumerate(zip(pulling.route, way.pulled, strict=True), start=1):
        entering, leaving = step.tension_in, step.tension_out
        start = f"T1 = {entering:.6g} N, w = {lie.weight:.6g} N/m"
        if isinstance(section, engineering.Straight):
            formula = "T1 + w L (K cos phi + sin phi), not below 0"
            given = f"{start}, K = {friction.straights:.6g}, L = {section.length:.6g} m, phi = {section.grade:.6g} rad"
            sheet.show(f"T{index}", formula, given, tell.force(leaving))
            continue
        bend = f"{start}, K = {friction.bends:.6g}, R = {section.radius:.6g} m"
        if isinstance(section, engineering.HorizontalBend):
            formula = "T1 cosh(K theta) + sinh(K theta) sqrt(T1^2 + (w R)^2)"
            given = f"{bend}, theta = {section.angle:.6g} rad"
        else:
            formula = "dT/dphi = K |T -+ w R cos phi| + w R sin phi, in closed form piece by piece, not below 0"
            given = f"{bend}, phi = {section.entry_grade:.6g} to {section.exit_grade:.6g} rad"
        sheet.show(f"T{index}", formula, given, tell.force(leaving))
        plain = engineering.capstan(entering, friction.bends, section.angle)
        off = f"{(plain - leaving) / leaving * 100:+.2f} percent of the form with weight" if leaving else "against none"
        formula = "T1 e^(K theta), the weight of the cable neglected"
        sheet.show(f"T{index} plain", formula, f"theta = {section.angle:.6g} rad; {off}", tell.force(plain))
