"""The one table of what an answer may be given as: which media types each calculation has, and how each is made."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final, NamedTuple

from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.svg import STYLE_HASH
from ductrun.http.exchange import QUERY
from ductrun.kit.answering import Answering, drawing_of
from ductrun.subjects import Operation

Header = tuple[bytes, bytes]

JSON: Final = "application/json"
SVG: Final = "image/svg+xml"
VARY: Final[Header] = (b"vary", b"accept")
_DRAWING_POLICY: Final[Header] = (
    b"content-security-policy",
    f"default-src 'none'; style-src '{STYLE_HASH}'".encode(),
)
_OF_A_DRAWING: Final = {name: QUERY[name] for name in ("units", "assumptions")}


class Representation(NamedTuple):
    """One way to give an answer: its media type, what makes it of a request, the query parameters that it takes, the
    headers that go with it.
    """

    media_type: str
    answer: Answering
    query: Mapping[str, Mapping[str, Any]]
    headers: tuple[Header, ...]

    @property
    def content_type(self) -> bytes:
        """The media type as a header has it."""
        return self.media_type.encode()


def representations_of(operation: Operation[Any, Any, Any], answer: Answering) -> tuple[Representation, ...]:
    """Give what the answer of an operation may be given as, what is given to whoever does not say first."""
    found = [Representation(JSON, answer, QUERY, (VARY,))]
    draw = DRAWINGS.get(operation.name)
    if draw is not None:
        drawing = drawing_of(operation, draw)
        found.append(Representation(SVG, drawing, _OF_A_DRAWING, (VARY, _DRAWING_POLICY)))
    return tuple(found)
