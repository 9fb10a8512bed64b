"""How a straight run above ground is strapped: the practice, the assessment and the core."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import supports as engineering
from ductrun.engineering.rounding import over, round_down, under
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, count
from ductrun.kit.forms import Form, Offset, Omissible
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.movement.fittings import (
    MOST_FITTINGS,
    PISTON_CLEARANCE,
    Fitting,
    FittingMade,
    Layout,
    fitting_of,
    lay_out,
)
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.service_temperature import caution_heat
from ductrun.subjects.movement.spacing import SupportSpacing
from ductrun.units import Length

TERMINATION_COUNT = count("supports.termination_count")
SLIDING = frozenset({"pvc", "rtrc"})  # kinds whose rule lets them move with temperature
_FLEXIBLE = frozenset({"fmc", "lfmc", "lfnc", "ent"})
MOST_SUPPORTS = 5_000  # a bound of the answer, like those of the forms
_STRAPS_A_FITTING = 3  # a piece of run takes two more at most, and an anchor
MOST_STRAPS = MOST_SUPPORTS + 1 + _STRAPS_A_FITTING * MOST_FITTINGS
_A_STRAP = 0.5  # steps, as measured with room to spare


class Fittings(FittingMade):
    """The expansion fittings of a run, as `expansion` counts them: one in each of as many equal pieces."""

    fitting_count: Annotated[int, Field(ge=1, le=MOST_FITTINGS)] = Field(
        description="Expansion fittings of the run.", examples=[2]
    )


class Supporting(Form):
    """How a run is supported."""

    termination_count: Omissible[Annotated[int, Field(ge=1, le=2)]] = Field(
        default=None,
        description="Ends of the run at a box or other termination; with one, the run goes on.",
        examples=[2],
        json_schema_extra=TERMINATION_COUNT.stated,
    )
    end_distance: Omissible[Offset] = Field(
        default=None,
        description="Distance of the end straps from the terminations, at most what the rule of the conduit allows.",
        examples=[{"value": 2, "unit": "ft"}],
        json_schema_extra=by_rule(
            "the most that the rule of the conduit allows: 1 ft for fmc, lfmc and lfnc, 3 ft for all others"
        ),
    )
    fittings: Omissible[Fittings] = Field(
        default=None,
        description="Expansion fittings of the run, which then lies between two fixed points; without them the straps "
        "are those of a run that needs none.",
        examples=[{"fitting_count": 2}],
    )


class Supported(NamedTuple):
    """The straps of a straight run and where they stand along it [m]; its fittings, None without any."""

    spacing: SupportSpacing
    termination_count: int
    end_distance: Length
    positions: list[float]
    layout: Layout | None

    @property
    def holding(self) -> list[float]:
        """Where the straps stand that hold the run [m]: of a kind that does not slide all, else around its fittings."""
        if self.layout is not None:
            return self.layout.holding
        return [] if self.spacing.family in SLIDING else self.positions


def supporting_steps(length: float, spacing: float, fittings: float) -> float:
    """Bound the steps of strapping so much conduit [m] at a spacing [m], with so many fittings in it."""
    return _A_STRAP * (length / spacing + _STRAPS_A_FITTING * fittings)


def support(given: Supporting, spacing: SupportSpacing, run: StraightRun, sheet: Worksheet) -> Supported:
    """Count the straps of a run and say where they go."""
    terminations = sheet.settle("termination_count", given.termination_count, TERMINATION_COUNT)
    end = sheet.settle("end_distance", given.end_distance, spacing.end)
    _judge_end(end, spacing, sheet)
    length, most = run.length, spacing.most
    if length / most.si > MOST_SUPPORTS:
        raise UnanswerableError(
            run.place.fault(
                "value",
                "too_long_for_one_list",
                f"That is more than {MOST_SUPPORTS:,} straps: give the run in parts.",
                maximum=Length(most.value * MOST_SUPPORTS, most.unit),
            )
        )
    layout = None
    if given.fittings is None:
        places = engineering.support_positions(length, most.si, end.si, terminations)
    else:
        fitting, layout = _laid_out(given.fittings, terminations, spacing, length, sheet)
        places = sorted(layout.holding + layout.sliding(fitting, most.si, end.si))
        _report_moved_end(places[0], min(end.si, most.si), sheet)
    _show(length, end, most, len(places), layout, sheet)
    _report_holding(layout, spacing, sheet)
    caution_heat(spacing.family, spacing.place)
    return Supported(spacing, terminations, end, places, layout)


def _laid_out(
    given: Fittings, terminations: int, spacing: SupportSpacing, length: float, sheet: Worksheet
) -> tuple[Fitting, Layout]:
    """Place the fittings given; refuse what no straps could be placed around."""
    place = sheet.within("fittings")
    if spacing.family in _FLEXIBLE:
        raise UnanswerableError(
            sheet.fault(
                "fittings",
                "contradiction",
                f"Expansion fittings belong to rigid conduit: {spacing.family} takes up movement by itself, and every "
                "strap holds it. Leave them out.",
            )
        )
    fitting = fitting_of(given, place)
    layout = lay_out(length, given.fitting_count, fitting)
    faults: list[Fault] = []
    if terminations != 2:
        faults.append(
            sheet.fault(
                "termination_count",
                "contradiction",
                "A run with expansion fittings lies between two fixed points: give 2.",
                ["2"],
            )
        )
    if layout is None:
        faults.append(_no_room(given.fitting_count, fitting, length, place))
    if over(fitting.reach - fitting.clamp, spacing.most.si) or over(fitting.clamp, spacing.end.value.si):
        faults.append(_too_long(fitting, spacing, place))
    if layout is None or faults:
        raise UnanswerableError(*faults)
    return fitting, layout


def _no_room(fitting_count: int, fitting: Fitting, length: float, place: Worksheet) -> Fault:
    """Say that the pieces of the run are shorter than the fittings in them."""
    reach, room = place.tell.size(fitting.reach), place.tell.size(length / fitting_count)
    most = round_down(length / fitting.reach)
    return place.fault(
        "fitting_count",
        "no_room_for_fittings",
        f"Each fitting has {text_of(room)} of the run, and one fully open takes {text_of(reach)}.",
        maximum=float(most) if most else None,
    )


def _too_long(fitting: Fitting, spacing: SupportSpacing, place: Worksheet) -> Fault:
    """Say that straps on either side of a fitting would stand too far apart, or from the termination."""
    tell, most, end = place.tell, spacing.most, spacing.end.value
    engagement = fitting.engagement.si
    return place.fault(
        "fitting_travel",
        "fitting_too_long",
        f"Open, the fitting is {text_of(tell.size(fitting.reach))} long and no strap may stand on its piston: that "
        f"does not go with straps {text_of(tell.given(most))} apart and {text_of(tell.given(end))} from a termination.",
        maximum=tell.size(min((2 * most.si - engagement) / 3, 2 * end.si - engagement)),
    )


def _show(length: float, end: Length, most: Length, straps: int, layout: Layout | None, sheet: Worksheet) -> None:
    if sheet.working is None:
        return
    if layout is None:
        formula = "(L - 2 end) / spacing, rounded up, + 1"
        sheet.show("n", formula, f"({length:.6g} m - 2 x {end.si:.6g} m) / {most.si:.6g} m", straps)
    else:
        holding = len(layout.holding)
        sheet.show("n", "straps that slide + straps that hold", f"{straps - holding} + {holding}", straps)


def _report_moved_end(stands_at: float, asked: float, sheet: Worksheet) -> None:
    """Note end straps that stand nearer to a termination than asked [m], to keep clear of open pistons.

    No barrel is held at the start of a run: the first strap [m] stands there, and that at its end no nearer.
    """
    if not under(stands_at, asked):
        return
    told, wanted = sheet.tell.distance(stands_at), sheet.tell.distance(asked)
    stands, least = apart(told, wanted)
    sheet.find(
        Severity.NOTE,
        "end_strap_moved",
        f"An end strap stands {stands} from its termination, not {least}: there it would stand on the open piston of a "
        f"fitting, or nearer to it than {text_of(sheet.tell.size(PISTON_CLEARANCE.value.si))}.",
        PISTON_CLEARANCE.backing,
        told,
        wanted,
        member="end_distance",
    )


def _report_holding(layout: Layout | None, spacing: SupportSpacing, sheet: Worksheet) -> None:
    """Say which straps hold the run, and which let it slide."""
    if layout is None and spacing.family not in SLIDING:
        within = text_of(sheet.tell.given(spacing.end.value))
        spacing.place.find(
            Severity.NOTE,
            "straps_hold_it",
            f"Fasten the conduit securely at every strap, the first and last within {within} of the terminations: none "
            "is left loose.",
            spacing.rule,
            member="",
        )
        return
    only = "only those on barrels and at anchors clamp it"
    if layout is None:
        only = (
            "only anchors clamp it. Where the run needs expansion fittings, give them: no strap may stand on a piston"
        )
    spacing.place.find(
        Severity.NOTE,
        "straps_let_it_slide",
        f"Straps hold the conduit but let it slide along as it moves with temperature; {only}.",
        spacing.rule,
        member="",
    )


def _judge_end(end: Length, spacing: SupportSpacing, sheet: Worksheet) -> None:
    """Hold the distance of the end straps against the most that it may be."""
    limit = spacing.end.value
    too_far = over(end.si, limit.si)
    sheet.judge(not too_far)
    if too_far:
        told, most = sheet.tell.given(end), sheet.tell.given(limit)
        sheet.find(
            Severity.VIOLATION,
            "end_support_too_far",
            f"The end straps stand {text_of(told)} from the terminations; {text_of(most)} is the most.",
            spacing.rule,
            told,
            most,
            member="end_distance",
        )
