"""A question on its way out and its answer on the way in, for sync and async alike: nothing here waits or connects."""

from __future__ import annotations

import inspect
import random
import warnings
from collections.abc import Mapping
from datetime import datetime, timezone
from email.utils import parsedate_to_datetime
from functools import cache
from typing import Any, NamedTuple

import httpx
import msgspec

from .errors import ProblemError, UnexpectedAnswerError, media_type_of
from .giving import to_send
from .models import Problem

_WORTH_ANOTHER_TRY = (
    httpx.ConnectError,
    httpx.ConnectTimeout,
    httpx.ReadTimeout,
    httpx.WriteTimeout,
    httpx.ReadError,
    httpx.WriteError,
    httpx.RemoteProtocolError,
)


class Call(NamedTuple):
    """What a call needs to know of its operation."""

    method: str
    path: str
    answer: Any
    request: Any
    query: tuple[str, ...]


class Retries(NamedTuple):
    """How often to ask again, and how long to wait: doubled each time, by chance between half of it and all.

    Only what may pass by itself is asked again: a 429, a 503, and a connection that fails or stalls. `Retry-After` is
    kept to if it asks for no more than `longest_wait`. A calculation changes nothing, so that asking twice does no
    harm.
    """

    times: int = 0
    first_wait: float = 0.5
    longest_wait: float = 30.0

    def wait_after(self, tried: int, outcome: httpx.Response | Exception) -> float | None:
        """Give the seconds to wait before the next try; None if there is to be none."""
        asked: float = 0.0
        if isinstance(outcome, httpx.Response):
            if outcome.status_code not in (429, 503):
                return None
            asked = _retry_after(outcome.headers.get("Retry-After", ""))
        elif not isinstance(outcome, _WORTH_ANOTHER_TRY):
            return None
        if tried > self.times or asked > self.longest_wait:
            return None
        usual: float = min(self.first_wait * 2 ** (tried - 1), self.longest_wait)
        return max(asked, usual * random.uniform(0.5, 1.0))  # noqa: S311


def _retry_after(text: str) -> float:
    if text.isdecimal():
        return float(text)
    try:
        return max(0.0, (parsedate_to_datetime(text) - datetime.now(timezone.utc)).total_seconds())  # noqa: UP017
    except (TypeError, ValueError):
        return 0.0


class Wire(NamedTuple):
    """A question as httpx takes it."""

    method: str
    path: str
    params: dict[str, str]
    content: bytes | None
    headers: dict[str, str]

    def request(self, client: httpx.Client | httpx.AsyncClient) -> httpx.Request:
        """Make the request, with everything that is set at the client of httpx."""
        return client.build_request(
            self.method, self.path, params=self.params, content=self.content, headers=self.headers
        )


def wire_of(call: Call, body: tuple[Any, ...], given: Mapping[str, Any]) -> Wire:
    """Write a question: the members that were given by name, or the whole request, and the query."""
    params = params_of({name: given[name] for name in call.query if name in given})
    if call.request is None:
        return Wire(call.method, call.path, params, None, {"Accept": "application/json"})
    members = {name.removesuffix("_"): value for name, value in given.items() if name not in call.query}
    if body and (members or len(body) > 1):
        taken = ", ".join(call.query)
        raise TypeError(f"give one whole request, and beside it {taken}; not {', '.join(members) or 'several'}")
    asked = body[0] if body else {name: value for name, value in members.items() if value is not None}
    headers = {"Accept": "application/json", "Content-Type": "application/json"}
    return Wire(call.method, call.path, params, encoded(to_send(asked, call.request)), headers)


def wire_of_document(call: Call, media_type: str, body: object, given: Mapping[str, Any]) -> Wire:
    """Write a question whose answer is wanted in another form."""
    headers = {"Accept": media_type, "Content-Type": "application/json"}
    return Wire(call.method, call.path, params_of(given), encoded(to_send(body, call.request)), headers)


def params_of(given: Mapping[str, Any]) -> dict[str, str]:
    """Write the query."""
    texts = {True: "true", False: "false"}
    return {
        name: texts[value] if isinstance(value, bool) else str(value)
        for name, value in given.items()
        if value is not None
    }


encoded = msgspec.json.Encoder().encode


@cache
def _decoder(kind: Any) -> msgspec.json.Decoder[Any]:
    return msgspec.json.Decoder(kind)


def answer_of(response: httpx.Response, kind: Any) -> Any:
    """Read an answer; what is none is an error."""
    media_type = expected(response)
    if media_type != "application/json" or not response.is_success:
        raise UnexpectedAnswerError(response.status_code, response.headers, response.content)
    try:
        return _decoder(kind).decode(response.content)
    except (msgspec.DecodeError, UnicodeDecodeError) as fault:
        why = f"this client cannot read that ({fault}): it may be older than the service by a version"
        raise UnexpectedAnswerError(response.status_code, response.headers, response.content, why) from fault


def document_of(response: httpx.Response, media_type: str) -> bytes:
    """Give an answer in another form as it came."""
    if expected(response) != media_type or not response.is_success:
        why = f"no {media_type} came"
        raise UnexpectedAnswerError(response.status_code, response.headers, response.content, why)
    return response.content


def expected(response: httpx.Response) -> str:
    """Give the media type of an answer; a problem is raised, and that the operation is to end is warned of."""
    media_type = media_type_of(response.headers)
    if "Deprecation" in response.headers:
        end = response.headers.get("Sunset")
        told = f"{response.request.url.path} is deprecated{f' and ends on {end}' if end else ''}"
        warnings.warn(told, DeprecationWarning, stacklevel=_steps_to_caller())
    if media_type == "application/problem+json":
        try:
            problem = _decoder(Problem).decode(response.content)
        except (msgspec.DecodeError, UnicodeDecodeError):
            return media_type
        raise ProblemError(problem, response.headers)
    return media_type


def _steps_to_caller() -> int:
    """Give how many frames lie between what warns and the code that uses this client, which the warning is for."""
    steps, frame = 0, inspect.currentframe()
    while frame is not None and str(frame.f_globals.get("__name__")).partition(".")[0] == "ductrun_client":
        steps, frame = steps + 1, frame.f_back
    return steps
