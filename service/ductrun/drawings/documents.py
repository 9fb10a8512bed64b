"""Which documents an operation's answer can be read as: pages for all, lists to order from where there is a takeoff."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Final, NamedTuple

from msgspec import json

from ductrun.drawings.calculation_sheet import calculation_sheet
from ductrun.drawings.crew_page import crew_page
from ductrun.drawings.markup import NOTHING, Document, Markup, element, joined
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.run_drawings import MOST_PULLS_DRAWN, alike_pulls, run_drawings
from ductrun.drawings.run_tables import run_tables
from ductrun.drawings.takeoff_csv import csv_of
from ductrun.drawings.takeoff_page import takeoff_page
from ductrun.drawings.takeoff_workbook import workbook_of
from ductrun.kit.answers import Answer
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run import duct_run
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.parts.takeoff import Takeoff

CSV: Final = "text/csv"
WORKBOOK: Final = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"


class Answered(NamedTuple):
    """An answer with all that a document of it may show: what was assessed, its units, the bytes of the request."""

    operation: Operation[Any, Any, Any]
    answer: Answer
    assessment: Any
    telling: Telling
    body: bytes


Page = Callable[[Answered], Document]


def _sheet(given: Answered) -> Document:
    draw = DRAWINGS.get(given.operation.name)
    drawings = [] if draw is None else [draw(given.assessment, given.telling)]
    return calculation_sheet(given.operation.summary, given.answer, given.body, drawings)


def _run_sheet(given: Answered) -> Document:
    """Give the sheet of a whole run; prices are for the takeoff alone: the owner's engineer does not get them."""
    drawings = run_drawings(given.assessment, given.telling)
    results = joined([_left_out(given.assessment), run_tables(given.answer.result)])
    return calculation_sheet(given.operation.summary, given.answer, given.body, drawings, results, {"rates"})


def _left_out(run: DuctRun) -> Markup:
    """Say so where not every pull is drawn."""
    kinds = len(alike_pulls(run))
    if kinds <= MOST_PULLS_DRAWN:
        return NOTHING
    return element(
        "p", f"Of {kinds} pulls that differ the first {MOST_PULLS_DRAWN} are drawn; the figures of all follow."
    )


def _crew(given: Answered) -> Document:
    return crew_page(given.assessment, given.answer, given.telling, given.body)


def _takeoff(given: Answered) -> Document:
    takeoff: Takeoff = given.answer.result.takeoff
    return takeoff_page(takeoff, json.decode(given.body), given.answer.basis, given.body)


def has_takeoff(operation: Operation[Any, Any, Any]) -> bool:
    """Say whether the result of an operation holds a takeoff."""
    return "takeoff" in operation.result.__struct_fields__


def pages_of(operation: Operation[Any, Any, Any]) -> Mapping[str, Page]:
    """Give the pages of an operation by name; the first is what is meant where none is named."""
    if operation is duct_run.OPERATION:
        return {"sheet": _run_sheet, "takeoff": _takeoff, "crew": _crew}
    return {"sheet": _sheet} | ({"takeoff": _takeoff} if has_takeoff(operation) else {})


def lists_of(operation: Operation[Any, Any, Any]) -> Mapping[str, Callable[[Takeoff], bytes]]:
    """Give what writes the takeoff of an operation as a list, by media type; none where there is no takeoff."""
    return {CSV: csv_of, WORKBOOK: workbook_of} if has_takeoff(operation) else {}
