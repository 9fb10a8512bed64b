"""Bars in a concrete envelope and color in its mix."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import round_up
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, number, quantity
from ductrun.kit.forms import Clearance, Form, Interval, Omissible
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import BarSize
from ductrun.tables import TABLES
from ductrun.tables.ground_rows import ReinforcingBar
from ductrun.units import Density, Length, MassPerLength

CEMENT_CONTENT = quantity("encasement.cement_content", Density)
LAP_DIAMETERS = number("reinforcing.lap_diameters")
STOCK_LENGTH = quantity("reinforcing.stock_length", Length)
TIE_SIZE = choice("reinforcing.tie_size", BarSize)
TIE_SPACING = quantity("reinforcing.tie_spacing", Length)
EDGE_COVER = quantity("reinforcing.cover", Length)
PIGMENT_MOST, PIGMENT_LEAST = 10, 1  # percent of cement: the cap of ASTM C979, and where color looks washed out
_BARS: dict[str, ReinforcingBar] = {row.bar: row for row in TABLES["reinforcing_bars"]}


class Reinforcing(Form):
    """Longitudinal bars and ties."""

    bar_count: Annotated[int, Field(ge=1, le=100)] = Field(description="Longitudinal bars.", examples=[4])
    bar_size: BarSize = Field(description="Size of the longitudinal bars.", examples=["no_4"])
    lap_length: Omissible[Clearance] = Field(
        default=None, description="Lap of two bars.", examples=[{"value": 20, "unit": "in"}]
    )
    stock_length: Omissible[Interval] = Field(
        default=None, description="Length bars come in.", examples=[{"value": 20, "unit": "ft"}]
    )
    tie_size: Omissible[BarSize] = Field(default=None, description="Size of the ties.", examples=["no_3"])
    tie_spacing: Omissible[Interval] = Field(
        default=None, description="Distance of the ties.", examples=[{"value": 1, "unit": "ft"}]
    )
    edge_cover: Omissible[Clearance] = Field(
        default=None, description="Concrete outside the ties.", examples=[{"value": 3, "unit": "in"}]
    )


class ReinforcingTakeoff(Struct, frozen=True, gc=False):
    """Bars of the envelope."""

    longitudinal_length: Annotated[answers.Length, Meta(description="Longitudinal bars with their laps, together.")]
    lap_count: Annotated[int, Meta(description="Laps of all longitudinal bars.")]
    tie_count: Annotated[int, Meta(description="Ties along the pour.")]
    tie_length: Annotated[answers.Length, Meta(description="All ties together.")]
    mass: Annotated[answers.Mass, Meta(description="All bars together.")]


def pigment_mass(
    percent: float | None, cement_content: Density | None, net: float, sheet: Worksheet
) -> answers.Mass | UnsetType:
    """Give the color for the mix; the dose is on the mass of cement."""
    if percent is None:
        return UNSET
    cement = sheet.settle("#/cement_content", cement_content, CEMENT_CONTENT).si
    if percent > PIGMENT_MOST or 0 < percent < PIGMENT_LEAST:
        over = percent > PIGMENT_MOST
        sheet.find(
            Severity.VIOLATION if over else Severity.CAUTION,
            "pigment_dose",
            f"A dose of {percent:g} percent of cement is over the {PIGMENT_MOST} percent of ASTM C979."
            if over
            else f"A dose of {percent:g} percent of cement looks washed out: take {PIGMENT_LEAST} or more.",
            "ASTM C979",
            percent,
            float(PIGMENT_MOST if over else PIGMENT_LEAST),
        )
    return sheet.tell.mass(net * cement * percent / 100)


def reinforcing_takeoff(
    given: Reinforcing | None, length: float, width: float, height: float, sheet: Worksheet
) -> ReinforcingTakeoff | UnsetType:
    """Count bars, laps and ties."""
    if given is None:
        return UNSET
    bar = _BARS[given.bar_size]
    diameter = Length.parse(bar.diameter_in, "in").si
    sheet.cite(bar.source)
    if given.lap_length is None:
        lap = LAP_DIAMETERS.value * diameter
        source = f"{LAP_DIAMETERS.value:g} bar diameters: {LAP_DIAMETERS.source}"
        sheet.assume("#/reinforcing/lap_length", sheet.tell.size(lap), source, LAP_DIAMETERS.source_id)
    else:
        lap = given.lap_length.si
    stock = sheet.settle("#/reinforcing/stock_length", given.stock_length, STOCK_LENGTH).si
    tie_bar = _BARS[sheet.settle("#/reinforcing/tie_size", given.tie_size, TIE_SIZE)]
    tie_spacing = sheet.settle("#/reinforcing/tie_spacing", given.tie_spacing, TIE_SPACING).si
    edge = sheet.settle("#/reinforcing/edge_cover", given.edge_cover, EDGE_COVER).si
    if lap >= stock or 2 * edge >= min(width, height):
        raise UnanswerableError(
            Fault(
                "#/reinforcing/lap_length" if lap >= stock else "#/reinforcing/edge_cover",
                "does_not_fit",
                "The lap must be shorter than a bar, and the edge cover must leave room for the ties.",
            )
        )
    laps = max(0, round_up((length - lap) / (stock - lap)) - 1) * given.bar_count
    longitudinal = given.bar_count * length + laps * lap
    ties = stations_by_distance(length, tie_spacing, 0.0)
    tie_length = ties * 2 * (width + height - 4 * edge)
    mass = longitudinal * _mass_per_metre(bar) + tie_length * _mass_per_metre(tie_bar)
    tell = sheet.tell
    return ReinforcingTakeoff(tell.distance(longitudinal), laps, ties, tell.distance(tie_length), tell.mass(mass))


def _mass_per_metre(bar: ReinforcingBar) -> float:
    return MassPerLength.parse(bar.mass_lb_per_ft, "lb/ft").si
