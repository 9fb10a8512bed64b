"""Whole runs assessed side by side: each keeps a book of its own, and all are bound into that of the answer."""

from __future__ import annotations

from typing import NamedTuple

import msgspec

from ductrun.kit.worksheet import Book, Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.assess import assess as assess_run
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.comparing.form import DuctRunComparisonRequest, NamedRun
from ductrun.subjects.duct_run.cost import check_compared


class ComparedAssessment(NamedTuple):
    """One run of a comparison: its name, the run, and all that was found of it and assumed for it."""

    name: str
    run: DuctRun
    book: Book


class Comparison(NamedTuple):
    """Runs side by side, the first the base, and what they are ranked by."""

    runs: list[ComparedAssessment]
    rank_by: str | None


def assess(request: DuctRunComparisonRequest, sheet: Worksheet) -> Comparison:
    """Assess every run by itself; the faults of all of them come at once."""
    faults = Gathering()
    with faults:
        _refuse_twice(request.runs, sheet)
    check_compared(request.runs, sheet)
    runs = []
    for index, given in enumerate(request.runs):
        here = _apart(sheet, f"runs/{index}/run")
        with faults:
            runs.append(ComparedAssessment(given.name, assess_run(given.run, here), here.book))
    faults.stop()
    for one in runs:
        _bind(one, sheet.book)
    _follow(runs, sheet.book)
    return Comparison(runs, request.rank_by)


def _refuse_twice(runs: list[NamedRun], sheet: Worksheet) -> None:
    seen: set[str] = set()
    faults: list[Fault] = []
    for index, one in enumerate(runs):
        if one.name in seen:
            faults.append(sheet.fault(f"runs/{index}/name", "name_given_twice", "Another run has it: give its own."))
        seen.add(one.name)
    if faults:
        raise UnanswerableError(*faults)


def _apart(sheet: Worksheet, member: str) -> Worksheet:
    """Give the sheet of a member with a book of its own: its edition, its verdict, its findings in their order."""
    own = sheet.within(member)
    own.book = Book(working=sheet.working is not None)
    return own


def _bind(one: ComparedAssessment, whole: Book) -> None:
    """Put what a run's own book has into that of the answer; each finding says of which run it is."""
    book = one.book
    whole.findings += [
        msgspec.structs.replace(found, message=f"{one.name}: {found.message}") for found in book.findings
    ]
    for caution in book.cautions:
        if caution.code not in whole.cautioned:
            whole.cautioned.add(caution.code)
            whole.cautions.append(caution)
    whole.settled.update(book.settled)
    whole.contested += book.contested
    whole.sources.update(book.sources)
    if whole.working is not None:
        whole.working += book.working or ()
    whole.held |= book.held
    whole.unjudged_count += book.unjudged_count
    whole.violated |= book.violated


def _follow(runs: list[ComparedAssessment], whole: Book) -> None:
    """Name the edition that the runs follow, or all that they do."""
    editions = dict.fromkeys(one.book.edition for one in runs)
    whole.follows_code = any(one.book.follows_code for one in runs)
    whole.edition = " and NFPA 70-".join(editions)
