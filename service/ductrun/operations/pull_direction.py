"""One direction of a pull: the tension carried through, and what is found on the way."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pulling_limits import sidewall_pressure
from ductrun.operations import answers
from ductrun.operations.cable_set import Lie
from ductrun.operations.choices import ConduitType, Severity
from ductrun.operations.conduits import ListedConduit, MeasuredConduit
from ductrun.operations.defaults import quantity
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.units import Angle, ForcePerLength

BEND_TOTAL_LIMIT = quantity("pulling.bend_total_limit", Angle)
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
    """One direction of the pull: the told sections and the two figures that are held against limits."""

    __slots__ = ("final", "highest", "pressure", "pulled", "sections")

    def __init__(
        self,
        route: Sequence[engineering.Section],
        lie: Lie,
        friction: float,
        incoming: float,
        sheet: Worksheet,
    ) -> None:
        """Carry the tension through a route; refuses one that no rope could pull."""
        try:
            pulled = engineering.pull(route, lie.weight, friction, incoming)
            highest = max(incoming, *(section.tension_out for section in pulled))
        except OverflowError:
            highest = _BEYOND_ANY_ROPE
        if not highest < _BEYOND_ANY_ROPE:
            raise UnanswerableError(
                Fault(
                    "#/sections",
                    "tension_beyond_any_rope",
                    "Friction and bends multiply the tension beyond any rope (1e9 N): check the friction coefficient "
                    "and the bends, or divide the route by pull points.",
                )
            )
        force, per_length = sheet.tell.force, sheet.tell.force_per_length
        none = force(0.0)
        entering = force(pulled[0].tension_in)
        sections, worst = [], -1.0
        for section, step in zip(route, pulled, strict=True):
            leaving = force(step.tension_out)
            hold_back = force(step.hold_back) if step.hold_back > 0.0 else none
            if isinstance(section, engineering.Straight):
                sections.append(SectionTension(entering, leaving, hold_back))
            else:
                pressed = sidewall_pressure(step.tension_out, section.radius, lie.sidewall_factor)
                worst = pressed if pressed > worst else worst
                sections.append(SectionTension(entering, leaving, hold_back, per_length(pressed)))
            entering = leaving
        self.pulled = pulled
        self.sections = sections
        self.final = pulled[-1].tension_out
        self.highest = highest
        self.pressure = worst if worst >= 0.0 else None

    def use_of(self, allowed: float, allowed_pressure: float) -> float:
        """Give the larger share of the two limits that this direction uses."""
        return max(self.highest / allowed, (self.pressure or 0.0) / allowed_pressure)


def hold_against_limits(
    way: Direction,
    allowed: float,
    rule: str,
    pressure_limit: ForcePerLength,
    pressure_rule: str,
    sheet: Worksheet,
) -> None:
    """Find where the pull breaks a limit of the cable or the gear."""
    tell = sheet.tell
    if way.highest > allowed * (1 + 1e-9):
        told, limit = tell.force(way.highest), tell.force(allowed)
        sheet.find(
            Severity.VIOLATION,
            "tension_exceeded",
            f"The pull reaches {text_of(told)}; {text_of(limit)} is allowed ({rule}). Divide the run or pull from the "
            "other end.",
            rule,
            told,
            limit,
        )
    if way.pressure is not None and way.pressure > pressure_limit.si * (1 + 1e-9):
        told_pressure = tell.force_per_length(way.pressure)
        sheet.find(
            Severity.VIOLATION,
            "sidewall_pressure_exceeded",
            f"Sidewall pressure reaches {text_of(told_pressure)} in a bend; {pressure_limit.in_system(tell.system)} is "
            "allowed. Widen the bend, move it toward the reel, or take the limit of the cable's maker.",
            pressure_rule,
            told_pressure,
            tell.given(pressure_limit),
        )


def report_route(conduit: ListedConduit | MeasuredConduit, way: Direction, total: float, sheet: Worksheet) -> None:
    """Find too many bends, a cable that runs away, and give the caution every pull needs."""
    tell = sheet.tell
    if total > BEND_TOTAL_LIMIT.value.si * (1 + 1e-9):
        listed = conduit.type if isinstance(conduit, ListedConduit) else None
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
    hold_back = max(section.hold_back for section in way.pulled)
    if hold_back > 0.0:
        told_hold = tell.force(hold_back)
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


def show_working(
    route: Sequence[engineering.Section],
    pulled: Sequence[engineering.SectionPull],
    lie: Lie,
    coefficient: float,
    friction: float,
    sheet: Worksheet,
) -> None:
    """Write out the forward pull, with the plain capstan figure beside each bend."""
    tell = sheet.tell
    sheet.show("wc", f"weight correction, {lie.arrangement.value}", f"D/d = {lie.ratio:.5g}", lie.weight_correction)
    sheet.show("K", "wc x coefficient of friction", f"{lie.weight_correction:.6g} x {coefficient:g}", friction)
    sheet.show(
        "w",
        "weight of all cables",
        "count x mass per length x 9.80665 m/s2",
        tell.force_per_length(lie.weight),
    )
    for index, (section, step) in enumerate(zip(route, pulled, strict=True), start=1):
        entering, after = step.tension_in, tell.force(step.tension_out)
        start = f"T1 = {entering:.6g} N, w = {lie.weight:.6g} N/m, K = {friction:.6g}"
        match section:
            case engineering.Straight(length, grade):
                formula = "T1 + w L (K cos phi + sin phi), not below 0"
                sheet.show(f"T{index}", formula, f"{start}, L = {length:.6g} m, phi = {grade:.6g} rad", after)
                continue
            case engineering.HorizontalBend(radius, angle):
                formula = "T1 cosh(K theta) + sinh(K theta) sqrt(T1^2 + (w R)^2)"
                sheet.show(f"T{index}", formula, f"{start}, R = {radius:.6g} m, theta = {angle:.6g} rad", after)
            case engineering.VerticalBend(radius, entry, leave):
                angle = abs(leave - entry)
                formula = "dT/dphi = K |T -+ w R cos phi| + w R sin phi, in closed form piece by piece, not below 0"
                given = f"{start}, R = {radius:.6g} m, phi = {entry:.6g} to {leave:.6g} rad"
                sheet.show(f"T{index}", formula, given, after)
        plain = engineering.capstan(entering, friction, angle)
        sheet.show(
            f"T{index} plain",
            "T1 e^(K theta), weight neglected",
            f"theta = {angle:.6g} rad",
            tell.force(plain),
        )
