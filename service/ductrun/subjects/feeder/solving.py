"""Solving the currents of a bank: what is looked for, what is given, and what either leads to."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.heat_balance import Balance, Load, RunawayError
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Fault, UnanswerableError
from ductrun.subjects.feeder.choices import AmpacityMethod
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.feeder.thermal import Question, solve


class Solved(NamedTuple):
    """An answer by one method.

    `currents` of one conductor of every circuit [A]; `ampacities` of the circuits [A]; the factor (ratio) that all
    currents may grow by, where all are given.
    """

    question: Question
    balance: Balance
    currents: tuple[float, ...]
    ampacities: tuple[float | None, ...]
    current_factor: float | None

    @property
    def ampacity(self) -> float:
        """The least of the circuits that have one [A]."""
        return min([one for one in self.ampacities if one is not None])

    @property
    def governing(self) -> tuple[CircuitLoad, int]:
        """The circuit whose conductor is nearest to its limit, and its duct."""
        ducts = [(load, duct) for load in self.question.loads for duct in load.ducts]
        return ducts[self.balance.governing]


def by_method(question: Question, method: AmpacityMethod) -> tuple[Solved, Solved | None]:
    """Solve by the method asked, or by both: the one that allows less first."""
    if method is not AmpacityMethod.BOTH:
        return answer(question), None
    one, two = (
        answer(question._replace(method=each)) for each in (AmpacityMethod.NEHER_MCGRATH, AmpacityMethod.IEC_60287)
    )
    return (two, one) if two.ampacity < one.ampacity else (one, two)


def answer(question: Question) -> Solved:
    """Solve a question by its method; refuses currents without a steady temperature."""
    loads = question.loads
    given = [None if load.current is None else (load.current / load.sets) ** 2 for load in loads]
    try:
        if all(square is not None for square in given):
            return _at_given(question, [square or 0.0 for square in given])
        balance = solve(question, [Load(0.0, 1.0) if one is None else Load(one, 0.0) for one in given])
    except RunawayError:
        raise UnanswerableError(*_runaways(question, [square or 0.0 for square in given])) from None
    sought = math.sqrt(balance.square)
    currents = tuple([sought if one is None else math.sqrt(one) for one in given])
    ampacities = tuple([sought * load.sets if one is None else None for one, load in zip(given, loads, strict=True)])
    return Solved(question, balance, currents, ampacities, None)


def least_ampacity(question: Question) -> float:
    """Give the least ampacity of the circuits alone [A], where currents have been found to have one."""
    loads = question.loads
    given = [None if load.current is None else (load.current / load.sets) ** 2 for load in loads]
    weighed = all(square is not None for square in given)
    asked = [Load(0.0, one or 0.0) if weighed else Load(0.0, 1.0) if one is None else Load(one, 0.0) for one in given]
    try:
        found = math.sqrt(solve(question, asked).square)
    except RunawayError:
        return 0.0
    if weighed:
        return found * min([load.current or 0.0 for load in loads])
    return found * min([load.sets for load in loads if load.current is None])


def _at_given(question: Question, squares: Sequence[float]) -> Solved:
    """Give the temperatures at given currents, and what all of them may grow to alike."""
    balance = solve(question, [Load(square, 0.0) for square in squares])
    factor = math.sqrt(solve(question, [Load(0.0, square) for square in squares]).square)
    currents = tuple([math.sqrt(square) for square in squares])
    ampacities = tuple([factor * one * load.sets for one, load in zip(currents, question.loads, strict=True)])
    return Solved(question, balance, currents, ampacities, factor)


def _runaways(question: Question, squares: Sequence[float]) -> list[Fault]:
    """Say that there is no steady temperature, and up to which currents there is one within the limit."""
    try:
        most = math.sqrt(solve(question, [Load(0.0, square) for square in squares]).square)
    except RunawayError:
        message = "At this voltage the insulation alone grows hotter without end: check voltage and walls."
        return [
            load.sheet.fault("voltage/value", "no_steady_temperature", message)
            for load in question.loads
            if load.given.voltage is not None
        ]
    return [
        load.sheet.fault(
            "current/value",
            "no_steady_temperature",
            "At these currents the conductors grow hotter without end: resistance rises faster than heat leaves. "
            f"At {text_of(load.sheet.tell.current(most * load.current))} here, and all others lowered alike, "
            "the hottest is at its limit.",
            maximum=load.sheet.tell.current(most * load.current),
        )
        for load in question.loads
        if load.current is not None
    ]


def hottest(solved: Solved) -> list[float]:
    """Give the hottest conductor of every circuit [K]."""
    found, at = [], 0
    for load in solved.question.loads:
        after = at + len(load.ducts)
        found.append(max([duct.conductor for duct in solved.balance.ducts[at:after]]))
        at = after
    return found


def alone(solved: Solved) -> float:
    """Give what a conductor of the governing duct could carry with no other duct loaded [A]."""
    load, duct = solved.governing
    single = solved.question._replace(loads=[load._replace(ducts=(duct,))])
    return math.sqrt(solve(single, [Load(0.0, 1.0)]).square)
