"""What a run may cost: known from its form before it is worked on, and bounded where few words ask for much.

Every circuit is pulled through every section that it passes, and told with each: a run of 50 stretches and 200 circuits
is written in some kilobytes, and could take an hour. What a run on a drawing has lies far below the bounds.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.comparing.form import NamedRun
from ductrun.subjects.duct_run.form import Stretch

MOST_PULLED_SECTIONS: Final = 20_000
MOST_JOINED_SECTIONS: Final = 20_000
MOST_SEARCH_STEPS: Final = 100_000
MOST_COMPARED_STEPS: Final = 400_000
MOST_TRIAL_STEPS: Final = 300_000
_ALWAYS, _A_STRETCH, _A_SECTION, _A_PULL, _A_PULLED_SECTION = 100.0, 80.0, 2.0, 30.0, 5.0  # steps, as measured
_A_SEARCHED = 0.4


def steps(request: Any) -> float:
    """Bound the steps of ten microseconds that a run takes: those of its stretches, of its pulls, and of the searches
    for pull points along pulls that break a limit.
    """
    stretches, circuits = request.stretches, request.circuits or ()
    lengths = [len(stretch.sections or (0,)) for stretch in stretches]
    sections = sum(lengths)
    spans = 1 + sum(stretch.pull_point is not None for stretch in stretches)
    kinds = max([1, *(_kinds(bank) for bank in (request.bank, *(stretch.bank for stretch in stretches)) if bank)])
    ways = sum(min(kinds, len(circuit.ducts or ()) or circuit.duct_count or 1) for circuit in circuits)
    unlike = kinds * sum(circuit.same_as is None or circuit.pulling is not None for circuit in circuits)
    searched = min(unlike * _A_SEARCHED * 2 * _squared(request), float(MOST_SEARCH_STEPS))
    told = _A_STRETCH * len(stretches) + _A_SECTION * kinds * sections
    return _ALWAYS + told + _A_PULL * ways * spans + _A_PULLED_SECTION * ways * sections + searched


def _kinds(bank: Any) -> int:
    return sum(map(len, bank.tier_ducts or ())) or 1


def _squared(request: Any) -> int:
    """Give the squares of the sections between stops, all together."""
    total = here = 0
    for stretch in request.stretches:
        here += len(stretch.sections or (0,))
        if stretch.pull_point is not None:
            total, here = total + here * here, 0
    return total + here * here


def check_pulled(count: int, sheet: Worksheet) -> None:
    """Refuse a run whose circuits pass more sections than are answered for."""
    _check(
        "circuits", count, MOST_PULLED_SECTIONS, "pulled", "pulls, one for each section that a circuit passes", sheet
    )


def check_joined(stretches: Sequence[Stretch], banks: Sequence[RunBank], sheet: Worksheet) -> None:
    """Refuse a run whose ducts are of so many kinds in so many sections that joining them takes too long."""
    known: dict[int, int] = {}
    count = 0
    for stretch, bank in zip(stretches, banks, strict=True):
        if id(bank) not in known:
            known[id(bank)] = len({id(duct.conduit) for duct in bank.ducts})
        count += known[id(bank)] * len(stretch.sections or (0,))
    _check("stretches", count, MOST_JOINED_SECTIONS, "joined", "ducts, one for each kind of duct in it", sheet)


def _check(member: str, count: int, most: int, done: str, what: str, sheet: Worksheet) -> None:
    if count > most:
        words = f"That makes {count:,} sections of {what}; {most:,} are the most. Divide the run and ask for each part."
        raise UnanswerableError(sheet.fault(member, f"too_many_{done}_sections", words, maximum=float(most)))


def check_compared(runs: Sequence[NamedRun], sheet: Worksheet) -> None:
    """Refuse runs that take too long together."""
    together = sum(steps(one.run) for one in runs)
    if together > MOST_COMPARED_STEPS:
        words = (
            f"These {len(runs)} runs take {together / MOST_COMPARED_STEPS:.1f} times the work that is done for one "
            "request: compare fewer, or leave out circuits that are the same in all."
        )
        raise UnanswerableError(sheet.fault("runs", "too_much_to_compare", words))


def most_trials(request: Any, most: int) -> int:
    """Give how many changes of a run are tried: fewer of one that takes long."""
    return max(1, min(most, int(MOST_TRIAL_STEPS / steps(request))))


def trial_steps(request: Any, most: int) -> float:
    """Bound the steps of trying changes of a run."""
    return steps(request) * most_trials(request, most)


class SearchBudget:
    """How many steps are left for searches of pull points in a run; each takes of them before it begins."""

    def __init__(self) -> None:
        """Start with all of them."""
        self._left = MOST_SEARCH_STEPS

    def takes(self, steps_needed: int) -> bool:
        """Take what a search needs, if there is as much left."""
        if steps_needed > self._left:
            return False
        self._left -= steps_needed
        return True
