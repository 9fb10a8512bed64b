"""Circuits and their pulls as tables: fill in every conduit, both directions at every section against the limits."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from msgspec import UNSET

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.readable import conduit_text, quantity_text, shown, words_of
from ductrun.subjects.duct_run.told_circuits import CircuitPulls, RunCircuit
from ductrun.subjects.pulling.choices import StopBasis
from ductrun.units import AnyQuantity


def circuit_tables(circuits: Sequence[RunCircuit]) -> Markup:
    """Give fill and pulls of every circuit; a pull that is like one before is told by reference to it."""
    if not circuits:
        return NOTHING
    told: dict[object, str] = {}
    parts = [_pulls(circuit, told) for circuit in circuits]
    return joined([element("h2", "Fill"), _fills(circuits), element("h2", "Pulls"), *parts])


def _value(record: Any, name: str) -> str:
    value = getattr(record, name, UNSET)
    return "" if value is UNSET else shown(value, name)


def _fills(circuits: Sequence[RunCircuit]) -> Markup:
    rows = [
        (
            circuit.name,
            ", ".join(circuit.ducts),
            ", ".join(one.places),
            conduit_text(one),
            _value(one.fill, "fill_percent"),
            _value(one.fill, "limit_percent"),
            _value(one.fill, "jam_ratio"),
        )
        for circuit in circuits
        for one in circuit.fills
    ]
    return table(("Circuit", "Ducts", "In", "Conduit", "Fill", "Limit", "Jam ratio"), rows, kind="dense")


def _pulls(circuit: RunCircuit, told: dict[object, str]) -> Markup:
    parts: list[Markup] = []
    for one in circuit.pulls:
        name = f"{circuit.name}, {one.start} to {one.end}"
        first = told.setdefault(_figures(one), name)
        parts.append(element("h3", name))
        if first != name:
            parts.append(element("p", f"As {first}, in {_ducts(one)}."))
        else:
            parts += [_facts(one), _sections(one)]
    return joined(parts)


def _figures(one: CircuitPulls) -> object:
    """Give what is the same of pulls that are alike."""
    pull = one.pull
    leaving = [section.tension_out.value for section in (*pull.sections, *pull.reversed.sections)]
    limits = _value(pull, "allowable_tension"), _value(pull, "jam_ratio"), _value(pull, "clearance")
    return one.start, one.end, one.verdict, _value(one, "stop_tension"), *leaving, *limits


def _ducts(one: CircuitPulls) -> str:
    return f"duct{'s' if len(one.ducts) > 1 else ''} {', '.join(one.ducts)}"


def _facts(one: CircuitPulls) -> Markup:
    pull = one.pull
    turned = pull.reversed
    highest = [f"highest on the way {_value(way, 'highest_tension')}" for way in (pull, turned)]
    rows = [
        ("Verdict, better direction", words_of(str(one.verdict)), ""),
        ("Feed from, pull to", f"{one.feed_from}, {one.pull_to}", _ducts(one)),
        ("Why from there", _value(pull, "better_reason"), ""),
        ("Length", quantity_text(one.length), f"bends in all {_value(pull, 'bend_total')}"),
        ("Cables lie", _value(pull, "arrangement"), f"weight correction {_value(pull, 'weight_correction_factor')}"),
        ("Clearance", _value(pull, "clearance") or "not known", "over the cables"),
        ("Allowable tension", _value(pull, "allowable_tension") or "not judged", "of conductors, grip and gear"),
        ("Allowable sidewall pressure", _value(pull, "allowable_sidewall_pressure"), ""),
        ("Tension toward the end", _value(pull, "tension"), highest[0]),
        (
            "Tension toward the start",
            _value(turned, "tension"),
            f"highest on the way {_value(turned, 'highest_tension')}",
        ),
        ("Stop tension", _value(one, "stop_tension") or "not known", f"at the pulling end: {_stop_basis(one)}"),
        ("Brake toward the end", _brake(pull), "at the reel, from the friction of the pull to the worst"),
        ("Brake toward the start", _brake(turned), "at the reel, from the friction of the pull to the worst"),
        *[
            (
                "Cable supports in a duct",
                str(hung.support_count),
                f"at the top and every {quantity_text(hung.support_spacing)} below it: {hung.place}",
            )
            for hung in pull.cable_supports or ()
        ],
        ("Lubricant", _value(pull, "lubricant_volume"), ""),
    ]
    return table(("Of the pull", "Value", ""), rows, kind="facts")


def _stop_basis(one: CircuitPulls) -> str:
    """Say what the stop tension rests on, and up to where nothing rests on friction; where it is not known, why."""
    if one.stop_basis is StopBasis.ANY_FRICTION:
        return "no bend over its limit whatever the friction"
    if one.stop_basis is UNSET:
        return why_no_stop(one)
    return f"at the friction assumed; safe at any friction to {_value(one, 'tension_safe_at_any_friction')}"


def why_no_stop(one: CircuitPulls) -> str:
    """Say what a stop tension waits for."""
    if one.pull.allowable_tension is UNSET:
        return "ask the cable's maker what it bears"
    return "a bend is left out, ask for its radius"


def brakes_of(way: Any) -> list[AnyQuantity]:
    """Give the brakes that a pull needs, from the least to the greatest of either friction."""
    cases = [one for one in (way, way.braking_case) if one is not UNSET]
    return sorted([one.brake_tension for one in cases if one.brake_tension is not UNSET], key=lambda one: one.value)


def spanned(way: Any, least: str, most: str) -> str:
    """Write from which brake to which a pull goes; at a friction at which it needs none, from nothing on."""
    if way.brake_tension is UNSET or (way.braking_case is not UNSET and way.braking_case.brake_tension is UNSET):
        return f"up to {most}"
    return most if least == most else f"{least} to {most}"


def _brake(way: Any) -> str:
    brakes = brakes_of(way)
    return spanned(way, quantity_text(brakes[0]), quantity_text(brakes[-1])) if brakes else "none"


def _sections(one: CircuitPulls) -> Markup:
    """Give both directions by section, each counted from the start of the run."""
    forward = one.pull.sections
    backward = list(reversed(one.pull.reversed.sections))
    members = ("tension_out", "sidewall_pressure")
    rows = [
        (str(number), *[_value(way, name) for way in pair for name in members])
        for number, pair in enumerate(zip(forward, backward, strict=True), start=1)
    ]
    leaving = ("tension leaving", "sidewall pressure")
    header = ("Section", *[f"Toward the {end}: {what}" for end in ("end", "start") for what in leaving])
    return table(header, rows, kind="dense", figures=(1, 2, 3, 4))
