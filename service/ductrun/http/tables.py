"""GET /v1/tables/...: reference data, written once at start-up, with an entity tag of the content."""

from __future__ import annotations

import hashlib
from typing import Any

from fastapi import Request, Response
from msgspec import json

from ductrun.operations.reference import ReferenceTable
from ductrun.tables import TABLES

CACHE_CONTROL = "public, max-age=3600"


class TableEndpoint:
    """The endpoint of one reference table."""

    def __init__(self, table: ReferenceTable) -> None:
        """Write the table."""
        document: dict[str, Any] = {"tables": TABLES.hash, "rows": table.rows()}
        self.body = json.encode(document)
        self.tag = f'"{hashlib.sha256(self.body).hexdigest()[:32]}"'
        self.__name__ = table.operation_id

    async def __call__(self, request: Request) -> Response:
        """Give the table, or 304 if the caller has this version already."""
        headers = {"ETag": self.tag, "Cache-Control": CACHE_CONTROL}
        known = [tag.strip().removeprefix("W/") for tag in request.headers.get("if-none-match", "").split(",")]
        if self.tag in known or "*" in known:
            return Response(status_code=304, headers=headers)
        return Response(self.body, media_type="application/json", headers=headers)
