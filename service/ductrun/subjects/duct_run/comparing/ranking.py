"""By what whole runs are ranked: the figure of each, and why one cannot be had."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from msgspec import UNSET

from ductrun.kit.choices import Verdict
from ductrun.kit.wording import listing
from ductrun.subjects.duct_run.assessment import CircuitPull, DuctRun
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffItem, TakeoffLine, TakeoffQuantity
from ductrun.subjects.pulling.choices import PullDirection

_JOINED = {
    TakeoffItem.COUPLING,
    TakeoffItem.END_BELL,
    TakeoffItem.TERMINAL_ADAPTER,
    TakeoffItem.JOINT,
    TakeoffItem.FUSION_JOINT,
    TakeoffItem.SOLVENT_CEMENT,
}
_HELD = {TakeoffItem.STRAP, TakeoffItem.HANGER}
_ORDER = {Verdict.COMPLIES: 0, None: 1, Verdict.NOT_JUDGED: 1, Verdict.VIOLATES: 2}
_FEW = 6  # lines that a sentence names


class Ranked(NamedTuple):
    """The figure that a run is ranked by, None where it cannot be had, and why."""

    value: float | None
    gap: str | None


def ranks_of(ranked: Sequence[Ranked], verdicts: Sequence[Verdict | None]) -> list[int | None]:
    """Give the place of every run from 1: those that comply first, least first, and those that do not comply last.

    Alike figures share a place; a run with a gap has none.
    """
    keys = [
        None if one.value is None else (_ORDER[verdict], float(f"{one.value:.9g}"))
        for one, verdict in zip(ranked, verdicts, strict=True)
    ]
    known = [key for key in keys if key is not None]
    return [None if key is None else 1 + sum(other < key for other in known) for key in keys]


def ranked_by(measure: str, run: DuctRun, takeoff: Takeoff) -> Ranked:
    """Give the figure of a run that a measure names, or why it has gaps."""
    if measure == "price":
        return _by_price(run, takeoff)
    if measure == "labor_hours":
        return _by_hours(run, takeoff)
    if measure == "pull_count":
        return Ranked(float(pull_count(run)), None)
    if measure == "highest_utilization":
        return _by_utilization(run)
    item = TakeoffItem(measure)
    total = total_of(item, takeoff)
    gap = _gap_of_item(item, run)
    return Ranked(None if gap else 0.0 if total is None else total.value, gap)


def total_of(item: TakeoffItem, takeoff: Takeoff) -> TakeoffQuantity | None:
    """Give what a run takes of an item: what is ordered, or what is done of one without an order; None of nothing."""
    lines = [line for line in takeoff.lines if line.item is item]
    if not lines:
        return None
    return TakeoffQuantity(sum([_told(line).value for line in lines]), lines[0].exact_quantity.unit)


def _told(line: TakeoffLine) -> TakeoffQuantity:
    return line.exact_quantity if line.order_quantity is UNSET else line.order_quantity


def pulls(run: DuctRun) -> list[CircuitPull]:
    """Give every pull of a run, those alike in several ducts once."""
    return [pull for circuit in run.circuits for pull in circuit.pulls]


def pull_count(run: DuctRun) -> int:
    """Give how many pulls a run takes: one a duct of a circuit, from stop to stop."""
    return sum(len(one.ducts) for one in pulls(run))


def unjudged_pulls(run: DuctRun) -> int:
    """Give how many of the pulls were not judged."""
    return sum(len(one.ducts) for one in pulls(run) if _within(one) is None)


def highest_utilization(run: DuctRun) -> float | None:
    """Give the most that a pull uses of its limits from its better end [percent]; None without a pull."""
    shares = [
        (pulled.backward if pulled.better is PullDirection.REVERSED else pulled.forward).use.share
        for pulled in (one.pull.pulled for one in pulls(run))
    ]
    return max(shares) * 100 if shares else None


def _within(one: CircuitPull) -> bool | None:
    pulled = one.pull.pulled
    return pulled.within_backward if pulled.better is PullDirection.REVERSED else pulled.within


def _by_price(run: DuctRun, takeoff: Takeoff) -> Ranked:
    total = takeoff.total
    if total is UNSET or total.price is UNSET:
        return Ranked(None, "No prices: give rates with a unit_price for what is ordered.")
    if total.unpriced_lines:
        return Ranked(None, f"Without a price: {_lines(total.unpriced_lines, takeoff)}.")
    gap = _uncounted(run)
    return Ranked(None if gap else total.price, gap)


def _by_hours(run: DuctRun, takeoff: Takeoff) -> Ranked:
    total = takeoff.total
    if total is UNSET or total.labor_hours is UNSET:
        return Ranked(None, "No labor hours: give rates with unit_labor_hours.")
    if total.lines_without_hours:
        return Ranked(None, f"Without labor hours: {_lines(total.lines_without_hours, takeoff)}.")
    gap = _uncounted(run)
    return Ranked(None if gap else total.labor_hours, gap)


def _lines(numbers: Sequence[int], takeoff: Takeoff) -> str:
    named = [takeoff.lines[number - 1].description for number in numbers[:_FEW]]
    more = len(numbers) - len(named)
    return listing([*named, *([f"{more} more lines"] if more else [])])


def _by_utilization(run: DuctRun) -> Ranked:
    share = highest_utilization(run)
    unjudged = unjudged_pulls(run)
    if share is None:
        return Ranked(None, "No cable is pulled.")
    if unjudged:
        return Ranked(None, f"{unjudged} {'pull was' if unjudged == 1 else 'pulls were'} not judged.")
    return Ranked(share, None)


def _uncounted(run: DuctRun) -> str | None:
    """Say what the takeoff of a run leaves out, for want of what is on file or was given."""
    items = (TakeoffItem.COUPLING, TakeoffItem.STRAP, TakeoffItem.EXPANSION_FITTING, TakeoffItem.TIE_DOWN)
    return next((gap for item in items if (gap := _gap_of_item(item, run)) is not None), None)


def _gap_of_item(item: TakeoffItem, run: DuctRun) -> str | None:
    """Say where a run has of an item what its takeoff does not count; None where all is counted."""
    for stretch in run.stretches:
        name, above, burial = stretch.laid.name, stretch.above, stretch.burial
        if item in _JOINED and any(piece.joined is None for piece in stretch.pieces):
            return f"The joints of {name} are not counted: how they are made is not on file."
        if item in _HELD and above is not None and above.runs and not above.supported:
            return f"The supports of {name} are not counted: give support_spacing."
        if item is TakeoffItem.EXPANSION_FITTING and above is not None and above.runs and above.movement is None:
            return f"The expansion fittings of {name} are not counted: its movement was not judged."
        if item is TakeoffItem.EXPANSION_FITTING and any(
            riser.movement is None and riser.stop.given.height is not None and riser.stop.given.height.si
            for riser in stretch.risers
        ):
            return f"The expansion fittings of the risers of {name} are not counted: their movement was not judged."
        ties = None if burial is None else burial.flotation
        if item is TakeoffItem.TIE_DOWN and ties is not None and ties.all_tie_downs is None:
            return f"The tie-downs of {name} are not counted: give tie_down_capacity."
    return None
