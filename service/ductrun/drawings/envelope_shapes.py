"""Concrete and ducts as shapes, on a floor of the sheet."""

from __future__ import annotations

from ductrun.drawings.svg import Drawing
from ductrun.engineering.bank import Duct, Envelope
from ductrun.engineering.outline import slabs


def draw_envelope(
    drawing: Drawing, envelope: Envelope, middle: float, floor: float, scale: float
) -> tuple[float, float]:
    """Draw concrete and ducts on a floor; gives the middle of the bank's left edge and its bottom on the sheet."""
    bank, concrete = envelope.bank, envelope.concrete
    left = middle - bank.width * scale / 2
    bottom = floor - (concrete.bottom if concrete is not None else 0.0) * scale
    if concrete is not None:
        drawing.shape(_pour(envelope, middle, floor, scale), "concrete", "ink", 1.2)
        _speckle(drawing, envelope, (left, bottom), scale)
    for duct in bank.ducts:
        _draw_duct(drawing, duct, left, bottom, scale)
    return left, bottom


def _pour(envelope: Envelope, middle: float, floor: float, scale: float) -> list[tuple[float, float]]:
    """Give the outline of the concrete on the sheet."""
    if envelope.trench_formed:
        low, high, up = envelope.width / 2 * scale, envelope.top_width / 2 * scale, envelope.height * scale
        return [(middle - low, floor), (middle - high, floor - up), (middle + high, floor - up), (middle + low, floor)]
    left = middle - envelope.bank.width * scale / 2
    up_left, up_right = [], []
    for slab in slabs(envelope):
        low, high = floor - slab.low * scale, floor - slab.high * scale
        up_left += [(left + slab.left * scale, low), (left + slab.left * scale, high)]
        up_right += [(left + slab.right * scale, low), (left + slab.right * scale, high)]
    return up_left + up_right[::-1]


def _speckle(drawing: Drawing, envelope: Envelope, origin: tuple[float, float], scale: float) -> None:
    """Mark concrete as such, by small stones in its corners where there is room for them."""
    concrete, bank = envelope.concrete, envelope.bank
    if concrete is None or min(concrete) * scale < 7.0:
        return
    left, bottom = origin
    side, down = concrete.side * scale / 2, concrete.bottom * scale / 2
    width = bank.width * scale
    count = max(2, min(12, int(width / 30)))
    for index in range(count + 1):
        x, y = left - side + (width + 2 * side) * index / count, bottom + down + (1.2 if index % 2 else -1.2)
        drawing.shape([(x - 2.0, y + 1.5), (x + 2.0, y + 1.5), (x, y - 2.0)], "none", "soft", 0.7)


def _draw_duct(drawing: Drawing, duct: Duct, left: float, bottom: float, scale: float) -> None:
    """Draw a duct; one for signals has a second ring."""
    x, y, radius = left + duct.x * scale, bottom - duct.y * scale, duct.diameter / 2 * scale
    drawing.circle(x, y, radius, "paper", "ink", 1.3 if radius > 4.0 else 0.8)
    if duct.signal:
        drawing.circle(x, y, radius * 0.82, "none", "there", 1.2 if radius > 4.0 else 0.6)
