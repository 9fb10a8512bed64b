"""Every member of every answer is asserted by some test: what no test names can be told wrongly unseen."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any, get_args, get_type_hints

import pytest
from ductrun import units
from ductrun.kit.answers import Answer
from ductrun.subjects import OPERATIONS
from msgspec import Struct

TESTS = Path(__file__).parents[1]
NAMED = re.compile(r"[\"'](\w+)[\"']|\.(\w+)\b")
RECORDS: list[tuple[str, type[Struct]]] = [
    ("answer", Answer),
    *((operation.name, operation.result) for operation in OPERATIONS),
]


def members(record: Any) -> Iterator[str]:
    """Give the name of every member of a record, and of the records and lists within it."""
    if isinstance(record, type) and issubclass(record, Struct):
        if record.__module__.startswith(units.__name__):
            return
        yield from record.__struct_fields__
        for within in get_type_hints(record).values():
            yield from members(within)
    for argument in get_args(record):
        yield from members(argument)


def named_in(text: str) -> set[str]:
    """Give what a test names, as a text or as a member."""
    return {quoted or dotted for quoted, dotted in NAMED.findall(text)}


OTHERS = [path for path in TESTS.rglob("test_*.py") if path.name != Path(__file__).name]
ASSERTED = named_in("\n".join(path.read_text(encoding="utf-8") for path in OTHERS))


@pytest.mark.parametrize(("name", "record"), RECORDS, ids=lambda one: one if isinstance(one, str) else "")
def test_every_member_of_an_answer_is_named_in_a_test(name: str, record: type[Struct]) -> None:
    assert sorted(set(members(record)) - ASSERTED) == []


class Inner(Struct):
    depth: float


class Outer(Struct):
    width: float
    inner: list[Inner]


def test_members_are_looked_for_in_the_records_of_a_record_too() -> None:
    assert list(members(Outer)) == ["width", "inner", "depth"]
    assert named_in("found['width'] == inner.depth, width_of_nothing") == {"width", "depth"}
