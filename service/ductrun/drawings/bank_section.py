"""The section of a duct bank in its concrete or bare, with its dimensions and duct names, and of its trench."""

from __future__ import annotations

from collections.abc import Mapping

from ductrun.drawings.bank_view import draw_bank, names_of
from ductrun.drawings.drafting import LINE
from ductrun.drawings.figures import figure
from ductrun.drawings.steel import can_be_drawn, steel_words
from ductrun.drawings.svg import MARGIN, Drawing
from ductrun.drawings.trench_view import Ground, draw_trench
from ductrun.engineering.bank import Bank, Envelope
from ductrun.engineering.outline import stepped
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.reinforcing import Bars


def bank_section(
    envelope: Envelope,
    telling: Telling,
    trench: Ground | None = None,
    *,
    name: str = "Duct bank",
    circuits: Mapping[str, str] | None = None,
    bars: Bars | None = None,
    deepest: bool = False,
    to_scale: bool = True,
) -> str:
    """Draw the section of a bank, below that of its trench where it lies in one.

    `circuits` are the names of circuits by the names of their ducts, `bars` the steel in the concrete. A trench
    drawn where it is `deepest` says so, and a bank whose sizes are not known, which is drawn without dimensions.
    """
    drawing = Drawing()
    drawing.heading(f"{name}: section")
    over_concrete = "; cover is over the concrete" if trench is not None and envelope.concrete is not None else ""
    drawing.note(f"Looking from start to end{', where it is deepest' if deepest else ''}{over_concrete}.", "soft")
    if trench is not None:
        draw_trench(drawing, envelope, trench, telling, bars)
        drawing.y += 6.0
    draw_bank(drawing, envelope, telling, frozenset(circuits or ()), bars, to_scale=to_scale)
    drawing.y += 4.0
    _draw_legend(drawing, envelope.bank, circuits or {})
    words = _in_words(envelope, telling, trench, to_scale=to_scale)
    if bars is not None:
        steel = _steel(envelope, bars, telling)
        drawing.note(steel)
        words = f"{words} {steel}"
    if not to_scale:
        drawing.note("Not to scale.", "soft")
    return drawing.written(f"{name}: section", words)


def _draw_legend(drawing: Drawing, bank: Bank, circuits: Mapping[str, str]) -> None:
    drawing.note("Ducts are named tier-position: tier 1 is the bottom, position 1 the left.", "soft")
    if any(duct.signal for duct in bank.ducts):
        drawing.y += LINE
        drawing.circle(MARGIN + 7.0, drawing.y - 1.0, 6.0, "paper", "ink", 1.2)
        drawing.circle(MARGIN + 7.0, drawing.y - 1.0, 4.6, "none", "there", 1.2)
        drawing.text(MARGIN + 20.0, drawing.y + 3.0, "two rings: a signal duct")
        drawing.y += 5.0
    by_circuit: dict[str, list[str]] = {}
    for duct, circuit in circuits.items():
        by_circuit.setdefault(circuit, []).append(duct)
    for circuit, ducts in by_circuit.items():
        drawing.note(f"{', '.join(ducts)}: {circuit}")


def _steel(envelope: Envelope, bars: Bars, telling: Telling) -> str:
    drawn = "shown evenly apart" if can_be_drawn(envelope) else "not drawn, for the concrete steps with the tiers"
    return f"Steel, {drawn}: {steel_words(bars, telling)}."


def _in_words(envelope: Envelope, telling: Telling, trench: Ground | None, *, to_scale: bool) -> str:
    """Say what the section shows."""
    bank, size = envelope.bank, telling.size
    tiers = ", ".join([str(count) for count in bank.counts])
    words = [f"{len(bank.ducts)} ducts in {len(bank.counts)} tiers, from the bottom up: {tiers}."]
    if len(bank.ducts) == 1:
        words = ["One duct."]
    signals = [name for name, duct in zip(names_of(bank), bank.ducts, strict=True) if duct.signal]
    if signals:
        words.append(f"Signal ducts: {', '.join(signals)}.")
    if to_scale:
        what = "Buried directly, the ducts are" if envelope.concrete is None else "The concrete is"
        steps = ", stepped with the tiers" if stepped(envelope) else ""
        words.append(f"{what} {figure(size(envelope.width))} wide and {figure(size(envelope.height))} high{steps}.")
    if trench is not None:
        cover = trench.depth - trench.bedding - envelope.height
        words.append(
            f"The trench is {figure(size(trench.width))} wide at its floor and {figure(size(trench.depth))} "
            f"deep, with {figure(size(cover))} of cover and {figure(size(trench.bedding))} of bedding."
        )
        if trench.side_slope:
            words.append(f"Its sides lean {trench.side_slope:g} to 1.")
        if trench.pavement is not None:
            paved = trench.pavement
            words.append(
                f"{figure(size(paved.thickness))} of {paved.kind} lie over it, cut {figure(size(paved.cut))} wide."
            )
        if trench.tape_depth is not None:
            words.append(f"A warning tape lies {figure(size(trench.tape_depth))} below grade.")
    return " ".join(words)
