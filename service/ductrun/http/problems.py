"""Problem details (RFC 9457): every 4xx and 5xx of the service, what each means, and how it is written.

A problem never echoes what was sent and cannot fail to be written: its texts are the service's own.
"""

from __future__ import annotations

import html
from typing import Annotated, Any, Final, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType, json


class Kind(NamedTuple):
    """One kind of problem: its name in the type URI, status, title, and the explanation of its page."""

    name: str
    status: int
    title: str
    explanation: str


_ALL = (
    Kind("malformed_json", 400, "The body is not JSON", "The body must be one JSON value (RFC 8259) and nothing else."),
    Kind("invalid_utf8", 400, "The body is not UTF-8", "JSON is sent as UTF-8, without a byte order mark."),
    Kind(
        "duplicate_member",
        400,
        "An object names a member twice",
        "Two members of one object have the same name. Which of them counts would be a guess, so neither does.",
    ),
    Kind(
        "non_finite_number",
        400,
        "A number is not finite",
        "NaN, Infinity and numbers beyond double precision, such as 1e400, are not numbers of JSON.",
    ),
    Kind(
        "number_too_long",
        400,
        "A number has too many digits",
        "A whole number has more digits than any quantity here can need.",
    ),
    Kind("lone_surrogate", 400, "A text has a lone surrogate", "An escape such as \\ud800 is half a character."),
    Kind("too_deep", 400, "The body is nested too deeply", "Arrays and objects may lie in each other 200 deep."),
    Kind("not_found", 404, "There is nothing here", "Calculations are POST /v1/..., tables GET /v1/tables/..."),
    Kind(
        "method_not_allowed",
        405,
        "The method is not allowed here",
        "A calculation is a POST, a table a GET or HEAD; the Allow header names the methods.",
    ),
    Kind(
        "body_too_large",
        413,
        "The body is too large",
        "A request, or a line of a stream, may have so many bytes as the detail says. Divide the work over several.",
    ),
    Kind(
        "unsupported_media_type",
        415,
        "The content type is not taken here",
        "Send a body with Content-Type: application/json (or a type that ends in +json), a stream with "
        "application/jsonl or application/x-ndjson. Scripts that send none, or text/plain, must add it.",
    ),
    Kind(
        "invalid_request",
        422,
        "The request is not valid",
        "The body is JSON but not a valid request. Each error names the field by a JSON Pointer, says what is wrong "
        "and, where there is a choice or a range, what is allowed.",
    ),
    Kind(
        "invalid_query",
        422,
        "A query parameter is not valid",
        "A calculation takes units (us or metric), working (true or false), assumptions (state or refuse) and request "
        "(completed); a table takes its filters and, if it has quantities, units; each at most once. Other paths take "
        "none.",
    ),
    Kind(
        "unanswerable",
        422,
        "The question has no answer",
        "The request is valid in form, but what it describes cannot be: a duct wider than its envelope, cables that "
        "do not pass the bore, a size the tables do not hold. Each error names the field and what would be allowed.",
    ),
    Kind(
        "assumptions_refused",
        422,
        "Assumptions would be needed",
        "The request asked with assumptions=refuse for an answer without assumptions. Each error names a field that "
        "was left out, and under allowed the value that would have been assumed.",
    ),
    Kind("internal_error", 500, "The service failed", "A fault of the service, not of the request. It is logged."),
    Kind("not_ready", 503, "The service is not ready", "It is starting or stopping. Try again shortly."),
)
KINDS: Final = {kind.name: kind for kind in _ALL}
MEDIA_TYPE: Final = "application/problem+json"


class ProblemError(Struct, frozen=True, gc=False):
    """One fault of a request."""

    code: Annotated[str, Meta(description="Stable code of the fault.")]
    message: Annotated[str, Meta(description="What is wrong and what to do next.")]
    pointer: Annotated[str | UnsetType, Meta(description="JSON Pointer of the field, as a URI fragment.")] = UNSET
    parameter: Annotated[str | UnsetType, Meta(description="Name of the query parameter.")] = UNSET
    allowed: Annotated[Any, Meta(description="What is allowed: a list of values, or bounds.")] = UNSET


class Problem(Struct, frozen=True, gc=False):
    """Problem details by RFC 9457."""

    type: Annotated[str, Meta(description="URI of the page that explains this kind of problem.")]
    title: Annotated[str, Meta(description="What kind of problem it is.")]
    status: Annotated[int, Meta(description="HTTP status.", ge=400, le=599)]
    detail: Annotated[str, Meta(description="What happened to this request.")]
    instance: Annotated[str, Meta(description="Id of the request, also in X-Request-ID.")]
    errors: Annotated[list[ProblemError] | UnsetType, Meta(description="Every fault found.")] = UNSET


class ProblemRaised(Exception):  # noqa: N818  (it becomes an answer, not a failure)
    """A request that ends in a problem."""

    def __init__(self, name: str, detail: str, errors: list[ProblemError] | None = None) -> None:
        """Keep the kind, the detail and the faults."""
        super().__init__(detail)
        self.kind = KINDS[name]
        self.detail = detail
        self.errors = errors


def failure() -> ProblemRaised:
    """Give the problem of a fault that is the service's own."""
    return ProblemRaised("internal_error", "The service failed. Report the request id.")


_encode = json.Encoder().encode
_MOST_ERRORS = 1000


def body_of(kind: Kind, detail: str, instance: str, errors: list[ProblemError] | None = None) -> bytes:
    """Write a problem."""
    shown = errors[:_MOST_ERRORS] if errors else UNSET
    return _encode(Problem(f"/problems/{kind.name}", kind.title, kind.status, detail, instance, shown))


def page_of(kind: Kind) -> str:
    """Write the page that explains one kind of problem."""
    title, explanation = html.escape(kind.title), html.escape(kind.explanation)
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<title>{title}</title>\n<link rel="stylesheet" href="../docs/assets/page.css">\n</head>\n<body>\n<main>\n'
        f"<h1>{title}</h1>\n<p>{explanation}</p>\n"
        f"<p>Status {kind.status}, type <code>/problems/{kind.name}</code>.</p>\n"
        '<p><a href="../docs">Operations and their fields</a></p>\n</main>\n</body>\n</html>\n'
    )
