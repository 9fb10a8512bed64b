"""Problem details (RFC 9457): every 4xx and 5xx of the service, what each means, and how it is written.

A problem echoes no text that was sent and cannot fail to be written: its texts are the service's own. What may stand in
it are names of members and parameters, up to a sensible length, and figures of a request that could be read.
"""

from __future__ import annotations

import html
from collections.abc import Mapping, Sequence
from typing import Annotated, Final, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType, json

from ductrun.kit.answers import LISTED, WITHOUT_ANSWER
from ductrun.kit.choices import Standing
from ductrun.units import AnyQuantity


class Kind(NamedTuple):
    """One kind of problem: its name in the type URI, status, title, the explanation of its page, and the codes that its
    errors may carry, each with what it means.
    """

    name: str
    status: int
    title: str
    explanation: str
    codes: Mapping[str, str] = {}


REQUEST_CODES: Final = {
    "missing": "A member that is required was left out.",
    "unknown_member": "The object has no member of this name.",
    "wrong_type": "Another type of JSON is taken here: a number and not a text, an object of value and unit.",
    "not_an_integer": "A whole number is taken here, written without a point or an exponent.",
    "not_allowed": "The value is none of those taken here.",
    "kind_missing": "The object does not say its kind. What else is wrong in it shows once it does.",
    "unknown_kind": "There is no such kind of object here.",
    "out_of_range": "The number or the quantity lies outside what can be.",
    "too_few": "The array has too few items.",
    "too_many": "The array has too many items.",
    "too_short": "The text has too few characters.",
    "too_long": "The text has too many characters.",
    "control_character": "The text has a character that controls a screen or turns the direction of writing.",
}
QUERY_CODES: Final = {
    "unknown_parameter": "There is no such query parameter here.",
    "not_with_this_form": "The parameter is taken only where the answer is asked for in another form.",
    "not_allowed": "The parameter does not take this value.",
    "repeated": "The parameter is given more than once.",
}
ASSUMPTION_CODES: Final = {"assumption_needed": "The member was left out, and a value would have been assumed for it."}

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
    Kind(
        "key_missing",
        401,
        "A key is needed",
        "This service is for holders of a key: send it with every request as Authorization: Bearer KEY.",
    ),
    Kind(
        "key_refused", 403, "The key is not known here", "The key that was sent is none of those taken, or no longer."
    ),
    Kind("not_found", 404, "There is nothing here", "Calculations are POST /v1/..., tables GET /v1/tables/..."),
    Kind(
        "method_not_allowed",
        405,
        "The method is not allowed here",
        "A calculation is a POST, a table a GET or HEAD; the Allow header names the methods.",
    ),
    Kind(
        "not_acceptable",
        406,
        "The answer is not given as that",
        "The Accept header takes none of the media types that the answer of this calculation is given as; the detail "
        "names them. Without the header, or with */*, it is application/json. A problem is always "
        "application/problem+json.",
    ),
    Kind(
        "too_slow",
        408,
        "The request came too slowly",
        "The head or the body of a request stopped coming, or came in a trickle. The connection is closed; send the "
        "same request again.",
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
        "unsupported_content_coding",
        415,
        "The body is packed",
        "A body is taken as it is: send it without Content-Encoding (gzip and the like).",
    ),
    Kind(
        "invalid_request",
        422,
        "The request is not valid",
        "The body is JSON but not a valid request. Each error names the member by a JSON Pointer, says what is wrong "
        "and, where there is a choice or a range, what is taken: allowed_values, or minimum and maximum. What is "
        "nearly a known value is never taken for it: suggestion says which one was probably meant.",
        REQUEST_CODES,
    ),
    Kind(
        "invalid_query",
        422,
        "A query parameter is not valid",
        "A calculation takes units (us or metric), working (true or false), assumptions (state or refuse) and request "
        "(completed), its drawing units and assumptions; a whole run, a batch and a stream take remedies (true or "
        "false) too; a table takes its filters and, if it has quantities, units; each at most once. Other "
        "paths take none.",
        QUERY_CODES,
    ),
    Kind(
        "unanswerable",
        422,
        "The question has no answer",
        f"The request is valid in form, but what it describes cannot be: {WITHOUT_ANSWER}. Each error names the member "
        "and what would be taken. Its code is one of the calculation; there may be more of them in time.",
    ),
    Kind(
        "assumptions_refused",
        422,
        "Assumptions would be needed",
        "The request asked with assumptions=refuse for an answer without assumptions. Each error names a member that "
        "was left out, and under assumption the value that would have been assumed.",
        ASSUMPTION_CODES,
    ),
    Kind(
        "malformed_http",
        400,
        "The request is not HTTP",
        "What was sent is no request of HTTP/1.1: an unknown method, a character that no head may hold, a body whose "
        "chunks or length are wrong, no Host header or two, an end before its time. The connection is closed.",
    ),
    Kind(
        "too_costly",
        422,
        "It asks for too much work",
        "For one request some ten seconds of work are done, for the items of a batch about a minute together. Divide a "
        "request as its detail says. Ask an item that had no more room in its batch by itself, in another batch, or as "
        "a line of a stream, which has no bound for all its lines.",
    ),
    Kind("target_too_long", 414, "The path and query are too long", "No path of this service is as long as that."),
    Kind("head_too_large", 431, "The headers are too large", "The headers of a request together may have so much."),
    Kind("internal_error", 500, "The service failed", "A fault of the service, not of the request. It is logged."),
    Kind(
        "overloaded",
        503,
        "The service is busy",
        "It has as much work as it can do in good time, and takes no more for a moment. Retry-After says when to send "
        "the same request again; nothing was computed for it.",
    ),
    Kind("not_ready", 503, "The service is not ready", "It is starting or stopping. Try again shortly."),
)
KINDS: Final = {kind.name: kind for kind in _ALL}
MEDIA_TYPE: Final = "application/problem+json"
Headers = Sequence[tuple[bytes, bytes]]


class RefusedAssumption(Struct, frozen=True, gc=False):
    """The value that would have been taken for want of one; a quantity too, where it is a figure."""

    text: Annotated[str, Meta(description="The value as a text.")]
    citation: Annotated[str, Meta(description="Where it comes from, or that it is practice.")]
    standing: Annotated[Standing, Meta(description="With what right it would be taken.")]
    source_id: Annotated[str | UnsetType, Meta(description="Id of the source in the table of sources.")] = UNSET
    quantity: Annotated[AnyQuantity | UnsetType, Meta(description="The value, where it is a figure.")] = UNSET


_CODES = ", ".join({**REQUEST_CODES, **QUERY_CODES, **ASSUMPTION_CODES})


class Fault(Struct, frozen=True, gc=False):
    """One fault of a request."""

    code: Annotated[
        str,
        Meta(description=f"Stable code, of request and query: {_CODES}; or one of a calculation{LISTED}."),
    ]
    message: Annotated[str, Meta(description="What is wrong and what to do next.")]
    pointer: Annotated[str | UnsetType, Meta(description="JSON Pointer of the member, as a URI fragment.")] = UNSET
    parameter: Annotated[str | UnsetType, Meta(description="Name of the query parameter.")] = UNSET
    minimum: Annotated[
        AnyQuantity | UnsetType, Meta(description="Least that is taken; what must be more is so in the message.")
    ] = UNSET
    maximum: Annotated[
        AnyQuantity | UnsetType, Meta(description="Most that is taken; what must be less is so in the message.")
    ] = UNSET
    allowed_values: Annotated[list[str] | UnsetType, Meta(description="The values or names that are taken.")] = UNSET
    suggestion: Annotated[
        str | UnsetType, Meta(description="Value or name that was probably meant: what was sent was not taken for it.")
    ] = UNSET
    assumption: Annotated[
        RefusedAssumption | UnsetType, Meta(description="What would have been assumed, had it not been refused.")
    ] = UNSET


class Problem(Struct, frozen=True, gc=False):
    """Problem details by RFC 9457."""

    type: Annotated[str, Meta(description="URI of the page that explains this kind of problem.")]
    title: Annotated[str, Meta(description="What kind of problem it is.")]
    status: Annotated[int, Meta(description="HTTP status.", ge=400, le=599)]
    detail: Annotated[str, Meta(description="What happened to this request.")]
    request_id: Annotated[str, Meta(description="Id of the request, also in X-Request-ID.")]
    errors: Annotated[
        list[Fault] | UnsetType,
        Meta(description="Every fault found, up to a thousand.", extra_json_schema={"maxItems": 1000}),
    ] = UNSET


class ProblemRaised(Exception):  # noqa: N818  (it becomes an answer, not a failure)
    """A request that ends in a problem."""

    def __init__(self, name: str, detail: str, errors: list[Fault] | None = None, headers: Headers = ()) -> None:
        """Keep the kind, the detail, the faults, and the headers that say what would be taken."""
        super().__init__(detail)
        self.kind = KINDS[name]
        self.detail = detail
        self.errors = errors
        self.headers = headers


def failure() -> ProblemRaised:
    """Give the problem of a fault that is the service's own."""
    return ProblemRaised("internal_error", "The service failed. Report the request id.")


_encode = json.Encoder().encode
_MOST_ERRORS = 1000


def body_of(kind: Kind, detail: str, request_id: str, errors: list[Fault] | None = None) -> bytes:
    """Write a problem."""
    shown = errors[:_MOST_ERRORS] if errors else UNSET
    return _encode(Problem(f"/problems/{kind.name}", kind.title, kind.status, detail, request_id, shown))


def page_of(kind: Kind) -> str:
    """Write the page that explains one kind of problem."""
    title, explanation = html.escape(kind.title), html.escape(kind.explanation)
    codes = "".join(f"<dt><code>{code}</code></dt>\n<dd>{html.escape(it)}</dd>\n" for code, it in kind.codes.items())
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<title>{title}</title>\n<link rel="stylesheet" href="../docs/assets/page.css">\n</head>\n<body>\n<main>\n'
        f"<h1>{title}</h1>\n<p>{explanation}</p>\n"
        f"<p>Status {kind.status}, type <code>/problems/{kind.name}</code>.</p>\n"
        f"{f'<h2>Codes of its errors</h2>{chr(10)}<dl>{chr(10)}{codes}</dl>{chr(10)}' if codes else ''}"
        '<p><a href="../docs">Operations and their fields</a></p>\n</main>\n</body>\n</html>\n'
    )
