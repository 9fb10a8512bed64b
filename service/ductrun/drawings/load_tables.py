"""Loads, boxes and earth of a run as tables: what circuits may carry and lose, how large boxes are, what ducts bear."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from msgspec import UNSET

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.naming import sized_words
from ductrun.drawings.readable import quantity_text, words_of
from ductrun.kit.choices import Verdict
from ductrun.subjects.duct_run.told import DuctRunResult, RunStop
from ductrun.subjects.duct_run.told_circuits import RunCircuit
from ductrun.subjects.duct_run.told_stretches import RunStretch
from ductrun.subjects.ground.earth_load_told import TierInPour, TierUnderLoad

Write = Callable[[Any, str], str]


def load_tables(result: DuctRunResult, write: Write) -> Markup:
    """Give the tables of what was asked of loads, boxes and earth; `write` writes a member of a told record."""
    return joined(
        [
            _ampacity(result.stretches, write),
            _drop(result.circuits, write),
            _boxes(result.stops, write),
            _earth(result.stretches, write),
        ]
    )


def _titled(title: str, header: Sequence[str], rows: Sequence[tuple[str, ...]], figures: Sequence[int] = ()) -> Markup:
    return joined([element("h2", title), table(header, rows, kind="dense", figures=figures)]) if rows else NOTHING


def _ampacity(stretches: Sequence[RunStretch], write: Write) -> Markup:
    members = ("current", "ampacity", "conductor_temperature", "temperature_limit", "terminal_ampacity", "verdict")
    rows = [
        (stretch.name, write(circuit, "name"), ", ".join(circuit.ducts), *[write(circuit, one) for one in members])
        for stretch in stretches
        if stretch.ampacity is not UNSET
        for circuit in stretch.ampacity.circuits
    ]
    header = (
        "Stretch",
        "Circuit",
        "Ducts",
        "Carries",
        "May carry",
        "Conductor",
        "Limit",
        "Terminals",
        "Verdict",
    )
    return _titled("Ampacity", header, rows)


def _drop(circuits: Sequence[RunCircuit], write: Write) -> Markup:
    members = ("current", "drop", "drop_percent", "limit_percent", "load_voltage", "smallest_size", "longest_length")
    rows = [
        (circuit.name, write(circuit, "length"), *[write(circuit.voltage_drop, one) for one in members])
        for circuit in circuits
        if circuit.voltage_drop is not UNSET
    ]
    header = ("Circuit", "Length", "Carries", "Drop", "Of the source", "Limit", "At the load", "Least size", "Longest")
    return _titled("Voltage drop", header, rows)


def _boxes(stops: Sequence[RunStop], write: Write) -> Markup:
    rows = [
        (stop.name, words_of(stop.kind), name, write(least, "least"), words_of(str(least.rule)), least.citation)
        for stop in stops
        if stop.box is not UNSET
        for name, least in (
            ("length", stop.box.least_length),
            ("width", stop.box.least_width),
            ("depth", stop.box.least_depth),
        )
        if least is not UNSET
    ]
    return _titled("Boxes", ("Stop", "What stands there", "Dimension", "Least", "Decided by", "Rule"), rows)


def _earth(stretches: Sequence[RunStretch], write: Write) -> Markup:
    members = ("cover", "earth_pressure", "live_pressure", "deflection_percent", "wall_stress", "least_bore")
    in_concrete = ("head", "pressure", "allowable_pressure")
    rows, poured = [], []
    for stretch in stretches:
        for load in [] if stretch.earth_loads is UNSET else stretch.earth_loads:
            for tier in load.tiers:
                figures = [write(tier, one) for one in members]
                rows.append((stretch.name, str(tier.tier), _ducts(tier), *figures, _judged(tier, write)))
            poured += [
                (
                    stretch.name,
                    str(tier.tier),
                    _ducts(tier),
                    *[write(tier, one) for one in in_concrete],
                )
                for tier in load.tiers_in_pour
            ]
    header = ("Stretch", "Tier", "Ducts", "Cover", "Earth", "Traffic", "Deflection", "Wall", "Bore left", "Verdict")
    in_pour = ("Stretch", "Tier", "Ducts", "Head", "Pressure", "Bears")
    return joined(
        [
            _titled("Earth and traffic", header, rows, range(3, 9)),
            _titled("Ducts in wet concrete", in_pour, list(dict.fromkeys(poured)), range(3, 6)),
        ]
    )


def _judged(tier: TierUnderLoad, write: Write) -> str:
    """Say that ducts comply in every way, or in which they do not, or were not judged."""
    verdicts = {way: words_of(write(tier, f"{way}_verdict")) for way in ("deflection", "wall", "buckling")}
    if len(set(verdicts.values())) == 1:
        return verdicts["wall"]
    return "; ".join(f"{way} {told}" for way, told in verdicts.items() if told and told != words_of(Verdict.COMPLIES))


def _ducts(tier: TierUnderLoad | TierInPour) -> str:
    """Call the like ducts of a tier, so that those of another kind in it are told from them."""
    outside = f"{quantity_text(tier.outside_diameter)} outside"
    if tier.conduit_type is UNSET or tier.trade_size is UNSET:
        return outside
    return f"{sized_words(tier.conduit_type, tier.trade_size)}, {outside}"
