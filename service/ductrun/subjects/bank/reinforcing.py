"""Bars in a concrete envelope."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import round_up, under
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit import answers
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, number, quantity
from ductrun.kit.forms import Clearance, Form, Interval, Omissible
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart
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
    edge_cover: Omissible[Clearance] = Field(
        default=None,
        description="Concrete outside the ties.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=EDGE_COVER.stated,
    )


class Bars(NamedTuple):
    """Bars of a pour: lengths [m], counts, mass [kg]."""

    lap: float
    longitudinal: float
    lap_count: int
    tie_count: int
    ties: float
    mass: float


class ReinforcingTakeoff(Struct, frozen=True, gc=False):
    """Bars of the envelope."""

    longitudinal_length: Annotated[answers.Length, Meta(description="Longitudinal bars with their laps, together.")]
    lap_length: Annotated[answers.Length, Meta(description="Lap of two bars.")]
    lap_count: Annotated[int, Meta(description="Laps of all longitudinal bars.")]
    tie_count: Annotated[int, Meta(description="Ties along the pour.")]
    tie_length: Annotated[answers.Length, Meta(description="All ties together.")]
    mass: Annotated[answers.Mass, Meta(description="All bars together.")]


def reinforce(given: Reinforcing, envelope: Envelope, length: float, sheet: Worksheet) -> Bars:
    """Count bars, laps and ties of a pour of a length [m]."""
    bar = _BARS[given.bar_size]
    sheet.cite(bar.source)
    lap = _lap(given, bar, sheet)
    stock = sheet.settle("stock_length", given.stock_length, STOCK_LENGTH).si
    tie_bar = _BARS[sheet.settle("tie_size", given.tie_size, TIE_SIZE)]
    tie_spacing = sheet.settle("tie_spacing", given.tie_spacing, TIE_SPACING).si
    edge = sheet.settle("edge_cover", given.edge_cover, EDGE_COVER).si
    if not under(lap, stock) or not under(2 * edge, min(envelope.width, envelope.height)):
        raise UnanswerableError(
            sheet.fault(
                "edge_cover" if under(lap, stock) else "lap_length",
                "does_not_fit",
                "The lap must be shorter than a bar, and the edge cover must leave room for the ties.",
            )
        )
    _find_clash(edge, tie_bar, bar, envelope, sheet)
    laps = max(0, round_up((length - lap) / (stock - lap)) - 1) * given.bar_count
    longitudinal = given.bar_count * length + laps * lap
    tie_count = stations_by_distance(length, tie_spacing, 0.0)
    ties = tie_count * 2 * (envelope.width + envelope.height - 4 * edge)
    mass = longitudinal * _mass_per_metre(bar) + ties * _mass_per_metre(tie_bar)
    return Bars(lap, longitudinal, laps, tie_count, ties, mass)


def _find_clash(
    edge: float, tie_bar: ReinforcingBar, bar: ReinforcingBar, envelope: Envelope, sheet: Worksheet
) -> None:
    """Caution where ties and bars reach as far into the concrete [m] as the ducts lie."""
    concrete, bank = envelope.concrete, envelope.bank
    if concrete is None:
        return
    reach = edge + sum(Length.parse(one.diameter_in, "in").si for one in (tie_bar, bar))
    room = min(concrete.top, concrete.bottom, (envelope.width - bank.width) / 2)
    if under(room, reach):
        told, least = sheet.tell.size(room), sheet.tell.size(reach)
        has, needs = apart(told, least)
        sheet.find(
            Severity.CAUTION,
            "cage_meets_ducts",
            f"Ties and bars reach {needs} into the concrete, and the ducts begin at {has}: the cage does not fit. Give "
            f"at least {needs} of concrete around the ducts, or less edge cover.",
            WORKED_OUT,
            told,
            least,
            member="edge_cover",
        )


def told_bars(bars: Bars, tell: Telling) -> ReinforcingTakeoff:
    """Tell the bars of a pour."""
    return ReinforcingTakeoff(
        longitudinal_length=tell.distance(bars.longitudinal),
        lap_length=tell.size(bars.lap),
        lap_count=bars.lap_count,
        tie_count=bars.tie_count,
        tie_length=tell.distance(bars.ties),
        mass=tell.mass(bars.mass),
    )


def _lap(given: Reinforcing, bar: ReinforcingBar, sheet: Worksheet) -> float:
    """Give the lap of two bars [m], by their diameter unless it is given."""
    if given.lap_length is not None:
        return given.lap_length.si
    ratio = sheet.settle("lap_diameter_ratio", given.lap_diameter_ratio, LAP_DIAMETERS)
    return ratio * Length.parse(bar.diameter_in, "in").si


def _mass_per_metre(bar: ReinforcingBar) -> float:
    return MassPerLength.parse(bar.mass_lb_per_ft, "lb/ft").si
