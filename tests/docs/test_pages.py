"""The pages against the service: their examples are real answers, and their commands run as they stand."""

from __future__ import annotations

import json
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from ductrun.http.problems import KINDS
from ductrun.subjects import OPERATIONS
from tools.asking import post
from tools.live import serving
from tools.pages import (
    EXAMPLES,
    JOB,
    PAGES,
    PART,
    PARTS,
    REPOSITORY,
    RUN,
    Example,
    example_files,
    examples,
    file_of,
    masked,
    questions,
)

from tests.asking import document_of, rows_of

TEXTS = {page.name: page.read_text(encoding="utf-8") for page in PAGES}
PAGE = TEXTS["README.md"]
STREAM = TEXTS["stream.md"]
SHOWN = [example for text in TEXTS.values() for example in examples(text)]
LOCAL = "http://127.0.0.1:8000"
MEND = "a page has drifted from the service: .venv/bin/python -m tools.pages --write"
each_shown = pytest.mark.parametrize("example", SHOWN, ids=[example.path for example in SHOWN])


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


def test_every_status_of_a_problem_is_told() -> None:
    rows = re.findall(r"^\| (\d{3}(?:, \d{3})*) \|", PAGE, re.MULTILINE)
    told = [int(status) for row in rows for status in row.split(", ")]
    assert sorted(told) == sorted({kind.status for kind in KINDS.values()})


def fences(text: str, language: str) -> list[str]:
    return re.findall(rf"```{language}\n(.*?)```", text, re.DOTALL)


@each_shown
def test_a_worked_example_shows_the_real_answer(example: Example) -> None:
    same(json.loads(example.answer), masked(post(example.path, example.body.encode())))


def test_every_command_with_a_body_is_held_to_its_answer() -> None:
    for name, text in TEXTS.items():
        assert text.count(" -d '{") == len(list(examples(text))), name


def test_the_generated_parts_of_the_pages_are_those_of_the_service() -> None:
    found = [(part[1], part[0]) for text in TEXTS.values() for part in PART.finditer(text)]
    assert {name for name, _ in found} == set(PARTS)
    for name, text in found:
        assert PARTS[name]() in text, MEND


def test_every_operation_has_its_question_in_the_order_of_a_job() -> None:
    assert list(questions()) == [operation.name for operation in OPERATIONS]


def test_every_operation_has_its_full_answer_among_the_examples() -> None:
    kept = {path.name for path in EXAMPLES.iterdir()} - {JOB.name, RUN.name}
    assert json.loads(RUN.read_text(encoding="utf-8")) == next(
        one.example for one in OPERATIONS if one.name == "duct-run"
    ), MEND
    real = example_files()
    assert kept == set(real) == {file_of(operation.name) for operation in OPERATIONS} | {"whole_job.json"}, MEND
    for name, example in real.items():
        text = (EXAMPLES / name).read_text(encoding="utf-8")
        same(json.loads(text), example)
        assert '"tables_version": "hash of all tables"' in text


def test_an_example_shows_an_answer_with_its_working_and_the_whole_job_has_no_problem() -> None:
    for operation in OPERATIONS:
        example = json.loads((EXAMPLES / file_of(operation.name)).read_text(encoding="utf-8"))
        assert example["request"] == operation.example
        assert "working" in example["answer"]
    job = json.loads((EXAMPLES / "whole_job.json").read_text(encoding="utf-8"))
    assert [item["status"] for item in job["answer"]["items"]] == [200] * len(job["request"]["items"])


def test_a_link_between_the_pages_leads_somewhere() -> None:
    for page in PAGES:
        for target in re.findall(r"\]\(([^)#:]+)(?:#[^)]*)?\)", TEXTS[page.name]):
            assert (page.parent / target).exists(), target
    headings = re.findall(r"^## (.*)$", TEXTS["questions.md"], re.MULTILINE)
    anchors = {re.sub(r"[^a-z0-9 -]", "", heading.lower()).replace(" ", "-") for heading in headings}
    linked = re.findall(r"docs/questions\.md#([^)]+)", PAGE)
    assert set(linked) <= anchors
    assert len(linked) == len(OPERATIONS) + 1


def test_readme_is_read_in_one_go_and_opens_with_the_job() -> None:
    assert len(PAGE.splitlines()) < 300
    opening = PAGE.split("\n\n")[1]
    assert "conduit run on a drawing" in opening
    assert "stateless REST service" in opening


def test_readme_counts_the_published_values_that_are_held() -> None:
    """What is lost from a file of published values is missed here."""
    construction, pulling = (document_of(f"{name}.json") for name in ("construction", "pulling"))
    feeders = document_of("feeders.json")
    concrete = [cell for cell in construction["table_cells"] if cell["table"].startswith("concrete")]
    expansion = len(rows_of("expansion_cells.csv")) + len(construction["table_cells"]) - len(concrete)
    told = " ".join(PAGE.split())
    for count, of_what in (
        (len(rows_of("conductor_counts.csv")), "conductor counts of Annex C"),
        (len(rows_of("fill_examples.csv")), "fill examples and table cells"),
        (expansion, "cells of expansion tables"),
        (len(concrete), "cells and five examples of concrete quantities"),
        (len(pulling["published_steps"]), "single figures of pulling manuals"),
        (sum(len(row["amperes"]) for row in feeders["ampacity"]), "ampacities of ducts in concrete"),
        (len(feeders["impedance"]), "effective impedances"),
    ):
        assert f"{count} {of_what}" in told


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    with serving() as started:
        yield started


def ran(command: list[str]) -> list[str]:
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=30, cwd=REPOSITORY)
    return done.stdout.splitlines()


@pytest.mark.live
@each_shown
def test_a_command_of_a_page_gives_what_stands_below_it(example: Example, address: str) -> None:
    [command] = fences(example.call, "sh")
    [line] = ran(["bash", "-c", command.replace(LOCAL, address)])
    same(json.loads(example.answer), masked(json.loads(line)))


@pytest.mark.live
def test_the_whole_run_of_the_page_and_the_whole_job_are_answered(address: str) -> None:
    [command] = [one for one in fences(PAGE, "sh") if "/v1/duct-run" in one]
    [line] = ran(["bash", "-c", command.replace(LOCAL, address)])
    answer = json.loads(line)
    assert answer["verdict"] == "not_judged"
    assert not any(one["severity"] == "violation" for one in answer["findings"])
    command = command.replace("/v1/duct-run", "/v1/batch").replace("duct_run_request", "whole_job_request")
    [line] = ran(["bash", "-c", command.replace(LOCAL, address)])
    kept = json.loads((EXAMPLES / "whole_job.json").read_text(encoding="utf-8"))
    same(kept["answer"], masked(json.loads(line)))


@pytest.mark.live
def test_the_python_of_the_pages_runs(address: str, capsys: Any) -> None:
    for program in fences(PAGE, "python") + fences(STREAM, "python"):
        exec(program.replace(LOCAL, address), {})  # noqa: S102
    single, stream = capsys.readouterr().out.splitlines()
    assert single.startswith("61 [['#/interval']")
    assert stream == "1000 21 221"


@pytest.mark.live
def test_the_stream_of_the_page_runs_through_curl(address: str) -> None:
    [printed] = fences(STREAM, "json")
    [command] = fences(STREAM, "sh")
    found = ran(["bash", "-c", command.replace(LOCAL, address)])
    assert len(found) == len(printed.splitlines())
    for line, real in zip(printed.splitlines()[:-1], found[:-1], strict=True):
        assert all(part in real for part in re.split(r" ?(?:, )?\.\.\.,? ?", line.rstrip("}"))), (line, real)
    assert found[-1] == printed.splitlines()[-1]


@pytest.mark.live
def test_the_stream_of_the_page_runs_through_node(address: str, tmp_path: Path) -> None:
    [program] = fences(STREAM, "js")
    (tmp_path / "stream.mjs").write_text(program.replace(LOCAL, address), encoding="utf-8")
    assert ran(["node", str(tmp_path / "stream.mjs")]) == [
        "bank of 3: 183 pieces",
        "bank of 6: 366 pieces",
        "bank of 9: 549 pieces",
        "3 answered, 0 failed",
    ]
