"""What a request brings and how its answer goes out: query, media type, body within its limit; headers and body."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final
from urllib.parse import parse_qsl

from msgspec import UNSET
from starlette.types import Receive, Send

from ductrun.http.accepting import preferred
from ductrun.http.aside import ClientGone
from ductrun.http.problems import MEDIA_TYPE, Fault, ProblemRaised, body_of
from ductrun.http.suggestions import probably_meant
from ductrun.kit.answering import Chosen
from ductrun.kit.telling import METRIC, US

JSON: Final = ("application/json",)
VARY: Final = (b"vary", b"accept")
_OTHER_JSON = re.compile(r"application/.*\+json\Z")
_PARAMETER = re.compile(r';\s*([^=;\s"]+)\s*=\s*("(?:[^"\\]|\\.)*"|[^;"\s]*)')
_UTF8 = {"utf-8", "utf8"}
QUERY: Final[Mapping[str, Mapping[str, Any]]] = {
    "units": {"us": US, "metric": METRIC},
    "working": {"true": True, "false": False},
    "assumptions": {"state": False, "refuse": True},
    "request": {"completed": True},
}
_USUALLY: Final = {"units": "us", "working": "false", "assumptions": "state", "remedies": "false", "page": "sheet"}
REMEDYING: Final[Mapping[str, Mapping[str, Any]]] = {**QUERY, "remedies": {"true": True, "false": False}}


_USUAL = Chosen()
_NOWHERE: Final[Mapping[str, str]] = {}


def read_query(
    query: bytes,
    known: Mapping[str, Mapping[str, Any]] = REMEDYING,
    usual: Chosen = _USUAL,
    elsewhere: Mapping[str, str] = _NOWHERE,
) -> Chosen:
    """Read the query of a calculation, or what of it a representation takes; `usual` is what is meant where it does not
    say, `elsewhere` has the media types with which a parameter is taken. Raises ProblemRaised with everything that is
    wrong with it.
    """
    if not query:
        return usual
    chosen = read_parameters(query, known, elsewhere)
    return Chosen(
        chosen.get("units", US),
        chosen.get("working", usual.working),
        chosen.get("assumptions", False),
        chosen.get("request", False),
        chosen.get("page", usual.page),
        chosen.get("remedies", False),
    )


def read_parameters(
    query: bytes, known: Mapping[str, Mapping[str, Any]], elsewhere: Mapping[str, str] = _NOWHERE
) -> dict[str, Any]:
    """Give what the query chooses of the parameters a path takes; raises ProblemRaised with everything wrong with it.

    Each parameter is known with its texts and what each stands for. What is not known is refused, never passed over.
    """
    chosen: dict[str, Any] = {}
    errors: list[Fault] = []
    for name, text in parse_qsl(query.decode("latin-1"), keep_blank_values=True):
        values = known.get(name)
        if values is None and name in elsewhere and text == _USUALLY.get(name):
            continue  # so it is, whatever the form of the answer
        if values is None:
            errors.append(unknown_parameter(name, list(known), elsewhere.get(name)))
        elif text not in values:
            errors.append(_not_allowed(name, text, list(values)))
        elif name in chosen:
            errors.append(Fault("repeated", f"{name} may be given once.", parameter=name))
        else:
            chosen[name] = values[text]
    if errors:
        raise ProblemRaised("invalid_query", f"{len(errors)} query parameter(s) cannot be used.", errors)
    return chosen


def unknown_parameter(name: str, known: list[str], taken_with: str | None = None) -> Fault:
    """Give the fault of a query parameter that there is not, or only where another form of the answer is asked."""
    meant = None if taken_with else probably_meant(name, known)
    allowed = f"There are: {', '.join(known)}." if known else "None is taken here."
    fault = f"It is taken only with Accept: {taken_with}." if taken_with else "There is no such query parameter."
    code = "not_with_this_form" if taken_with else "unknown_parameter"
    message = f"{fault} {_meant(meant)}{allowed}"
    return Fault(code, message, parameter=name[:100], allowed_values=known, suggestion=meant or UNSET)


_FEW = 12  # values that a sentence can list


def _not_allowed(name: str, text: str, values: list[str]) -> Fault:
    meant = probably_meant(text, values)
    choice = " or ".join(values) if len(values) <= _FEW else f"one of its {len(values)} allowed_values"
    message = f"{name} does not take this value. {_meant(meant)}Give {choice}."
    return Fault("not_allowed", message, parameter=name, allowed_values=values, suggestion=meant or UNSET)


def _meant(suggestion: str | None) -> str:
    return f"Probably {suggestion} is meant. " if suggestion else ""


def content_type_of(headers: Mapping[bytes, bytes], accepted: Sequence[str]) -> str:
    """Give the media type of the body, one of those accepted (or, for JSON, one that ends in +json), in UTF-8, and not
    packed: a content coding is refused, not passed over.
    """
    if headers.get(b"content-encoding", b"identity").strip().lower() not in {b"identity", b""}:
        raise _coding_refused()
    content_type = headers.get(b"content-type", b"").decode("latin-1").lower()
    if content_type in accepted:
        return content_type
    essence, semicolon, rest = content_type.partition(";")
    essence = essence.strip()
    if essence not in accepted and not ("application/json" in accepted and _OTHER_JSON.match(essence)):
        raise _media_type_refused(accepted)
    charsets = {value.strip('"') for name, value in _PARAMETER.findall(semicolon + rest) if name == "charset"}
    if not charsets <= _UTF8:
        raise _media_type_refused(accepted)
    return essence


def media_type_asked(headers: Iterable[tuple[bytes, bytes]], offered: tuple[str, ...]) -> str:
    """Give the media type of those offered that the headers ask for; an Accept that is given twice is one list."""
    accepted = ",".join([value.decode("latin-1") for name, value in headers if name == b"accept"])
    found = preferred(accepted, offered)
    if found is None:
        detail = (
            f"The answer is given as {' or '.join(dict.fromkeys(offered))}: ask for that, or send no Accept header."
        )
        raise ProblemRaised("not_acceptable", detail, headers=(VARY,))
    return found


def _media_type_refused(accepted: Sequence[str]) -> ProblemRaised:
    taken = ((b"accept-post", ", ".join(accepted).encode()),)
    detail = f"Send the body with Content-Type: {' or '.join(accepted)}, in UTF-8."
    return ProblemRaised("unsupported_media_type", detail, headers=taken)


def _coding_refused() -> ProblemRaised:
    detail = "Send the body as it is, without Content-Encoding."
    return ProblemRaised("unsupported_content_coding", detail, headers=((b"accept-encoding", b"identity"),))


async def read_body(headers: Mapping[bytes, bytes], receive: Receive, limit: int) -> bytes:
    """Read the body, whose content type must be JSON and whose size, declared or counted, must keep the limit."""
    declared = headers.get(b"content-length", b"")
    if declared.isdigit() and int(declared) > limit:
        raise _too_large(limit)
    content_type_of(headers, JSON)
    chunks: list[bytes] = []
    size = 0
    while True:
        message = await receive()
        if message["type"] == "http.disconnect":
            raise ClientGone
        chunk: bytes = message.get("body", b"")
        size += len(chunk)
        if size > limit:
            raise _too_large(limit)
        chunks.append(chunk)
        if not message.get("more_body", False):
            return b"".join(chunks)


def _too_large(limit: int) -> ProblemRaised:
    return ProblemRaised("body_too_large", f"A request may have {limit} bytes.")


async def send_written(
    send: Send, status: int, media_type: bytes, written: bytes, *more_headers: tuple[bytes, bytes]
) -> None:
    """Send an answer or a problem that is written already."""
    headers = [
        (b"content-type", media_type),
        (b"content-length", b"%d" % len(written)),
        (b"cache-control", b"no-store"),
        *more_headers,
    ]
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": written})


async def send_problem(send: Send, problem: ProblemRaised, request_id: str) -> None:
    """Send a problem."""
    written = body_of(problem.kind, problem.detail, request_id, problem.errors)
    await send_written(send, problem.kind.status, MEDIA_TYPE.encode(), written, *problem.headers)
