"""What printed pages have: title block, the verdict in a sentence, findings, assumptions, sources, signatures."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any, Final

from msgspec import UNSET

from ductrun.drawings.markup import NOTHING, Document, Markup, document, element, joined, table
from ductrun.drawings.readable import place_of, quantity_text
from ductrun.kit.answers import Answer, Assumption, Basis, Finding, Step
from ductrun.kit.choices import Severity, Verdict
from ductrun.tables import TABLES

STYLE: Final = Path(__file__).with_name("sheet.css").read_text(encoding="utf-8").replace("\n", "")
_CITATIONS: Final = {row.id: row.citation for row in TABLES["sources"]}
_MARKS: Final = {Severity.VIOLATION: "✗ Violation", Severity.CAUTION: "! Caution", Severity.NOTE: "Note"}
_PROVIDED: Final = {"cable_needs_support": "the cable supports it asks for"}  # what a verdict reckons with
_SIGNED: Final = ("Prepared", "Checked")


def hash_of(body: bytes) -> str:
    """Give the hash by which a request is known again: SHA-256 of its bytes as sent."""
    return hashlib.sha256(body).hexdigest()


def page(title: str, request_hash: str, body: Iterable[str], *, kind: str = "", paper: str = "") -> Document:
    """Write a page of a document; on paper every sheet carries the hash of the request and its number.

    `paper` says what is asked of it: its margins, or that it lies across.
    """
    foot = f'@page{{{paper}@bottom-left{{content:"Request {request_hash[:16]}";'
    foot += 'font:8pt system-ui,"Liberation Sans",sans-serif;color:#59636e}}'
    return document(title, element("main", *body, kind=kind), (STYLE, foot))


def title_block(request: Mapping[str, Any], basis: Basis, request_hash: str) -> Markup:
    """Say what the page is of: the caller's name and note if there are any, versions, edition, hash."""
    told = [
        ("Name", request.get("name"), ""),
        ("Note", request.get("note"), "whole"),
        ("Code edition", None if basis.code_edition is UNSET else basis.code_edition, ""),
        ("Version of the service", basis.service_version, ""),
        ("Version of the tables", basis.tables_version, ""),
        ("SHA-256 of the request as sent", request_hash, "whole"),
    ]
    shown = [
        element("div", element("dt", name), element("dd", text), kind=kind)
        for name, text, kind in told
        if isinstance(text, str)
    ]
    return element("dl", *shown, kind="title-block")


def signatures() -> Markup:
    """Leave room for who prepared and who checked it, and for the seal."""
    rooms = [element("div", element("dt", f"{one} by, date"), element("dd")) for one in _SIGNED]
    return element("dl", *rooms, element("div", element("dt", "Seal"), element("dd"), kind="seal"), kind="signs")


def verdict_line(answer: Answer) -> Markup:
    """Say in one sentence whether the limits are kept."""
    kind = "" if answer.verdict is UNSET else str(answer.verdict)
    return element("p", verdict_sentence(answer), kind=f"verdict {kind}".strip())


def verdict_sentence(answer: Answer) -> str:
    """Say in one sentence whether the limits are kept, broken, or were not all judged."""
    count = sum([finding.severity is Severity.VIOLATION for finding in answer.findings])
    if answer.verdict is UNSET:
        return "Nothing here is held against a limit."
    if answer.verdict is Verdict.VIOLATES:
        broken = {0: "a limit is broken", 1: "one limit is broken"}.get(count, f"{count} limits are broken")
        return f"✗ Does not comply: {broken}."
    if answer.verdict is Verdict.NOT_JUDGED:
        return "? Not judged: what could be judged keeps its limits, and something that decides could not be judged."
    provided = [words for code, words in _PROVIDED.items() if any(one.code == code for one in answer.findings)]
    return f"✓ Complies with every limit it was held against{''.join(f', with {words}' for words in provided)}."


def is_unjudged(finding: Finding) -> bool:
    """Say whether a finding tells of something that could not be judged."""
    return finding.code.endswith("not_judged")


def findings_of(title: str, findings: Sequence[Finding]) -> Markup:
    """Give findings under a heading; nothing where there are none."""
    return joined([element("h2", title), *map(_finding, findings)]) if findings else NOTHING


def _finding(finding: Finding) -> Markup:
    figures = [
        f"{name} {quantity_text(quantity)}"
        for name, quantity in (("Actual", finding.actual), ("limit", finding.limit))
        if quantity is not UNSET
    ]
    where = [] if finding.pointer is UNSET else [f"Where: {place_of(finding.pointer)}"]
    said = finding.citation[:1].upper() + finding.citation[1:]
    backing = said if finding.citation == finding.standing else f"{said} ({finding.standing})"
    return element(
        "div",
        element("p", element("span", f"{_MARKS[finding.severity]}: ", kind="mark"), finding.message),
        element("p", ". ".join([*where, *([", ".join(figures)] if figures else []), backing]), kind="soft small"),
        kind=f"finding {finding.severity}",
    )


def assumptions_of(assumptions: Sequence[Assumption]) -> Markup:
    """Give what was assumed, each with what it stands in for and by what right."""
    if not assumptions:
        return joined([element("h2", "Assumptions"), element("p", "None: everything was given.")])
    rows = [
        (
            "; ".join(map(place_of, one.pointers)),
            one.text if one.quantity is UNSET else quantity_text(one.quantity),
            one.citation,
            str(one.standing),
        )
        for one in assumptions
    ]
    return joined([element("h2", "Assumptions"), table(("For want of", "Assumed", "After", "Standing"), rows)])


def working_of(steps: Sequence[Step]) -> Markup:
    """Give the working, a row a step."""
    rows = [
        (place_of(step.pointer), step.symbol, step.formula, step.substituted, quantity_text(step.quantity))
        for step in steps
    ]
    header = ("Of", "Symbol", "Formula", "Figures put in, SI unless said", "Result")
    return joined([element("h2", "Working"), table(header, rows, kind="dense")]) if rows else NOTHING


def sources_of(basis: Basis) -> Markup:
    """Give the sources that the answer rests on."""
    rows = [(source_id, _CITATIONS[source_id]) for source_id in basis.source_ids]
    return joined([element("h2", "Sources"), table(("Id", "Document"), rows)]) if rows else NOTHING


def closing_of(answer: Answer) -> Markup:
    """Give the usual cautions of the work, and the notice."""
    said = [
        element("div", element("p", caution.message), element("p", caution.citation, kind="soft small"), kind="finding")
        for caution in answer.cautions
    ]
    cautions = joined([element("h2", "Cautions"), *said]) if said else NOTHING
    return joined([cautions, element("footer", answer.notice)])
