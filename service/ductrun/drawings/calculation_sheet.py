"""The calculation sheet of any operation, for a submittal: made from its answer and the contract, drawings included."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Any

from msgspec import UNSET, json

from ductrun.drawings.markup import NOTHING, Document, Markup, element, joined
from ductrun.drawings.result_tables import result_tables
from ductrun.drawings.sent_tables import sent_table
from ductrun.drawings.sheet_parts import (
    assumptions_of,
    closing_of,
    findings_of,
    hash_of,
    is_unjudged,
    page,
    signatures,
    sources_of,
    title_block,
    verdict_line,
    working_of,
)
from ductrun.kit.answers import Answer, Finding
from ductrun.kit.choices import Severity


def calculation_sheet(
    title: str,
    answer: Answer,
    body: bytes,
    drawings: Sequence[str] = (),
    results: Markup | None = None,
    withheld: Collection[str] = (),
) -> Document:
    """Write the sheet of an answer to the bytes of its request; `drawings` are whole SVG elements of ours.

    `results` are shown in place of tables made of the result as it is told; of members `withheld` the sheet says that
    they were sent, and not what.
    """
    request = json.decode(body)
    request_hash = hash_of(body)
    return page(
        title_of(title, request),
        request_hash,
        [
            element("p", "Calculation sheet", kind="kicker"),
            element("h1", title),
            title_block(request, answer.basis, request_hash),
            signatures(),
            verdict_line(answer),
            found(answer.findings),
            element("h2", "Drawings") if drawings else NOTHING,
            pictures(drawings),
            element("h2", "Inputs as sent"),
            sent_table(request, withheld),
            assumptions_of(answer.assumptions),
            results or joined([element("h2", "Results"), result_tables(answer.result)]),
            working_of([] if answer.working is UNSET else answer.working),
            sources_of(answer.basis),
            closing_of(answer),
        ],
    )


def title_of(title: str, request: dict[str, Any]) -> str:
    """Give the title of a page, with the caller's name of the thing if there is one."""
    name = request.get("name")
    return f"{name} - {title}" if isinstance(name, str) else title


def found(findings: Sequence[Finding]) -> Markup:
    """Give all findings: what is broken, what was not judged, then the rest."""
    broken = [one for one in findings if one.severity is Severity.VIOLATION]
    unjudged = [one for one in findings if one.severity is not Severity.VIOLATION and is_unjudged(one)]
    rest = [one for one in findings if one.severity is not Severity.VIOLATION and not is_unjudged(one)]
    return joined(
        [
            findings_of("Limits broken", broken),
            findings_of("Not judged", unjudged),
            findings_of("Also found", rest),
        ]
    )


def pictures(drawings: Sequence[str]) -> Markup:
    """Set drawings beside each other where there is room."""
    if not drawings:
        return NOTHING
    shown = [element("figure", Markup(drawing)) for drawing in drawings]
    return element("div", *shown, kind="pictures")
