"""The pull that docs/braked_pull.md works by hand, against the service."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest

from tests.asking import result

PAGE = (Path(__file__).resolve().parents[2] / "docs" / "braked_pull.md").read_text(encoding="utf-8")
FIGURES = re.findall(r"^\| `(\S+)` \| ([\d.]+) (\S+) \|$", PAGE, re.MULTILINE)


@pytest.fixture(scope="module")
def answer() -> dict[str, Any]:
    [request] = re.findall(r"```json\n(.*?)```", PAGE, re.DOTALL)
    return result("pull-tension", json.loads(request))


@pytest.mark.parametrize(("member", "figure", "unit"), FIGURES)
def test_a_figure_worked_by_hand_is_that_of_the_answer(
    answer: dict[str, Any], member: str, figure: str, unit: str
) -> None:
    node: Any = answer
    for name in member.split("/"):
        node = node[int(name)] if name.isdigit() else node[name]
    digits = len(figure.partition(".")[2])
    assert node["unit"] == unit
    assert node["value"] == pytest.approx(float(figure), abs=0.5000001 * 10**-digits)


def test_the_page_gives_every_figure_it_was_checked_by() -> None:
    worked, told = PAGE.split("| member of the answer")
    assert 0 < len(FIGURES) == len(re.findall(r"^\| `", told, re.MULTILINE))
    for _, figure, _ in FIGURES:
        assert f"{float(figure):,.{len(figure.partition('.')[2])}f}" in worked
