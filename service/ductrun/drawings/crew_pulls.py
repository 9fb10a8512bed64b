"""The pulls of a run as a crew reads them: feed from where, pull to where, what to expect, when to stop."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, Final

from msgspec import UNSET

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.pull_tables import brakes_of, spanned, why_no_stop
from ductrun.drawings.readable import quantity_text
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run.assessment import DuctRun, RunPull
from ductrun.subjects.duct_run.told import DuctRunResult
from ductrun.subjects.duct_run.told_circuits import CircuitPulls
from ductrun.subjects.parts.route import inside
from ductrun.subjects.pulling.choices import PullDirection, StopBasis
from ductrun.subjects.pulling.findings import overbraked_beyond_limits
from ductrun.subjects.pulling.sliding import sliding_of
from ductrun.units import AnyQuantity

_CLOSE: Final = 0.02  # twice what three digits leave out
_JUDGED: Final = {
    Verdict.COMPLIES: "{}",
    Verdict.NOT_JUDGED: "{} ? not judged: ask before you pull",
    Verdict.VIOLATES: "{} ✗ over a limit: do not pull it so",
}


def pull_rows(run: DuctRun, result: DuctRunResult, telling: Telling) -> Markup:
    """Give every pull in a row; circuits that are pulled alike between the same places share one."""
    alike: dict[tuple[str, ...], list[str]] = {}
    watched: dict[str, list[str]] = {}
    for circuit, assessed in zip(result.circuits, run.circuits, strict=True):
        for one, carried in zip(circuit.pulls, assessed.pulls, strict=True):
            figures = (_way(one, carried.pull, run, telling), *_pull(one))
            alike.setdefault(figures, []).append(f"{circuit.name} in {', '.join(one.ducts)}")
            if one.stop_basis is StopBasis.FRICTION_ASSUMED:
                way = f"{circuit.name} from {one.feed_from} to {one.pull_to}"
                watched.setdefault(_watched(one), []).append(way)
    if not alike:
        return NOTHING
    rows = [("; ".join(cables), *figures) for figures, cables in alike.items()]
    header = ("Cable in duct", "Feed from, pull to", "Expect", "STOP at", "Brake", "Lubricant", "Each duct")
    said = [
        *_supports(result),
        *_unknown_supports(run, result),
        *_brakes(run, result, telling),
        *_slides(run, result, telling),
    ]
    return joined(
        [
            element("h2", "Pull"),
            element("p", _first(result)),
            table(header, rows, kind="dense pulls", figures=(2, 3, 4, 5)),
            *[element("p", f"{'; '.join(dict.fromkeys(ways))}: {words}") for words, ways in watched.items()],
            element("ul", *said) if said else NOTHING,
        ]
    )


def _supports(result: DuctRunResult) -> list[Markup]:
    """Say where cable that hangs is supported; circuits that hang alike share a line."""
    alike: dict[str, list[str]] = {}
    for circuit in result.circuits:
        for one in circuit.pulls:
            for hung in one.pull.cable_supports or ():
                words = (
                    f"{hung.support_count} cable supports in each duct over the rise of {quantity_text(hung.rise)}, "
                    f"{inside(hung.place)}: at its top, and below it at most {quantity_text(hung.support_spacing)} "
                    "apart, in boxes. No cable is left hanging without them."
                )
                alike.setdefault(words, []).append(f"{circuit.name} in {', '.join(one.ducts)}")
    return [element("li", f"{'; '.join(cables)}: {words}") for words, cables in alike.items()]


def _unknown_supports(run: DuctRun, result: DuctRunResult) -> list[Markup]:
    """Say of which cable that hangs nobody knows whether it needs supports; circuits between the same places share."""
    alike: dict[str, list[str]] = {}
    for circuit, assessed in zip(result.circuits, run.circuits, strict=True):
        for one, carried in zip(circuit.pulls, assessed.pulls, strict=True):
            if not carried.pull.pulled.pulling.supports.judged:
                words = f"cable supports between {one.start} and {one.end} are not known: ask before you pull."
                alike.setdefault(words, []).append(f"{circuit.name} in {', '.join(one.ducts)}")
    return [element("li", f"{'; '.join(cables)}: {words}") for words, cables in alike.items()]


def _brakes(run: DuctRun, result: DuctRunResult, telling: Telling) -> list[Markup]:
    """Say once that a brake only keeps the cable taut, and of which too much would break a limit."""
    braked = False
    alike: dict[str, list[str]] = {}
    for circuit, assessed in zip(result.circuits, run.circuits, strict=True):
        for one, carried in zip(circuit.pulls, assessed.pulls, strict=True):
            pulled = carried.pull.pulled
            way = pulled.backward if pulled.better is PullDirection.REVERSED else pulled.forward
            if not way.braked:
                continue
            over_limit = overbraked_beyond_limits(way, pulled.pulling)
            braked = True
            if over_limit is not None:
                held = _to_three(telling.force(over_limit.entering), math.ceil)
                words = f"held back with {held} while friction is high, it is pulled over a limit"
                alike.setdefault(words, []).append(f"{circuit.name} from {one.feed_from}")
    if not braked:
        return []
    over = "".join([f" {'; '.join(dict.fromkeys(ways))}: {words}." for words, ways in alike.items()])
    return [element("li", f"Brake only as much as keeps the cable taut.{over}")]


def _slides(run: DuctRun, result: DuctRunResult, telling: Telling) -> list[Markup]:
    """Say where a cable is made fast before it is let go; pulls that are drawn on alike share a line."""
    alike: dict[str, list[str]] = {}
    for circuit, assessed in zip(result.circuits, run.circuits, strict=True):
        for one, carried in zip(circuit.pulls, assessed.pulls, strict=True):
            pulled = carried.pull.pulled
            way = pulled.backward if pulled.better is PullDirection.REVERSED else pulled.forward
            found = sliding_of(way, pulled.pulling)
            for drawn, end, held_by in (
                (found.pulled, one.pull_to, "rope"),
                (found.fed, one.feed_from, "reel brake"),
            ):
                if drawn:
                    most = _to_three(telling.force(drawn), math.ceil)
                    words = (
                        f"the cable slides down from {end} with up to {most} when it is let go: make it fast at {end} "
                        f"before the {held_by} is released; nobody below it."
                    )
                    alike.setdefault(words, []).append(f"{circuit.name} in {', '.join(one.ducts)}")
    return [element("li", f"{'; '.join(cables)}: {words}") for words, cables in alike.items()]


def _first(result: DuctRunResult) -> str:
    """Say with what mandrel every duct is proved before anything is pulled, nothing where no bore is known."""
    if result.mandrel_diameter is not UNSET:
        return f"First a mandrel of {quantity_text(result.mandrel_diameter)} through every duct, then clean it."
    by_size: dict[str, list[str]] = {}
    for duct in result.ducts:
        if duct.mandrel_diameter is not UNSET:
            by_size.setdefault(quantity_text(duct.mandrel_diameter), []).append(duct.name)
    words = [f"of {size} through {', '.join(names)}" for size, names in by_size.items()]
    return f"First a mandrel {'; '.join(words)}; then clean them." if words else ""


def _way(one: CircuitPulls, pull: RunPull, run: DuctRun, telling: Telling) -> str:
    """Say from where to where, and how much cable stays beyond the ducts: at either end, if given, else in all."""
    stops = {stop.name: stop for stop in (run.stops[pull.start], run.stops[pull.end])}
    given = [stops[name].given.cable_allowance for name in (one.feed_from, one.pull_to)]
    left = ["" if leave is None else f" (leave {quantity_text(telling.given(leave))})" for leave in given]
    way = f"{one.feed_from}{left[0]} to {one.pull_to}{left[1]}"
    if all(left) or not pull.order:
        return way
    route = sum([section.developed_length for section in pull.pulled.pulling.sections])
    in_all = quantity_text(telling.distance(pull.order[0].exact_length - route))
    return f"{way}; leave {in_all}, both ends together"


def _to_three(told: AnyQuantity, to_whole: Callable[[float], int]) -> str:
    """Write a figure to three digits, rounded to the side on which nobody is hurt."""
    if not told.value > 0:
        return quantity_text(told)
    step = 10.0 ** (math.floor(math.log10(told.value)) - 2)
    nearest = round(told.value / step, 6)  # a figure of three digits stays as it is
    return quantity_text(AnyQuantity(to_whole(nearest) * step, told.unit))


def _watched(one: CircuitPulls) -> str:
    """Say from where on a stop tension rests on the friction assumed, which a crew cannot see."""
    most = one.tension_safe_at_any_friction
    safe = "" if most is UNSET else _to_three(most, math.floor)
    return f"above {safe} go slowly, stop if it rises faster than expected: a bend may be over its limit unseen."


def _pull(one: CircuitPulls) -> tuple[str, ...]:
    turned = one.pull_to == one.start
    way: Any = one.pull.reversed if turned else one.pull
    expected, stop = _expected_and_stop(way.tension, one)
    return (
        _JUDGED[one.verdict].format(expected),
        stop,
        _brake(way),
        _to_three(one.pull.lubricant_volume, math.ceil),
        "; ".join([f"{line.count} x {quantity_text(line.order_length)}" for line in one.cables_to_order]),
    )


def _brake(way: Any) -> str:
    """Give with how much the reel holds back, from the friction the cable is pulled with to the low one."""
    brakes = [_to_three(one, math.ceil) for one in brakes_of(way)]
    return spanned(way, brakes[0], brakes[-1]) if brakes else "none"


def _expected_and_stop(expected: AnyQuantity, one: CircuitPulls) -> tuple[str, str]:
    stop = one.stop_tension
    if stop is UNSET:
        return _to_three(expected, math.ceil), f"not known: {why_no_stop(one)}"
    told = _to_three(expected, math.ceil), _to_three(stop, math.floor)
    if math.isclose(expected.value, stop.value, rel_tol=_CLOSE):  # rounded apart they would cross
        told = quantity_text(expected), quantity_text(stop)
    return told if one.stop_basis is StopBasis.ANY_FRICTION else (told[0], f"{told[1]}; see below")
