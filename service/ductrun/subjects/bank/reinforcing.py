"""Bars in a concrete envelope."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import round_up, under
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit import answers
from ductrun.kit.backing import WORKED_OUT, backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import Clearance, Form, Interval, Omissible
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart, listing, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import BarSize
from ductrun.tables import TABLES
from ductrun.tables.ground_rows import ReinforcingBar
from ductrun.units import Length, MassPerLength

LAP_DIAMETERS = number("reinforcing.lap_diameters")
STOCK_LENGTH = quantity("reinforcing.stock_length", Length)
TIE_SIZE = choice("reinforcing.tie_size", BarSize)
TIE_SPACING = quantity("reinforcing.tie_spacing", Length)
EDGE_COVER = quantity("reinforcing.cover", Length)
_HOOKS = {BarSize(row.bar): Default(Length.parse(row.hook_in, "in"), backing_of(row)) for row in TABLES["tie_hooks"]}
_BARS: dict[str, ReinforcingBar] = {row.bar: row for row in TABLES["reinforcing_bars"]}


class Reinforcing(Form):
    """Longitudinal bars and ties."""

    bar_count: Annotated[int, Field(ge=1, le=100)] = Field(description="Longitudinal bars.", examples=[4])
    bar_size: BarSize = Field(description="Size of the longitudinal bars.", examples=["no_4"])
    lap_length: Omissible[Clearance] = Field(
        default=None, description="Lap of two bars.", examples=[{"value": 20, "unit": "in"}]
    )
    lap_diameter_ratio: Omissible[Annotated[float, Field(ge=0, le=200)]] = Field(
        default=None,
        description="Lap over the diameter of a bar, where lap_length is left out.",
        examples=[40],
        json_schema_extra=LAP_DIAMETERS.stated,
    )
    stock_length: Omissible[Interval] = Field(
        default=None,
        description="Length bars come in.",
        examples=[{"value": 20, "unit": "ft"}],
        json_schema_extra=STOCK_LENGTH.stated,
    )
    tie_size: Omissible[BarSize] = Field(
        default=None,
        description="Size of the ties.",
        examples=["no_3"],
        json_schema_extra=TIE_SIZE.stated,
    )
    tie_spacing: Omissible[Interval] = Field(
        default=None,
        description="Distance of the ties.",
        examples=[{"value": 1, "unit": "ft"}],
        json_schema_extra=TIE_SPACING.stated,
    )
    tie_hook_length: Omissible[Clearance] = Field(
        default=None,
        description="What each of the two hooks of a tie takes of its bar.",
        examples=[{"value": 4.25, "unit": "in"}],
        json_schema_extra=by_rule("that of a hook of 135 degrees of the size of the ties"),
    )
    edge_cover: Omissible[Clearance] = Field(
        default=None,
        description="Concrete outside the ties.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=EDGE_COVER.stated,
    )


class Cage(NamedTuple):
    """Concrete [m] that a cage takes between a face and the ducts: `ties` alone, and with `bars` inside them."""

    ties: float
    bars: float


class Bars(NamedTuple):
    """Bars of a pour: how many there are beside each other, sizes, diameters and lengths [m], counts, mass [kg], the
    distance of the ties, the concrete outside them, and what the cage takes outside the ducts [m].
    """

    bar_count: int
    diameter: float
    tie_diameter: float
    tie_spacing: Length
    edge: Length
    size: BarSize
    tie_size: BarSize
    lap: float
    longitudinal: float
    lap_count: int
    tie_count: int
    ties: float
    mass: float
    cage: float


class ReinforcingTakeoff(Struct, frozen=True, gc=False):
    """Bars of the envelope."""

    bar_count: Annotated[int, Meta(description="Longitudinal bars beside each other.")]
    bar_size: Annotated[BarSize, Meta(description="Their size.")]
    tie_size: Annotated[BarSize, Meta(description="Size of the ties.")]
    tie_spacing: Annotated[answers.Length, Meta(description="Distance of the ties.")]
    edge_cover: Annotated[answers.Length, Meta(description="Concrete outside the ties.")]
    longitudinal_length: Annotated[answers.Length, Meta(description="Longitudinal bars with their laps, together.")]
    lap_length: Annotated[answers.Length, Meta(description="Lap of two bars.")]
    lap_count: Annotated[int, Meta(description="Laps of all longitudinal bars.")]
    tie_count: Annotated[int, Meta(description="Ties along the pour.")]
    tie_length: Annotated[answers.Length, Meta(description="All ties together.")]
    mass: Annotated[answers.Mass, Meta(description="All bars together.")]
    least_concrete_cover: Annotated[
        answers.Length, Meta(description="Concrete outside the ducts that the cage takes: edge cover, tie and bar.")
    ]


def reinforce(given: Reinforcing, envelope: Envelope, length: float, sheet: Worksheet) -> Bars:
    """Count bars, laps and ties of a pour of a length [m]."""
    bar = _BARS[given.bar_size]
    sheet.cite(bar.source)
    lap = _lap(given, bar, sheet)
    stock = sheet.settle("stock_length", given.stock_length, STOCK_LENGTH).si
    tie_size = sheet.settle("tie_size", given.tie_size, TIE_SIZE)
    tie_bar, hook = _BARS[tie_size], sheet.settle("tie_hook_length", given.tie_hook_length, _HOOKS[tie_size]).si
    tie_spacing = sheet.settle("tie_spacing", given.tie_spacing, TIE_SPACING)
    edge_cover = sheet.settle("edge_cover", given.edge_cover, EDGE_COVER)
    edge = edge_cover.si
    if not under(lap, stock) or not under(2 * edge, min(envelope.width, envelope.height)):
        raise UnanswerableError(
            sheet.fault(
                "edge_cover" if under(lap, stock) else "lap_length",
                "does_not_fit",
                "The lap must be shorter than a bar, and the edge cover must leave room for the ties.",
            )
        )
    laps = max(0, round_up((length - lap) / (stock - lap)) - 1) * given.bar_count
    longitudinal = given.bar_count * length + laps * lap
    tie_count = stations_by_distance(length, tie_spacing.si, 0.0)
    ties = tie_count * 2 * (envelope.width + envelope.height - 4 * edge + hook)
    diameters = _diameter(bar), _diameter(tie_bar)
    ties_take = edge + diameters[1]
    cage = Cage(ties_take, ties_take + diameters[0])
    _judge_cage(cage, envelope, sheet)
    mass = longitudinal * _mass_per_metre(bar) + ties * _mass_per_metre(tie_bar)
    beside = given.bar_count, *diameters, tie_spacing, edge_cover
    return Bars(*beside, given.bar_size, tie_size, lap, longitudinal, laps, tie_count, ties, mass, cage.bars)


def told_bars(bars: Bars, tell: Telling) -> ReinforcingTakeoff:
    """Tell the bars of a pour."""
    return ReinforcingTakeoff(
        bar_count=bars.bar_count,
        bar_size=bars.size,
        tie_size=bars.tie_size,
        tie_spacing=tell.given(bars.tie_spacing),
        edge_cover=tell.given(bars.edge),
        longitudinal_length=tell.distance(bars.longitudinal),
        lap_length=tell.size(bars.lap),
        lap_count=bars.lap_count,
        tie_count=bars.tie_count,
        tie_length=tell.distance(bars.ties),
        mass=tell.mass(bars.mass),
        least_concrete_cover=tell.size(bars.cage),
    )


def _lap(given: Reinforcing, bar: ReinforcingBar, sheet: Worksheet) -> float:
    """Give the lap of two bars [m], by their diameter unless it is given."""
    if given.lap_length is not None:
        return given.lap_length.si
    ratio = sheet.settle("lap_diameter_ratio", given.lap_diameter_ratio, LAP_DIAMETERS)
    return ratio * _diameter(bar)


def _judge_cage(cage: Cage, envelope: Envelope, sheet: Worksheet) -> None:
    """Judge whether a cage fits between the faces of the concrete and the ducts."""
    if envelope.concrete is None:
        return
    if under(envelope.area, envelope.width * envelope.height):
        sheet.judge(None)
        sheet.find(
            Severity.CAUTION,
            "cage_not_judged",
            "The ties are counted around the bounding rectangle, and the pour steps with the tiers: shape them to its "
            "steps, or pour the rectangle. Whether the cage fits was not judged.",
            WORKED_OUT,
            member="",
        )
    beside = (envelope.width - envelope.bank.width) / 2  # against earth there may be more than was asked for
    sides = {"top": envelope.concrete.top, "bottom": envelope.concrete.bottom, "side": beside}
    tight = {name: cover for name, cover in sides.items() if under(cover, cage.bars)}
    if tight:
        _find_clash(cage, tight, sides, envelope, sheet)
    else:
        sheet.judge(True)


def _find_clash(
    cage: Cage, tight: dict[str, float], sides: dict[str, float], envelope: Envelope, sheet: Worksheet
) -> None:
    """Find where a cage clashes with the ducts, and the envelope that it needs.

    Ties run along every face; bars between them and the ducts may lie in the corners, where round ducts leave room.
    """
    tell, least = sheet.tell.size, min(tight.values())
    has, needs = apart(tell(least), tell(cage.bars))
    lacking = {name: max(0.0, cage.bars - cover) for name, cover in sides.items()}
    width = text_of(tell(envelope.width + 2 * lacking["side"]))
    height = text_of(tell(envelope.height + lacking["top"] + lacking["bottom"]))
    clashes, where = under(least, cage.ties), listing(list(tight))
    sheet.judge(False if clashes else None)
    what = "The cage clashes with the ducts" if clashes else "The ties fit, and bars only where no duct is beside them"
    sheet.find(
        Severity.VIOLATION if clashes else Severity.CAUTION,
        "cage_meets_ducts" if clashes else "bars_not_judged",
        f"{what} ({where}): edge cover, tie and bar take {needs}, and there are {has} of concrete, "
        f"{text_of(tell(cage.bars - least))} too little. With {needs} there, in an envelope of {width} by {height}, a "
        "bar fits anywhere.",
        WORKED_OUT,
        tell(least),
        tell(cage.bars),
        member="edge_cover",
    )


def _diameter(bar: ReinforcingBar) -> float:
    return Length.parse(bar.diameter_in, "in").si


def _mass_per_metre(bar: ReinforcingBar) -> float:
    return MassPerLength.parse(bar.mass_lb_per_ft, "lb/ft").si
