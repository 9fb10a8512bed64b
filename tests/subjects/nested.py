"""Holding what a sheet told against the form it was told of, whatever the shape of that form."""

from __future__ import annotations

from collections.abc import Iterable

from ductrun.kit.forms import Form
from ductrun.kit.worksheet import UnanswerableError, Worksheet

from tests.properties.requests import places


def strays(form: type[Form], pointers: Iterable[str]) -> list[str]:
    """Give the pointers that name no member of a form."""
    schema = form.model_json_schema()
    return [pointer for pointer in pointers if not places(schema, pointer)]


def told_by(sheet: Worksheet) -> set[str]:
    """Give every pointer of the findings, the assumptions and the working of an answer."""
    book = sheet.book
    found = {str(finding.pointer) for finding in book.findings if finding.pointer}
    return found | set(book.settled) | {step.pointer for step in book.working or ()}


def pointer_of(sheet: Worksheet, code: str) -> str:
    """Give where the one finding of a code lies."""
    [where] = [str(finding.pointer) for finding in sheet.book.findings if finding.code == code]
    return where


def refused_at(error: UnanswerableError) -> dict[str, str]:
    """Give the code of every fault by its pointer."""
    return {fault.pointer: fault.code for fault in error.faults}
