"""How runs move with temperature and what takes it up: the practice, the assessment and the core."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import expansion as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit.defaults import by_rule, choice, number
from ductrun.kit.forms import ConduitTemperature, Omissible
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import PistonConvention, RunSetting
from ductrun.subjects.movement.findings import (
    SOLD,
    TRIGGER,
    Apart,
    Coefficient,
    MovingRun,
    find_movement,
    report_borrowed_trigger,
    report_crossings,
    report_no_room,
    report_setting,
    rule_of,
)
from ductrun.subjects.movement.fittings import (
    MOST_FITTINGS,
    MOST_FITTINGS_TOGETHER,
    Fitting,
    FittingMade,
    fitting_of,
    lay_out,
)
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.service_temperature import ServiceTemperature, judge_heat
from ductrun.subjects.movement.temperatures import Seen, Span
from ductrun.units import Length, Temperature

USABLE_TRAVEL = number("expansion.usable_travel_percent")
CONVENTION = choice("expansion.piston_convention", PistonConvention)
SETTING = choice("expansion.setting", RunSetting)
MOST_OPENINGS = 50
_SAME_TEMPERATURE = 6  # digits of a kelvin behind the point


class Moving(FittingMade):
    """Where straight runs lie, and what takes up their movement."""

    setting: Omissible[RunSetting] = Field(
        default=None,
        description="Where the runs lie.",
        examples=["above_ground"],
        json_schema_extra=SETTING.stated,
    )
    usable_travel_percent: Omissible[Annotated[float, Field(ge=10, le=100)]] = Field(
        default=None,
        description="Most of the travel of a fitting that its share of the movement may use.",
        examples=[90],
        json_schema_extra=USABLE_TRAVEL.stated,
    )
    piston_convention: Omissible[PistonConvention] = Field(
        default=None,
        description="How far to open the fittings.",
        examples=["full_travel"],
        json_schema_extra=CONVENTION.stated,
    )
    opening_temperatures: Omissible[Annotated[list[ConduitTemperature], Field(max_length=MOST_OPENINGS)]] = Field(
        default=None,
        description="Temperatures for which to give the opening, as a table the crew carries.",
        examples=[[{"value": 40, "unit": "degF"}, {"value": 60, "unit": "degF"}]],
    )
    emerges_from_grade: Omissible[bool] = Field(
        default=None, description="Whether a run comes up out of the ground.", examples=[False]
    )
    crosses_structural_joint: Omissible[bool] = Field(
        default=None, description="Whether a run crosses a joint of the structure.", examples=[False]
    )
    service_temperature: Omissible[ServiceTemperature] = Field(
        default=None,
        description="Highest temperature of the air that the conduit is permitted or listed for.",
        examples=[{"value": 122, "unit": "degF"}],
        json_schema_extra=by_rule(
            "what the code permits the material in: 122 degF for PVC, HDPE and RTRC; none for metal or a coefficient"
        ),
    )


class FreeMovement(NamedTuple):
    """Runs that are free to move; `change` is that of the longest [m].

    A run of `longest_without_fitting` [m], or the longest run at `largest_difference_without_fitting` [K], needs one.
    A fitting of `travel_needed` [m] would do alone for the longest; `counts_by_travel` holds how many fittings of each
    travel that is sold all runs would take.
    """

    fitting: Fitting
    runs: list[MovingRun]
    change: float
    longest_without_fitting: float
    largest_difference_without_fitting: float
    travel_needed: float
    counts_by_travel: list[int]


class Movement(NamedTuple):
    """What straight runs do with temperature: they move freely, or the ground holds them."""

    coefficient: Coefficient
    seen: Seen
    free: FreeMovement | None


class _Fitted(NamedTuple):
    """The fittings of a request and the share of their travel that may be used [1]."""

    fitting: Fitting
    usable: float


def setting_of(given: Moving, sheet: Worksheet) -> RunSetting:
    """Settle where the runs lie."""
    return sheet.settle("setting", given.setting, SETTING)


def move(
    given: Moving, coefficient: Coefficient, runs: Sequence[StraightRun], seen: Seen, sheet: Worksheet
) -> Movement:
    """Give the movement of each straight run, whether it needs fittings, how many, where, and how far open."""
    faults = Gathering()
    with faults:
        _refuse_openings(given, seen, sheet)
    setting = seen.setting
    rule = rule_of(coefficient.material, sheet)
    report_borrowed_trigger(coefficient, rule)
    report_crossings(given.emerges_from_grade, given.crosses_structural_joint, sheet)
    report_setting(setting, rule, sheet)
    judge_heat(coefficient.material, given.service_temperature, seen, sheet)
    if setting is not RunSetting.ABOVE_GROUND:
        faults.stop()
        return Movement(coefficient, seen, None)
    with faults:
        fitted = _fitted(given, sheet)
    faults.stop()
    moved = []
    together = 0
    for run in runs:
        with faults:
            moved.append(_moved(given, coefficient, run, seen, fitted, sheet))
            together += moved[-1].fitting_count
        if together > MOST_FITTINGS_TOGETHER:
            with faults:
                raise _too_many_together(run)
            break
    faults.stop()
    backing = rule.beside(coefficient.backing.of("coefficient"))
    for index, (run, one) in enumerate(zip(runs, moved, strict=True)):
        _show(index, run, one, coefficient, seen, fitted, sheet)
        if one.fitting_count:
            which = "The run" if len(runs) == 1 else f"Run {index + 1}"
            find_movement(which, run.place, one, fitted.fitting, backing)
            if one.layout is None:
                report_no_room(which, run.place, one, fitted.fitting)
    return Movement(coefficient, seen, _free(coefficient, moved, seen.difference.si, fitted, sheet))


def _refuse_openings(given: Moving, seen: Seen, sheet: Worksheet) -> None:
    """Refuse openings at temperatures that the range does not reach, all at once, or without a range."""
    if not given.opening_temperatures:
        return
    if seen.span is None:
        raise UnanswerableError(
            sheet.fault(
                "opening_temperatures", "needs_a_range", "Openings follow from a range of temperatures: give one."
            )
        )
    faults = Gathering()
    for index, temperature in enumerate(given.opening_temperatures):
        with faults:
            seen.span.refuse_outside(temperature, f"opening_temperatures/{index}/value", sheet)
    faults.stop()


def _fitted(given: Moving, sheet: Worksheet) -> _Fitted:
    """Settle the fittings; one that cannot take the least movement that calls for it is refused."""
    fitting = fitting_of(given, sheet)
    percent = sheet.settle("usable_travel_percent", given.usable_travel_percent, USABLE_TRAVEL)
    least = TRIGGER.value * 100 / percent
    if under(fitting.travel.si, Length(least, TRIGGER.unit).si):
        raise UnanswerableError(
            sheet.fault(
                "fitting_travel/value",
                "travel_below_one_movement",
                f"A movement of {text_of(sheet.tell.given(TRIGGER))} calls for a fitting; {percent:g} percent of the "
                "travel may be used, and of this one that does not take it up.",
                minimum=Length(least, TRIGGER.unit),
            )
        )
    return _Fitted(fitting, percent / 100)


def _moved(
    given: Moving, coefficient: Coefficient, run: StraightRun, seen: Seen, fitted: _Fitted, sheet: Worksheet
) -> MovingRun:
    length, travel = run.length, fitted.fitting.travel.si
    change = engineering.length_change(coefficient.per_kelvin, length, seen.difference.si)
    if not engineering.fitting_required(change, TRIGGER.si):
        return MovingRun(length, change, 0, 0.0, None, [])
    _refuse_too_many(change, travel * fitted.usable, run)
    count = engineering.fitting_count(change, travel, fitted.usable)
    layout = lay_out(length, count, fitted.fitting)
    openings = _openings(given, coefficient.apart, seen, travel, change / count, sheet)
    return MovingRun(length, change, count, change / count / travel, layout, openings)


def _refuse_too_many(change: float, usable: float, run: StraightRun) -> None:
    """Refuse a run [change and usable travel in m] whose fittings nobody would list."""
    share = MOST_FITTINGS * usable / change
    if over(1.0, share):
        raise UnanswerableError(
            run.place.fault(
                "value",
                "too_long_for_one_list",
                f"That is more than {MOST_FITTINGS:,} fittings: give the run in parts.",
                maximum=run.place.tell.distance(run.length * share),
            )
        )


def _too_many_together(run: StraightRun) -> UnanswerableError:
    return UnanswerableError(
        run.place.fault(
            "value",
            "too_many_fittings",
            f"With this one the straight runs take more than {MOST_FITTINGS_TOGETHER:,} fittings together: give fewer, "
            "and ask for the others by themselves.",
        )
    )


def _show(
    index: int,
    run: StraightRun,
    moved: MovingRun,
    coefficient: Coefficient,
    seen: Seen,
    fitted: _Fitted,
    sheet: Worksheet,
) -> None:
    if sheet.working is not None:
        run.place.show(
            f"dL{index + 1}",
            "a x L x dT",
            f"{coefficient.per_kelvin:.6g} /K x {run.length:.6g} m x {seen.difference.si:.6g} K",
            sheet.tell.size(moved.change),
        )
    if sheet.working is not None and moved.fitting_count:
        run.place.show(
            f"n{index + 1}",
            "dL / (travel x usable share), rounded up",
            f"{moved.change:.6g} m / ({fitted.fitting.travel.si:.6g} m x {fitted.usable:.6g})",
            moved.fitting_count,
        )


def _openings(
    given: Moving, apart: Apart | None, seen: Seen, travel: float, change: float, sheet: Worksheet
) -> list[tuple[Temperature, float]]:
    """Give the openings of a fitting that takes `change` [m], for the installation and every temperature asked for,
    each once, from the lowest to the highest.
    """
    if seen.span is None:
        return []
    asked = [] if seen.installation is None else [seen.installation]
    asked += given.opening_temperatures or []
    if not asked:
        return []
    each = {round(at.si, _SAME_TEMPERATURE): at for at in reversed(asked)}  # of alike ones as the installation is given
    asked = [at for _, at in sorted(each.items())]
    convention = sheet.settle("piston_convention", given.piston_convention, CONVENTION)
    acting = [_acting(at.si, apart, seen.span, seen.sun) for at in asked]
    openings = [opening_at(at, travel, change, seen.span, convention) for at in acting]
    return list(zip(asked, openings, strict=True))


def _acting(at: float, apart: Apart | None, span: Span, sun: float) -> float:
    """Give the temperature [K] by which a fitting is opened at one of the conduit: of its own, or as it acts there."""
    if apart is None:
        return at
    return engineering.acting_temperature(at, span.lowest, span.highest - sun, sun, *apart)


def opening_at(at: float, travel: float, change: float, span: Span, convention: PistonConvention) -> float:
    """Give how far a fitting of a travel [m] that takes up a change [m] over a span is opened [m] at a temperature
    [K].
    """
    if convention is PistonConvention.CENTERED:
        return engineering.centered_opening(travel, change, *span, at)
    return engineering.piston_opening(travel, *span, at) if under(at, span.highest) else 0.0


def _free(
    coefficient: Coefficient, runs: list[MovingRun], difference: float, fitted: _Fitted, sheet: Worksheet
) -> FreeMovement:
    longest = max(runs, key=lambda run: run.length)
    moving = [run.change for run in runs if run.fitting_count]
    if moving:
        sheet.cite("expansion-fitting-catalogue")
    return FreeMovement(
        fitted.fitting,
        runs,
        longest.change,
        engineering.longest_run(coefficient.per_kelvin, difference, TRIGGER.si),
        engineering.largest_difference(coefficient.per_kelvin, longest.length, TRIGGER.si),
        longest.change / fitted.usable,
        [sum([engineering.fitting_count(change, sold.si, fitted.usable) for change in moving]) for sold in SOLD],
    )
