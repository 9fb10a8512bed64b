"""README against the service: its examples are real answers, and its commands run as they stand."""

from __future__ import annotations

import json
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from ductrun.subjects import OPERATIONS
from tools.live import serving
from tools.pages import README, crew_table, examples, masked, operations

from tests.asking import ask

PAGE = README.read_text(encoding="utf-8")
EXAMPLES = list(examples(PAGE))
MEND = "README has drifted from the service: .venv/bin/python -m tools.pages --write"


def leaves(node: Any) -> list[Any]:
    if isinstance(node, dict):
        return [item for key, value in node.items() for item in (key, *leaves(value))]
    return [item for value in node for item in leaves(value)] if isinstance(node, list) else [node]


def same(printed: Any, real: Any) -> None:
    one, other = leaves(printed), leaves(real)
    assert len(one) == len(other), MEND
    for printed_leaf, real_leaf in zip(one, other, strict=True):
        close = pytest.approx(real_leaf, rel=1e-9) if isinstance(real_leaf, float) else real_leaf
        assert printed_leaf == close, MEND


def fences(text: str, language: str) -> list[str]:
    return re.findall(rf"```{language}\n(.*?)```", text, re.DOTALL)


@pytest.mark.parametrize(("operation", "request_", "below"), EXAMPLES, ids=[example[0] for example in EXAMPLES])
def test_a_worked_example_shows_the_real_answer(operation: str, request_: str, below: str) -> None:
    [printed] = fences(below, "json")
    same(json.loads(printed), masked(ask(operation, json.loads(request_))))


def test_every_calculation_has_an_example_and_a_row() -> None:
    assert [example[0] for example in EXAMPLES] == [operation.name for operation in OPERATIONS]
    assert operations() in PAGE, MEND
    assert crew_table(PAGE) in PAGE, MEND


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    with serving() as started:
        yield started


@pytest.mark.live
@pytest.mark.parametrize(("operation", "request_", "below"), EXAMPLES, ids=[example[0] for example in EXAMPLES])
def test_a_command_of_the_page_gives_what_stands_below_it(
    operation: str, request_: str, below: str, address: str
) -> None:
    [command] = fences(below, "sh")
    [printed] = fences(below, "json")
    done = subprocess.run(
        ["bash", "-c", command.replace("http://127.0.0.1:8000", address)],
        capture_output=True,
        text=True,
        check=True,
        timeout=30,
    )
    same(json.loads(printed), masked(json.loads(done.stdout)))


@pytest.mark.live
def test_the_python_of_the_page_runs(address: str, monkeypatch: pytest.MonkeyPatch, capsys: Any) -> None:
    monkeypatch.syspath_prepend(str(README.parent / "clients" / "python"))
    for program in fences(PAGE, "python"):
        exec(program.replace("http://127.0.0.1:8000", address), {})  # noqa: S102
    single, stream = capsys.readouterr().out.splitlines()
    assert single.startswith("61 [['#/interval']")
    assert stream == "1000 21 221"


def ran(command: list[str]) -> list[str]:
    return subprocess.run(command, capture_output=True, text=True, check=True, timeout=30).stdout.splitlines()


@pytest.mark.live
def test_the_stream_of_the_page_runs_through_curl(address: str) -> None:
    section = PAGE.partition("<!-- run -->")[2]
    [printed, *_] = fences(section, "json")
    found = ran(["bash", "-c", fences(section, "sh")[0].replace("http://127.0.0.1:8000", address)])
    assert len(found) == len(printed.splitlines())
    for shown, real in zip(printed.splitlines()[:-1], found[:-1], strict=True):
        assert all(part in real for part in re.split(r" ?(?:, )?\.\.\.,? ?", shown.rstrip("}"))), (shown, real)
    assert found[-1] == printed.splitlines()[-1]


@pytest.mark.live
def test_the_stream_of_the_page_runs_through_node(address: str, tmp_path: Path) -> None:
    [program] = fences(PAGE, "js")
    (tmp_path / "stream.mjs").write_text(program.replace("http://127.0.0.1:8000", address), encoding="utf-8")
    assert ran(["node", str(tmp_path / "stream.mjs")]) == [
        "bank of 3: 183 pieces",
        "bank of 6: 366 pieces",
        "bank of 9: 549 pieces",
        "3 answered, 0 failed",
    ]


def test_the_opening_paragraph_says_the_job() -> None:
    opening = PAGE.split("\n\n")[1]
    assert "conduit run on a drawing" in opening
    assert "stateless REST service" in opening
