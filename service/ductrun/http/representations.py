"""The one table of what an answer may be given as: which media types each calculation has, and how each is made."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Final, NamedTuple

from ductrun.drawings.documents import CSV, WORKBOOK, Answered, lists_of, pages_of
from ductrun.drawings.markup import Document
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.svg import STYLE_HASH
from ductrun.http.exchange import QUERY, REMEDYING, VARY
from ductrun.kit.answering import Answering, Chosen, drawing_of, made_by, told_of, written
from ductrun.subjects import Operation
from ductrun.subjects.parts.takeoff import Takeoff

Header = tuple[bytes, bytes]
Making = Callable[[bytes, Chosen], bytes | Document]
Query = Mapping[str, Mapping[str, Any]]

JSON: Final = "application/json"
SVG: Final = "image/svg+xml"
HTML: Final = "text/html"
_DRAWING_POLICY: Final[Header] = (
    b"content-security-policy",
    f"default-src 'none'; style-src '{STYLE_HASH}'".encode(),
)
_OF_A_DRAWING: Final = {name: QUERY[name] for name in ("units", "assumptions")}
_OF_A_PAGE: Final = _OF_A_DRAWING | {"working": QUERY["working"]}
_CONTENT_TYPES: Final = {HTML: "text/html; charset=utf-8", CSV: "text/csv; charset=utf-8; header=present"}
_FILES: Final = {CSV: "takeoff.csv", WORKBOOK: "takeoff.xlsx"}
_WORKED: Final = Chosen(working=True)  # a sheet that is handed in shows how it was worked out


class Representation(NamedTuple):
    """One way to give an answer: its media type, what makes it of a request, the query parameters that it takes and
    what is meant where they do not say, the headers that go with it.
    """

    media_type: str
    answer: Making
    query: Query
    headers: tuple[Header, ...]
    usual: Chosen = Chosen()

    @property
    def content_type(self) -> bytes:
        """The media type as a header has it."""
        return _CONTENT_TYPES.get(self.media_type, self.media_type).encode()


def representations_of(operation: Operation[Any, Any, Any], answer: Answering) -> tuple[Representation, ...]:
    """Give what the answer of an operation may be given as, what is given to whoever does not say first."""
    found = [Representation(JSON, answer, QUERY if operation.remedying is None else REMEDYING, (VARY,))]
    draw = DRAWINGS.get(operation.name)
    if draw is not None:
        drawing = drawing_of(operation, draw, puts_off=True)
        found.append(Representation(SVG, drawing, _OF_A_DRAWING, (VARY, _DRAWING_POLICY)))
    found.append(Representation(HTML, _pages(operation), page_query(operation), (VARY,), _WORKED))
    for media_type, write in lists_of(operation).items():
        saved = (b"content-disposition", f'attachment; filename="{_FILES[media_type]}"'.encode())
        found.append(Representation(media_type, _list(operation, write), _OF_A_DRAWING, (VARY, saved)))
    return tuple(found)


def page_query(operation: Operation[Any, Any, Any]) -> Query:
    """Give the query parameters of an operation's pages; `page` where there are several."""
    pages = {name: name for name in pages_of(operation)}
    return _OF_A_PAGE | ({"page": pages} if len(pages) > 1 else {})


def _pages(operation: Operation[Any, Any, Any]) -> Making:
    told, pages = told_of(operation), pages_of(operation)

    def page(request: Any, body: bytes, chosen: Chosen) -> Document:
        answer, assessment = told(request, body, chosen)
        written(operation.name, answer)  # what cannot be told as JSON is not told at all
        return pages[chosen.page](Answered(operation, answer, assessment, chosen.telling, body))

    return made_by(operation, page, puts_off=True, drawn_up=True)


def _list(operation: Operation[Any, Any, Any], write: Callable[[Takeoff], bytes]) -> Making:
    told = told_of(operation)

    def listed(request: Any, body: bytes, chosen: Chosen) -> bytes:
        answer, _ = told(request, body, chosen)
        written(operation.name, answer)
        return write(answer.result.takeoff)

    return made_by(operation, listed, puts_off=True, drawn_up=True)
