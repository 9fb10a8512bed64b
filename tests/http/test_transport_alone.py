"""The web layer is transport and nothing else: of what is calculated it writes no word of its own."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import ductrun.http
import ductrun.kit.answering
import pytest

TRADE = re.compile(
    r"\b(NFPA|AWG|kcmil|PVC|concrete|envelopes?|bores?|ducts?|conduits?|conductors?|cables?|trench(es)?|raceways?"
    r"|voltages?|friction|spacers?|pulls?|tensions?)\b",
    re.IGNORECASE,
)
MODULES = sorted(Path(ductrun.http.__file__).parent.glob("*.py"))


def texts_of(source: str) -> Iterator[str]:
    yield from (
        node.value for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Constant) and type(node.value) is str
    )


@pytest.mark.parametrize("module", MODULES, ids=lambda path: path.stem)
def test_no_sentence_of_the_web_layer_speaks_of_the_trade(module: Path) -> None:
    said = [text for text in texts_of(module.read_text(encoding="utf-8")) if TRADE.search(text)]
    assert said == []


def test_what_answers_says_nothing_of_the_web() -> None:
    source = Path(ductrun.kit.answering.__file__).read_text(encoding="utf-8")
    assert not re.search(r"\b(http|status|header|starlette|fastapi|scope)\b", source, re.IGNORECASE)
