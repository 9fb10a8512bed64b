"""Inputs of drawings made at random, as far as the forms of requests let them go."""

from __future__ import annotations

import json
import math
from typing import Any

from ductrun.drawings.alignment import PullPoint, RouteSection, Turn
from ductrun.drawings.conduit_section import Conductors, Figures
from ductrun.drawings.trench_view import Ground, Surface
from ductrun.drawings.wall import Run, Travel
from ductrun.engineering.bank import Alignment, Bank, Concrete, Envelope, Tier, bare, encased, place, trench_formed
from ductrun.engineering.pulling import HorizontalBend, Straight, VerticalBend
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import METRIC, US, Telling
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects import OPERATIONS
from ductrun.subjects.movement.fittings import Fitting, lay_out
from ductrun.units import AnyQuantity, Length, LengthUnit
from hypothesis import strategies as st

INCH = 0.0254
TELLINGS = st.sampled_from([US, METRIC])
TURNS: st.SearchStrategy[Turn | None] = st.sampled_from(["left", "right", None])
NAMES = st.text(min_size=1, max_size=80)
_BY_NAME = {operation.name: operation for operation in OPERATIONS}


def assessed(operation: str, telling: Telling = US, **members: Any) -> Any:
    """Assess the example of an operation, some of its members replaced."""
    return assessed_of(operation, {**_BY_NAME[operation].example, **members}, telling)


def assessed_of(operation: str, request: dict[str, Any], telling: Telling = US) -> Any:
    """Assess a request."""
    one = _BY_NAME[operation]
    body = json.dumps(request).encode()
    return one.assess(reader_of(one.request)(body), Worksheet(telling))


def inches(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high).map(lambda value: round(value, 3) * INCH)


def bank(*tiers: int, diameter: float = 4.5, signal: int = 0) -> Bank:
    """Place a bank of ducts 2 in apart, 4 in between power and signal; the last of the top tier are signal ducts."""
    placed = [Tier((diameter * INCH,) * ducts) for ducts in tiers]
    placed[-1] = placed[-1]._replace(signal=signal)
    return place(placed, 2 * INCH, 2 * INCH, 4 * INCH, Alignment.CENTERED, center_to_center=False)


@st.composite
def envelopes(draw: st.DrawFn) -> Envelope:
    tiers = draw(st.lists(st.integers(1, 40), min_size=1, max_size=30))
    size = st.sampled_from([0.84, 2.375, 4.5, 6.625, 12.75])
    alike = draw(st.booleans())
    diameter = draw(size)
    rows = []
    for ducts in tiers:
        signal = draw(st.integers(0, ducts)) if draw(st.integers(0, 5)) == 0 else 0
        rows.append(Tier(((diameter if alike else draw(size)) * INCH,) * ducts, signal))
    across, between, mixed = (draw(inches(0.0, 12.0)) for _ in range(3))
    placed = place(rows, across, between, mixed, draw(st.sampled_from(list(Alignment))), center_to_center=False)
    shape = draw(st.sampled_from(["bare", "formed", "stepped", "trench"]))
    concrete = Concrete(*[draw(inches(0.0, 24.0)) for _ in range(3)])
    if shape == "bare":
        return bare(placed)
    if shape == "trench":
        wide = placed.width + 2 * concrete.side + draw(inches(0.0, 40.0))
        return trench_formed(placed, concrete, wide, draw(st.sampled_from([0.0, 0.5, 1.5, 4.0])))
    return encased(placed, concrete, stepped=shape == "stepped")


@st.composite
def trenches(draw: st.DrawFn, envelope: Envelope) -> Ground:
    bedding = draw(st.sampled_from([0.0, 3 * INCH, 12 * INCH]))
    slope = envelope.side_slope if envelope.trench_formed else draw(st.sampled_from([0.0, 0.5, 1.5, 4.0]))
    width = envelope.width - 2 * slope * bedding if envelope.trench_formed else envelope.width + draw(inches(0, 60))
    cover = draw(inches(0.0, 400.0))
    tape = draw(st.sampled_from([None, 6 * INCH, 12 * INCH]))
    depth = cover + envelope.height + bedding
    paved = None
    if cover > INCH and draw(st.booleans()):
        cut = max(width, INCH) + 2 * slope * depth + draw(inches(0.0, 36.0))
        paved = Surface(draw(st.sampled_from(["asphalt", "concrete pavement"])), cover * draw(st.floats(0.1, 1.0)), cut)
    return Ground(max(width, INCH), depth, slope, bedding, tape, paved)


@st.composite
def conductors(draw: st.DrawFn) -> tuple[float, list[Conductors], Figures]:
    bore = draw(inches(0.3, 8.0))
    lines = [
        Conductors(draw(NAMES), draw(st.integers(1, 40)), bore * draw(st.floats(0.02, 1.0)))
        for _ in range(draw(st.integers(1, 8)))
    ]
    percent = 100 * sum(line.number * (line.diameter / bore) ** 2 for line in lines)
    limit = draw(st.sampled_from([31.0, 40.0, 53.0, 60.0]))
    jam = draw(st.none() | st.floats(1.0, 9.0))
    return (
        bore,
        lines,
        Figures(percent, limit, "More than two conductors or cables: 40 percent.", percent <= limit, jam),
    )


@st.composite
def route_sections(draw: st.DrawFn) -> list[RouteSection]:
    found = []
    for _ in range(draw(st.integers(1, 40))):
        kind = draw(st.sampled_from(["straight", "level", "vertical"]))
        radius = draw(st.floats(0.1, 60.0))
        if kind == "straight":
            found.append(
                RouteSection(Straight(draw(st.floats(0.1, 400.0)), draw(st.floats(-math.pi / 2, math.pi / 2))))
            )
        elif kind == "level":
            turn = draw(TURNS)
            found.append(
                RouteSection(HorizontalBend(radius, draw(st.floats(0.02, math.pi))), turn, draw(st.just("") | NAMES))
            )
        else:
            found.append(RouteSection(VerticalBend(radius, draw(st.floats(-1.5, 0.0)), draw(st.floats(0.1, 1.5)))))
    return found


@st.composite
def pull_points(draw: st.DrawFn, sections: list[RouteSection]) -> list[PullPoint]:
    places = draw(st.sets(st.integers(1, len(sections)), max_size=8))
    turn = st.none() | st.floats(-math.pi, math.pi)
    return [PullPoint(place, draw(st.just("") | NAMES), draw(turn)) for place in sorted(places)]


@st.composite
def runs(draw: st.DrawFn) -> tuple[Run, Travel]:
    length = draw(st.floats(0.5, 3000.0))
    travel = draw(inches(2.0, 12.0))
    fitting = Fitting(
        Length(travel / INCH, LengthUnit.INCH),
        Length(6.0, LengthUnit.INCH),
        travel / 2 + 3 * INCH,
        2 * travel + 6 * INCH,
    )
    needs = draw(st.integers(0, 60))
    layout = lay_out(length, needs, fitting) if needs else None
    goes_on = layout is None and draw(st.booleans())
    sliding = [] if layout is None else layout.sliding(fitting, 2.5, 0.9)
    openings = [(AnyQuantity(value, "degF"), travel / 3) for value in range(draw(st.integers(0, 30)))]
    run = Run(length, layout, needs, sliding, [] if layout is None else layout.holding, goes_on)
    return run, Travel(draw(st.floats(0.0, 2.0)), travel if needs else None, openings)
