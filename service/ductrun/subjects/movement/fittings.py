"""Expansion fittings: how they are made, and where they stand along a run with what holds them."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import expansion as engineering
from ductrun.engineering.expansion import Piece
from ductrun.engineering.rounding import over
from ductrun.engineering.supports import sliding_positions
from ductrun.kit.defaults import quantity
from ductrun.kit.forms import FittingTravel, Form, Omissible, between
from ductrun.kit.worksheet import Worksheet
from ductrun.units import Length

FITTING_TRAVEL = quantity("expansion.fitting_travel", Length)
PISTON_ENGAGEMENT = quantity("expansion.piston_engagement", Length)
PISTON_CLEARANCE = quantity("supports.piston_clearance", Length)
_CLEARANCE = PISTON_CLEARANCE.value.si
MOST_FITTINGS = 2_000  # of one run: a bound of the answer, like those of the forms
MOST_FITTINGS_TOGETHER = 5_000  # of all runs of a request, or of a stretch
PistonEngagement = Annotated[Length, between(Length, 0, 12, "in")]


class FittingMade(Form):
    """How expansion fittings are made."""

    fitting_travel: Omissible[FittingTravel] = Field(
        default=None,
        description="Travel of one expansion fitting.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=FITTING_TRAVEL.stated,
    )
    piston_engagement: Omissible[PistonEngagement] = Field(
        default=None,
        description="Length of the piston that stays in the barrel when the fitting is fully open, with its coupling. "
        "A fitting fully open is as long as this and twice its travel.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=PISTON_ENGAGEMENT.stated,
    )


class Fitting(NamedTuple):
    """An expansion fitting, settled: how far from its fixed point it is clamped, and how far it reaches open [m]."""

    travel: Length
    engagement: Length
    clamp: float
    reach: float


class Layout(NamedTuple):
    """A run between two fixed points: one fitting in each of its equal pieces, and what holds it [m along the run].

    `clamps` are where the barrels are held, `reaches` where their open pistons end: no other strap stands between the
    two. `holding` are the straps that hold: those clamps, and the anchors at which no barrels stand back to back.
    """

    pieces: list[Piece]
    clamps: list[float]
    reaches: list[float]
    anchors: list[float]
    holding: list[float]

    def sliding(self, fitting: Fitting, spacing: float, end_distance: float) -> list[float]:
        """Give where the straps stand that let the run slide [m], in order."""
        clamp, reach = fitting.clamp, fitting.reach
        return sorted(
            [
                place
                for piece in self.pieces
                for place in sliding_positions(piece, clamp, reach, spacing, end_distance, _CLEARANCE)
            ]
        )


def fitting_of(given: FittingMade, sheet: Worksheet) -> Fitting:
    """Settle how the fittings are made."""
    travel = sheet.settle("fitting_travel", given.fitting_travel, FITTING_TRAVEL)
    engagement = sheet.settle("piston_engagement", given.piston_engagement, PISTON_ENGAGEMENT)
    return Fitting(
        travel,
        engagement,
        engineering.barrel_clamp(travel.si, engagement.si),
        engineering.piston_reach(travel.si, engagement.si),
    )


def most_laid_out(length: float, travel: Length | None, engagement: Length | None) -> float:
    """Bound how many fittings are placed along runs that are so long [m] together: none where they have no room."""
    reach = engineering.piston_reach(
        (travel or FITTING_TRAVEL.value).si, (PISTON_ENGAGEMENT.value if engagement is None else engagement).si
    )
    return min(length / reach, MOST_FITTINGS_TOGETHER) if reach > 0 else MOST_FITTINGS_TOGETHER


def lay_out(length: float, count: int, fitting: Fitting) -> Layout | None:
    """Place so many fittings along a run, None where the pieces are too short for them."""
    clamp, reach = fitting.clamp, fitting.reach
    if over(reach, length / count):
        return None
    pieces = engineering.pieces(length, count)
    anchors = engineering.anchor_positions(length, count)
    clamps = [piece.at(clamp) for piece in pieces]
    return Layout(pieces, clamps, [piece.at(reach) for piece in pieces], anchors, sorted(clamps + anchors[1::2]))
