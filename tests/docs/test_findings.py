"""The page of codes is that of the source, and knows every code that an answer carries."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest
from tools.findings import page, told_in
from tools.pages import CODES, EXAMPLES
from tools.sentences import BLANK

PAGE = CODES.read_text(encoding="utf-8")
ROWS = re.findall(r"^\| `(.+?)` \| (.+?) \| (.+) \|$", PAGE, re.MULTILINE)
MEND = "the page of codes has drifted from the source: .venv/bin/python -m tools.pages --write"


def codes_in(node: Any, member: str) -> set[str]:
    if isinstance(node, dict):
        own = {one["code"] for one in node.get(member, ())}
        return own.union(*(codes_in(one, member) for one in node.values()))
    return set[str]().union(*(codes_in(one, member) for one in node)) if isinstance(node, list) else set()


def test_the_page_of_codes_is_that_of_the_source() -> None:
    assert page() == PAGE, MEND


def test_every_code_of_the_example_answers_stands_there_as_what_it_is() -> None:
    answers = [json.loads(path.read_text(encoding="utf-8")) for path in EXAMPLES.glob("*.json")]
    findings, cautions = codes_in(answers, "findings"), codes_in(answers, "cautions")
    assert len(findings) >= 20
    assert findings <= {code for code, kind, _ in ROWS if kind in ("violation", "caution", "note")}
    assert cautions <= {code for code, kind, _ in ROWS if kind == "usual caution"}


def test_no_code_and_no_severity_is_left_open() -> None:
    assert all(re.fullmatch(r"[a-z0-9_]+", code) for code, _, _ in ROWS)
    assert {kind for _, kind, _ in ROWS} == {"violation", "caution", "note", "usual caution", "fault"}


def test_hardly_a_sentence_says_nothing() -> None:
    told = [sentence for _, _, sentence in ROWS]
    assert sum(len(sentence.replace(BLANK, "")) < 15 for sentence in told) <= 1


SOURCE = """
_HELD = {1: ("held_by_earth", "The ground holds it."), 2: ("held_by_concrete", "Concrete holds it.")}

def judge(sheet, over, share, where):
    severity = Severity.VIOLATION if over else Severity.CAUTION
    code = "too_full" if over else "nearly_full"
    sheet.find(severity, code, f"{share} percent is {'over' if over else 'near'} the limit{where}.", RULE)

def tell(sheet, kind):
    code, sentence = _HELD[kind]
    sheet.find(Severity.NOTE, code, sentence, RULE)
    sheet.caution("dig_safely", "Mind the trench" ".", RULE)

def refuse(sheet):
    _refuse(sheet, "too_deep")
    raise sheet.fault("depth", "past_the_end", "It ends | here.")

def _refuse(sheet, code):
    raise sheet.fault("depth", code, "So deep none is laid.")
"""
TOLD = [
    ("dig_safely", "usual caution", "Mind the trench."),
    ("held_by_concrete", "note", "Concrete holds it."),
    ("held_by_earth", "note", "The ground holds it."),
    ("nearly_full", "caution", "… percent is near the limit…."),
    ("past_the_end", "fault", "It ends \\| here."),
    ("too_deep", "fault", "So deep none is laid."),
    ("too_full", "violation", "… percent is over the limit…."),
]


def test_what_is_said_together_is_read_together(tmp_path: Path) -> None:
    (tmp_path / "judged.py").write_text(SOURCE, encoding="utf-8")
    assert [tuple(one) for one in told_in(tmp_path)] == TOLD


@pytest.mark.parametrize("before", [7, 2])
def test_what_is_set_after_or_set_anew_is_not_said(before: int, tmp_path: Path) -> None:
    lines = [
        "def tell(sheet):",
        '    code = "first"',
        '    code = "second"',
        "    sheet.find(Severity.NOTE, code, 'x', RULE)",
    ]
    lines += ['    code = "third"'] * (before == 7)
    (tmp_path / "judged.py").write_text("\n".join(lines), encoding="utf-8")
    assert [one.code for one in told_in(tmp_path)] == ["second"]
