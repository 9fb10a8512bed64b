"""A bank in its trench, with what a crew digs by."""

from __future__ import annotations

from itertools import pairwise
from typing import NamedTuple

from ductrun.drawings.drafting import Label, beside, ground, height_at_left, room_for, upright, width_below
from ductrun.drawings.envelope_shapes import draw_envelope
from ductrun.drawings.figures import figure
from ductrun.drawings.steel import draw_steel
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing
from ductrun.engineering.bank import Envelope
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.reinforcing import Bars
from ductrun.subjects.ground.choices import PavementKind
from ductrun.subjects.ground.digging import Trench

_TALLEST = 330.0
_PAVED = {kind: kind.value for kind in PavementKind} | {PavementKind.CONCRETE: "concrete pavement"}


class Surface(NamedTuple):
    """Pavement over a trench: what it is made of, its thickness and the width of its cut [m]."""

    kind: str
    thickness: float
    cut: float


class Ground(NamedTuple):
    """A trench around an envelope [m]: width of its floor, depth to it, slope of its sides horizontal to 1, bedding on
    the floor, the warning tape below grade and the pavement, None without any.
    """

    width: float
    depth: float
    side_slope: float
    bedding: float
    tape_depth: float | None
    pavement: Surface | None = None


def ground_of(trench: Trench) -> Ground:
    """Give a trench as a drawing takes it."""
    paved = trench.pavement
    surface = None if paved is None else Surface(_PAVED[paved.kind], paved.thickness, paved.width)
    return Ground(trench.width, trench.depth, trench.side_slope, trench.bedding, trench.tape.depth, surface)


def draw_trench(
    drawing: Drawing, envelope: Envelope, trench: Ground, telling: Telling, bars: Bars | None = None
) -> None:
    """Draw the trench with the envelope in it, to scale, and what a crew digs by."""
    labels = _depths(envelope, trench, telling)
    top = trench.width + 2 * trench.side_slope * trench.depth
    left, right = MARGIN + 62.0, WIDTH - room_for([text for _, text, _ in labels])
    cut = top if trench.pavement is None else max(trench.pavement.cut, top)
    scale = min((right - left - 40.0) / cut, _TALLEST / trench.depth)
    middle, grade = (left + right) / 2, drawing.y + 12.0
    floor = grade + trench.depth * scale

    def at(height: float) -> float:
        return (trench.width / 2 + trench.side_slope * height) * scale

    low, high, bed = at(0.0), at(trench.depth), trench.bedding
    across = [(middle - high, grade), (middle - low, floor), (middle + low, floor), (middle + high, grade)]
    drawing.shape(across, "earth")
    if bed > 0.0:
        roof = floor - bed * scale
        layer = [(middle - low, floor), (middle + low, floor), (middle + at(bed), roof), (middle - at(bed), roof)]
        drawing.shape(layer, "sand", "soft", 0.7)
    draw_envelope(drawing, envelope, middle, floor - bed * scale, scale)
    if bars is not None:
        draw_steel(drawing, envelope, bars, middle, floor - bed * scale, scale)
    drawing.line(across, "ink", 1.4)
    edge = high if trench.pavement is None else cut * scale / 2
    ground(drawing, left - 4.0, middle - edge, grade)
    ground(drawing, middle + edge, right + 4.0, grade)
    if trench.pavement is not None:
        slab = trench.pavement.thickness * scale
        drawing.box(middle - edge, grade, 2 * edge, slab, "soft", "ink", 1.0)
    if trench.tape_depth is not None:
        tape = grade + trench.tape_depth * scale
        drawing.line([(middle - low * 0.7, tape), (middle + low * 0.7, tape)], "limit", 2.4, "5 3")
    upright(drawing, right + 8.0, [grade + depth * scale for depth in _levels(envelope, trench)], -8.0)
    told = [Label(grade + depth * scale, text, role) for depth, text, role in labels]
    end = beside(drawing, told, right + 8.0, right + 20.0, grade, floor)
    height_at_left(drawing, left - 8.0, grade, floor, figure(telling.size(trench.depth)))
    drawing.y = max(end, floor) + 2.0
    floor_text = figure(telling.size(trench.width))
    width_below(drawing, middle - low, middle + low, f"{'floor' if trench.side_slope else 'width'} {floor_text}")
    if trench.side_slope:
        width_below(drawing, middle - high, middle + high, f"at grade {figure(telling.size(top))}")
        drawing.note(f"Sides {trench.side_slope:g} to 1, level to upright.", "soft")


def _levels(envelope: Envelope, trench: Ground) -> list[float]:
    """Give the depths [m] between which cover, envelope and bedding lie."""
    cover = trench.depth - trench.bedding - envelope.height
    return [0.0, cover, cover + envelope.height, *([trench.depth] if trench.bedding > 0.0 else [])]


def _depths(envelope: Envelope, trench: Ground, telling: Telling) -> list[tuple[float, str, str]]:
    """Give what is to be said beside a trench: at which depth [m], the text and its role."""
    levels = _levels(envelope, trench)
    words = ["cover", "concrete" if envelope.concrete is not None else "ducts", "bedding"]
    said = [
        ((one + other) / 2, f"{word} {figure(telling.size(other - one))}", "ink")
        for (one, other), word in zip(pairwise(levels), words, strict=False)
    ]
    if trench.pavement is not None:
        paved = trench.pavement
        said.append((paved.thickness / 2, f"{paved.kind} {figure(telling.size(paved.thickness))}", "ink"))
    if trench.tape_depth is not None:
        said.append((trench.tape_depth, f"tape at {figure(telling.size(trench.tape_depth))}", "limit"))
    return said
