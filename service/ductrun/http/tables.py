"""GET /v1/tables/...: reference data by filter, whole and without pages, with an entity tag of the content."""

from __future__ import annotations

import hashlib
from typing import Any

from msgspec import Raw, json
from starlette.requests import Request
from starlette.responses import Response
from starlette.types import Receive, Scope, Send

from ductrun.http.exchange import JSON, media_type_asked, read_parameters
from ductrun.kit.telling import UnitSystem
from ductrun.subjects.reference_tables import ReferenceTable
from ductrun.tables import TABLES


class Tagged:
    """A document and the strong entity tag of its content."""

    def __init__(self, body: bytes, cache_control: str) -> None:
        """Tag the bytes."""
        self.body = body
        self.headers = {"ETag": f'"{hashlib.sha256(body).hexdigest()[:32]}"', "Cache-Control": cache_control}

    def answer(self, request: Request) -> Response:
        """Give the document, or 304 if the caller has this version already."""
        known = [tag.strip().removeprefix("W/") for tag in request.headers.get("if-none-match", "").split(",")]
        if self.headers["ETag"] in known or "*" in known:
            return Response(status_code=304, headers=self.headers)
        return Response(self.body, media_type="application/json", headers=self.headers)


class TableEndpoint:
    """The endpoint of one reference table: its rows are written once, at start-up, and picked by what is asked for."""

    def __init__(self, table: ReferenceTable) -> None:
        """Write the rows in either unit system, with the values each is found by."""
        rows = {system: table.rows(system) for system in UnitSystem}
        found_by = [{one.name: one.values(row) for one in table.filters} for row in rows[UnitSystem.US]]
        self.rows = {
            system: [(values, Raw(json.encode(row))) for values, row in zip(found_by, rows[system], strict=True)]
            for system in rows
        }
        self.parameters: dict[str, dict[str, Any]] = {
            one.name: {value: value for value in one.allowed(rows[UnitSystem.US])} for one in table.filters
        }
        if table.has_quantities:
            self.parameters["units"] = {system.value: system for system in UnitSystem}

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Give the rows that match every filter."""
        media_type_asked(scope["headers"], JSON)
        asked = read_parameters(scope["query_string"], self.parameters)
        rows = self.rows[asked.pop("units", UnitSystem.US)]
        matching = [row for found_by, row in rows if all(value in found_by[name] for name, value in asked.items())]
        body = json.encode({"tables_version": TABLES.hash, "rows": matching})
        answer = Tagged(body, "public, max-age=3600").answer(Request(scope))
        await answer(scope, receive, send)
