"""Free text in a request: hostile texts are read as they are, members given twice are never passed over."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.http.refusals import problem_of
from ductrun.kit.answering import Chosen, InvalidRequestError, answer_to
from ductrun.kit.forms import Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.strict_json import NotStrictError
from ductrun.kit.texts import Name, Note
from ductrun.kit.worksheet import Worksheet
from hypothesis import given
from hypothesis import strategies as st
from msgspec import Struct
from pydantic import Field


class Part(Form):
    """A named part."""

    name: Omissible[Name] = Field(default=None, description="Its name.")
    count: int = Field(description="How many.")


class Whole(Form):
    """Named parts."""

    name: Name = Field(description="Its name.")
    note: Omissible[Note] = Field(default=None, description="A remark.")
    parts: Annotated[list[Part], Field(max_length=10)] = Field(description="Its parts.")


class Echo(Struct):
    """What was read."""

    texts: list[str]
    counts: list[int]


def assess(request: Any, _sheet: Worksheet) -> Echo:
    given = [request.name, request.note, *(part.name for part in request.parts)]
    return Echo([text for text in given if text is not None], [part.count for part in request.parts])


ANSWER = answer_to(
    Operation(
        "echo",
        "echo_texts",
        "Echo",
        "Gives texts back.",
        Whole,
        Echo,
        assess,
        lambda echo, _telling: echo,
        {"name": "a", "parts": []},
    )
)
PIECES = [*':"{}[],\\ aé', "\U0001f600", '":1,"', "\\u003a"]
HOSTILE = st.lists(st.sampled_from(PIECES), min_size=1, max_size=12).map("".join)


def ask(body: bytes) -> Any:
    return json.loads(ANSWER(body, Chosen()))["result"]


def spelled(draw: Any, text: str) -> str:
    """Write a text as JSON, some of its characters escaped."""
    return '"' + "".join(_spelled(draw(st.booleans()), character) for character in text) + '"'


def _spelled(escaped: bool, character: str) -> str:
    plain = json.dumps(character, ensure_ascii=False)[1:-1]
    return json.dumps(character)[1:-1] if escaped and ord(character) > 127 else plain


@st.composite
def objects(draw: Any) -> tuple[str, dict[str, Any], bool]:
    """Draw a body as text, what it says, and whether a member is given twice."""
    twice = False

    def written(members: list[tuple[str, str]]) -> str:
        nonlocal twice
        if members and draw(st.integers(0, 5)) == 0:
            members = [*members, draw(st.sampled_from(members))]
            twice = True
        return "{" + ", ".join(f'"{name}":{value}' for name, value in members) + "}"

    value: dict[str, Any] = {"name": draw(HOSTILE), "parts": []}
    parts = []
    for _ in range(draw(st.integers(0, 3))):
        part = {"name": draw(HOSTILE), "count": draw(st.integers(0, 9))}
        value["parts"].append(part)
        parts.append(written([("name", spelled(draw, part["name"])), ("count", str(part["count"]))]))
    body = written([("name", spelled(draw, value["name"])), ("parts", "[" + ",".join(parts) + "]")])
    return body, value, twice


@given(drawn=objects())
def test_a_member_given_twice_is_refused_whatever_the_texts_hold(drawn: tuple[str, dict[str, Any], bool]) -> None:
    body, value, twice = drawn
    if twice:
        with pytest.raises(NotStrictError, match="two members of the same name"):
            ask(body.encode())
        return
    found = ask(body.encode())
    assert found["texts"] == [value["name"], *(part["name"] for part in value["parts"])]
    assert found["counts"] == [part["count"] for part in value["parts"]]


@pytest.mark.parametrize("character", ["\n", "\x00", "\x7f", "\x85", "\u202e", "\u2066", "\u200f", "\u2028", "\u061c"])
@pytest.mark.parametrize("escaped", [True, False])
def test_control_and_direction_changing_characters_are_refused(character: str, escaped: bool) -> None:
    body = json.dumps({"name": f"abc{character}", "parts": []}, ensure_ascii=escaped).encode()
    with pytest.raises(InvalidRequestError) as refused:
        ask(body)
    [error] = problem_of(refused.value).errors or []
    assert (error.pointer, error.code) == ("#/name", "control_character")


def test_a_text_too_long_or_empty_is_refused() -> None:
    for name in ("", "x" * 81):
        with pytest.raises(InvalidRequestError):
            ask(json.dumps({"name": name, "parts": []}).encode())
    assert ask(json.dumps({"name": "x" * 80, "parts": []}).encode())["texts"] == ["x" * 80]
