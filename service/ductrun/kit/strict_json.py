"""JSON taken at its word: one value in UTF-8, every member once, every number finite.

What a calculation can read is strict already (see `kit.reading`). What it refuses is checked here in one pass of
a native parser, which refuses all but one of these, and only what fails there is looked at once more, slowly, to say
which rule it breaks. A number beyond double precision passes that parser as infinity: the request's validation refuses
it, and `explain` then tells it from an ordinary fault.
"""

from __future__ import annotations

import json
import math
import re
from typing import Any, NoReturn

import jiter

MAX_DEPTH = 200  # the native parser's own limit
_LONGEST_INTEGER = 400
_NESTING = re.compile(rb'"(?:[^"\\]++|\\.)*+"|[\[\]{}]')  # possessive: a long text costs no memory
_PASSES_THE_PARSER = re.compile(rb"\d[eE]|\d{300}|\\u[dD]")
_LONGEST_MATCH = 300
_WINDOW = 65_536  # bytes that are searched in one go: while a mebibyte is, nobody else has a turn
_SURROGATE = re.compile("[\ud800-\udfff]")


class NotStrictError(Exception):
    """A body that is no strict JSON; carries the name of the rule it breaks."""

    def __init__(self, rule: str, detail: str) -> None:
        """Keep the rule."""
        super().__init__(detail)
        self.rule = rule


def check(body: bytes) -> None:
    """Refuse a body that is not strict JSON; raises NotStrictError."""
    try:
        jiter.from_json(body, allow_inf_nan=False, catch_duplicate_keys=True, cache_mode="keys")
    except ValueError:
        explain(body)
        _refuse("malformed_json", "The body is not valid JSON.")


def explain_what_passes(body: bytes) -> None:
    """Raise the rule that a body breaks though the native parser takes it: a number beyond double precision, or one
    level more than are taken.
    """
    if any(_PASSES_THE_PARSER.search(body, at, at + _WINDOW + _LONGEST_MATCH) for at in range(0, len(body), _WINDOW)):
        explain(body)
    elif body.count(b"[") + body.count(b"{") > MAX_DEPTH:
        try:
            jiter.from_json(b"[%b]" % body)  # whose own limit is one level beyond ours
        except ValueError:
            explain(body)


def explain(body: bytes) -> None:
    """Raise the rule a body breaks, if it breaks one of those that are told by a name of their own."""
    if not body.strip():
        _refuse("malformed_json", "The body is empty.")
    try:
        text = body.decode("utf-8")
    except UnicodeDecodeError as error:
        _refuse("invalid_utf8", f"The body is not UTF-8 (byte {error.start}).")
    if text.startswith("\ufeff"):
        _refuse("invalid_utf8", "The body must not start with a byte order mark.")
    if _depth(body) > MAX_DEPTH:
        _refuse("too_deep", f"The body is nested more than {MAX_DEPTH} deep.")
    try:
        value = json.loads(
            text,
            object_pairs_hook=_members,
            parse_constant=_constant,
            parse_float=_float,
            parse_int=_integer,
        )
    except json.JSONDecodeError as error:
        place = f"line {error.lineno}, column {error.colno}" if "\n" in text else f"column {error.colno}"
        _refuse("malformed_json", f"The body is not valid JSON ({place}).")
    if _has_lone_surrogate(value):
        _refuse("lone_surrogate", "A text of the body has half a surrogate pair.")


def _refuse(rule: str, detail: str) -> NoReturn:
    raise NotStrictError(rule, detail)


def _depth(body: bytes) -> int:
    depth = deepest = 0
    for match in _NESTING.finditer(body):
        mark = match.group()
        if mark in b"[{":
            depth += 1
            deepest = max(deepest, depth)
        elif mark in b"]}":
            depth -= 1
    return deepest


def _members(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    members = dict(pairs)
    if len(members) != len(pairs):
        _refuse("duplicate_member", "An object of the body has two members of the same name.")
    return members


def _constant(_name: str) -> NoReturn:
    _refuse("non_finite_number", "NaN and Infinity are not numbers of JSON.")


def _float(text: str) -> float:
    number = float(text)
    if math.isinf(number):
        _refuse("non_finite_number", "A number of the body is beyond double precision.")
    return number


def _integer(text: str) -> float:
    if len(text) > _LONGEST_INTEGER:
        _refuse("number_too_long", f"A whole number of the body has more than {_LONGEST_INTEGER} digits.")
    return _float(text)


def _has_lone_surrogate(value: Any) -> bool:
    if isinstance(value, str):
        return _SURROGATE.search(value) is not None
    if isinstance(value, list):
        return any(map(_has_lone_surrogate, value))
    if isinstance(value, dict):
        return any(_has_lone_surrogate(item) for pair in value.items() for item in pair)
    return False
