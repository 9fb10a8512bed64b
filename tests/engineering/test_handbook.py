"""Every formula can be checked against its page: what it takes, in which unit, and where it stands."""

from __future__ import annotations

from types import ModuleType

import pytest
from tools.handbook import Formula, failed_doctests, faults, faults_of, formulas, modules, table


def formula(text: str) -> list[str]:
    """Give what a docstring of this function does not tell of it."""

    def order(net: float, closed: bool) -> float:
        return net if closed else 0.0

    return faults_of(Formula("concrete", "order", order, text))


COMPLETE = "Give the volume [m3]. Parameters: net volume [m3], closed, whether it is. Source: derived."


def test_every_formula_tells_its_units_and_its_source() -> None:
    assert faults() == []


@pytest.mark.parametrize("module", modules(), ids=lambda module: module.__name__)
def test_every_printed_example_is_reproduced(module: ModuleType) -> None:
    failed, attempted = failed_doctests(module)
    assert failed == 0
    assert attempted >= sum(one.has_doctest for one in formulas() if module.__name__.endswith(f".{one.module}"))


@pytest.mark.parametrize(
    ("before", "after", "fault"),
    [
        ("net volume [m3]", "net volume", "net has no unit"),
        ("net volume [m3]", "net volume [yd]", "net has no known unit: yd"),
        ("net volume [m3]", "net volume (much)", "net has no known unit: much"),
        ("net volume [m3]", "volume [m3]", "net does not stand after Parameters"),
        (", closed, whether it is", "", "closed does not stand after Parameters"),
        ("the volume [m3]", "the volume", "what it gives has no unit"),
        (" Source: derived.", "", "no source"),
        ("derived.", "Handbook of everything.", "no such source: Handbook of everything."),
        ("derived.", "derived; hearsay.", "no such source: hearsay."),
    ],
)
def test_what_a_docstring_leaves_out_is_a_fault(before: str, after: str, fault: str) -> None:
    assert formula(COMPLETE) == []
    assert before in COMPLETE
    assert formula(COMPLETE.replace(before, after)) == [fault]


def test_the_table_counts_every_formula_once() -> None:
    head, _, every, *rows = table()
    counts = [[int(cell) for cell in row.strip("| ").split("|")[1:]] for row in (every, *rows)]
    assert head.startswith("| module | formulas")
    assert counts[0] == [sum(column) for column in zip(*counts[1:], strict=True)]
