"""GET /v1/tables/...: reference data with an entity tag of the content; whole tables, and pages of one choice."""

from __future__ import annotations

import hashlib
from typing import Any
from urllib.parse import parse_qsl

from fastapi import Request, Response
from msgspec import json

from ductrun.http.exchange import unknown_parameter
from ductrun.http.problems import ProblemError, ProblemRaised
from ductrun.subjects.reference_tables import Picker, ReferenceTable
from ductrun.tables import TABLES
from ductrun.units import AnyQuantity

CACHE_CONTROL = "public, max-age=3600"
PAGE_BOUNDS = {"limit": (1, 100, 50), "offset": (0, 10_000, 0)}  # least, most, and what is taken if not given


class Tagged:
    """A document and the strong entity tag of its content."""

    def __init__(self, document: dict[str, Any]) -> None:
        """Write the document."""
        self.body = json.encode(document)
        self.tag = f'"{hashlib.sha256(self.body).hexdigest()[:32]}"'

    def answer(self, request: Request) -> Response:
        """Give the document, or 304 if the caller has this version already."""
        headers = {"ETag": self.tag, "Cache-Control": CACHE_CONTROL}
        known = [tag.strip().removeprefix("W/") for tag in request.headers.get("if-none-match", "").split(",")]
        if self.tag in known or "*" in known:
            return Response(status_code=304, headers=headers)
        return Response(self.body, media_type="application/json", headers=headers)


class TableEndpoint:
    """The endpoint of one reference table, written once at start-up."""

    def __init__(self, table: ReferenceTable) -> None:
        """Write the table."""
        self.document = Tagged({"tables": TABLES.hash, "rows": table.rows()})
        self.__name__ = table.operation_id

    async def __call__(self, request: Request) -> Response:
        """Give the table."""
        return self.document.answer(request)


class PickerEndpoint:
    """The endpoint of the rows of one choice, page by page."""

    def __init__(self, picker: Picker) -> None:
        """Find the rows of every choice."""
        self.parameter = picker.parameter
        self.rows = {choice.value: picker.rows(choice.value) for choice in picker.choices}
        self.__name__ = picker.operation_id

    async def __call__(self, request: Request) -> Response:
        """Give one page."""
        rows = self.rows.get(request.path_params[self.parameter])
        if rows is None:
            raise ProblemRaised("not_found", f"There is no such {self.parameter}. There are: {', '.join(self.rows)}.")
        page = _read_page(request.scope["query_string"])
        limit, offset = page["limit"], page["offset"]
        document: dict[str, Any] = {
            "tables": TABLES.hash,
            "total_count": len(rows),
            "offset": offset,
            "rows": rows[offset : offset + limit],
        }
        if offset + limit < len(rows):
            document["next_offset"] = offset + limit
        return Tagged(document).answer(request)


def _read_page(query: bytes) -> dict[str, int]:
    page = {name: default for name, (_, _, default) in PAGE_BOUNDS.items()}
    errors: list[ProblemError] = []
    seen: set[str] = set()
    for name, text in parse_qsl(query.decode("latin-1"), keep_blank_values=True):
        if name not in PAGE_BOUNDS:
            errors.append(unknown_parameter(name, list(PAGE_BOUNDS)))
            continue
        least, most, _ = PAGE_BOUNDS[name]
        if name in seen:
            errors.append(ProblemError("repeated", f"{name} may be given once.", parameter=name))
        elif not (text.isascii() and text.isdecimal() and len(text) <= 9 and least <= int(text) <= most):
            bounds = AnyQuantity(least, "1"), AnyQuantity(most, "1")
            message = f"{name} must be a whole number from {least} to {most}."
            errors.append(ProblemError("not_allowed", message, parameter=name, minimum=bounds[0], maximum=bounds[1]))
        else:
            page[name] = int(text)
        seen.add(name)
    if errors:
        raise ProblemRaised("invalid_query", f"{len(errors)} query parameter(s) cannot be used.", errors)
    return page
