"""A bank as large as the sheet holds it, with the names of its ducts and its dimensions.

A duct is named by its tier, from 1 at the bottom, and its position, from 1 at the left, looking from start to end.
"""

from __future__ import annotations

from collections.abc import Collection
from itertools import pairwise

from ductrun.drawings.drafting import (
    Label,
    beside,
    height_at_left,
    letters_within,
    room_for,
    upright,
    width_below,
)
from ductrun.drawings.envelope_shapes import draw_envelope
from ductrun.drawings.figures import figure
from ductrun.drawings.steel import draw_steel
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, text_width
from ductrun.engineering.bank import Bank, Envelope
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.reinforcing import Bars

_TALLEST, _TALLEST_WITHOUT_SCALE = 330.0, 150.0
_ALIKE = 1e-6  # m


def names_of(bank: Bank) -> list[str]:
    """Give the name of every duct, in the order of the bank: its tier and its position."""
    names = []
    tier, position = -1, 0
    for duct in bank.ducts:
        position = position + 1 if duct.tier == tier else 1
        tier = duct.tier
        names.append(f"{tier + 1}-{position}")
    return names


def draw_bank(
    drawing: Drawing,
    envelope: Envelope,
    telling: Telling,
    circuits: Collection[str],
    bars: Bars | None = None,
    *,
    to_scale: bool,
) -> None:
    """Draw the bank in its concrete as large as it can be, with names and steel and, to scale, its dimensions."""
    bank = envelope.bank
    names = names_of(bank)
    longest = max(names, key=len)
    widest, least = max(envelope.width, envelope.top_width), min([duct.diameter for duct in bank.ducts])
    heights = _heights(envelope, telling) if to_scale else []
    left, right = MARGIN + 62.0, WIDTH - (room_for([text for _, text in heights]) if to_scale else 2 * MARGIN)
    tallest = _TALLEST if to_scale else _TALLEST_WITHOUT_SCALE
    scale = min((right - left) / widest, tallest / envelope.height)
    letters = letters_within(longest, least * scale * 0.72)
    if not letters:
        left = MARGIN + 94.0
        scale = min((right - left) / widest, tallest / envelope.height)
    middle, roof = (left + right) / 2, drawing.y + 8.0
    floor = roof + envelope.height * scale
    at = draw_envelope(drawing, envelope, middle, floor, scale)
    if bars is not None:
        draw_steel(drawing, envelope, bars, middle, floor, scale)
    end = floor
    if letters:
        _name_ducts(drawing, bank, names, circuits, (*at, scale), letters)
        if to_scale:
            height_at_left(
                drawing, middle - widest * scale / 2 - 8.0, roof, floor, figure(telling.size(envelope.height))
            )
    else:
        end = _name_tiers(drawing, bank, (at[1], scale), (middle - widest * scale / 2 - 2.0, left, roof, floor))
    if to_scale:
        upright(drawing, right + 8.0, _ticks(envelope, at[1], scale))
        labels = [Label(at[1] - height * scale, text) for height, text in heights]
        end = max(end, beside(drawing, labels, right + 8.0, right + 20.0, roof, floor))
    drawing.y = end + 2.0
    if to_scale:
        _label_widths(drawing, envelope, telling, (middle, at[0], scale), with_height=not letters)


def _name_ducts(
    drawing: Drawing,
    bank: Bank,
    names: list[str],
    circuits: Collection[str],
    at: tuple[float, float, float],
    letters: float,
) -> None:
    left, bottom, scale = at
    for duct, name in zip(bank.ducts, names, strict=True):
        x, y = left + duct.x * scale, bottom - duct.y * scale
        drawing.text(x, y + letters * 0.36, name, letters, "middle", bold=False)
        if name in circuits:
            half = text_width(name, letters) / 2
            drawing.line([(x - half, y + letters * 0.36 + 2.5), (x + half, y + letters * 0.36 + 2.5)], "ink", 1.4)


def _name_tiers(
    drawing: Drawing, bank: Bank, at: tuple[float, float], around: tuple[float, float, float, float]
) -> float:
    """Name the ducts of each tier beside it, where they are drawn too small to hold their names."""
    bottom, scale = at
    edge, left, roof, floor = around
    labels = []
    for tier, count in enumerate(bank.counts):
        y = bottom - (bank.tier_bottoms[tier] + bank.tier_tops[tier]) / 2 * scale
        labels.append(Label(y, f"{tier + 1}-1" if count == 1 else f"{tier + 1}-1 to {tier + 1}-{count}"))
    return beside(drawing, labels, edge, left - 14.0, roof, floor)


def _ticks(envelope: Envelope, bottom: float, scale: float) -> list[float]:
    """Give where the dimension line of a bank has its ticks on the sheet."""
    bank, concrete = envelope.bank, envelope.concrete
    edges = {0.0, bank.height, *bank.tier_bottoms, *bank.tier_tops}
    if concrete is not None:
        edges |= {-concrete.bottom, bank.height + concrete.top}
    heights = sorted([bottom - edge * scale for edge in edges])
    return heights[:1] + [other for one, other in pairwise(heights) if other - one > 0.5]


def _heights(envelope: Envelope, telling: Telling) -> list[tuple[float, str]]:
    """Give what stands above each other in a bank: at which height [m], and the text; each figure is said once."""
    bank, concrete = envelope.bank, envelope.concrete
    parts: list[tuple[float, float, str]] = []
    for tier, (low, high) in enumerate(zip(bank.tier_bottoms, bank.tier_tops, strict=True)):
        if tier:
            parts.append((bank.tier_tops[tier - 1], low, "clear"))
        parts.append((low, high, "duct"))
    if concrete is not None:
        parts += [(-concrete.bottom, 0.0, "below"), (bank.height, bank.height + concrete.top, "above")]
    said: dict[str, float] = {}
    for low, high, words in parts:
        if high - low > _ALIKE:
            said.setdefault(f"{figure(telling.size(high - low))} {words}", (low + high) / 2)
    return [(height, text) for text, height in said.items()]


def _label_widths(
    drawing: Drawing, envelope: Envelope, telling: Telling, at: tuple[float, float, float], *, with_height: bool
) -> None:
    """Draw the dimension lines of what lies beside each other, one below the other."""
    middle, left, scale = at
    bank, size = envelope.bank, telling.size
    seen: set[str] = set()
    for one, other in pairwise(bank.ducts):
        clear = other.x - one.x - (one.diameter + other.diameter) / 2
        text = f"{figure(size(clear))} clear"
        if one.tier == other.tier and clear > _ALIKE and text not in seen and len(seen) < 4:
            seen.add(text)
            start = left + (one.x + one.diameter / 2) * scale
            width_below(drawing, start, start + clear * scale, text)
    wide = envelope.width * scale / 2
    beside_ducts = (envelope.width - bank.width) / 2
    if envelope.concrete is not None and beside_ducts > _ALIKE:
        text = f"{figure(size(beside_ducts))} beside"
        width_below(drawing, middle - wide, middle - wide + beside_ducts * scale, text)
    width_below(drawing, middle - wide, middle + wide, f"width {figure(size(envelope.width))}")
    if with_height:
        drawing.note(f"Height {figure(size(envelope.height))}.")
