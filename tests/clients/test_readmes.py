"""The examples in the READMEs of the Python client, run as they stand."""

from __future__ import annotations

import re

import pytest
from tools.client_mobile import five_of_swift
from tools.clients import CLIENT

pytestmark = pytest.mark.live
README = (CLIENT / "README.md").read_text(encoding="utf-8")
EXAMPLES = re.findall(r"^```python\n(.*?)^```", README, re.MULTILINE | re.DOTALL)
TOLD = [  # what each prints, in order, by hand: ceil(300 / 5) + 1 = 61 stations; (5 * 0.3237 + 0.042) in2 of 3.291 in2
    # are 50.5 %; 200 ft * 12 in/ft * 3.38e-5 1/degF * 100 degF = 8.112 in; 100 / 1.8 = 55.6
    r"61 \[.*\]\n",
    r"violates 50\.5 40\.0\n",
    r"55\.6 delta_degree_Celsius 8\.11\d* inch\n/length: 300 pound is of another dimension; give a length in mm, .*\n",
    r"(#/cover/\w+ missing None\n){2}",
    r"\d+\n",
    r"\[25, 61, 91\]\n",
    r"ready\n",
]


@pytest.mark.parametrize(("example", "told"), list(zip(EXAMPLES, TOLD, strict=True)))
def test_an_example_runs_as_it_stands(
    example: str, told: str, address: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert "http://127.0.0.1:8000" in example
    exec(compile(example.replace("http://127.0.0.1:8000", address), "README.md", "exec"), {})  # noqa: S102
    assert re.fullmatch(told, capsys.readouterr().out)


def test_the_five_lines_of_every_language_are_those_that_are_run() -> None:
    """Python and TypeScript as their own pages have them, which are run; Kotlin as the program that is compiled, Swift
    as the one that is read.
    """
    text = (CLIENT.parent / "README.md").read_text(encoding="utf-8")
    five = dict(re.findall(r"^```(\w+)\n(.*?)^```", text, re.MULTILINE | re.DOTALL))
    assert set(five) == {"python", "ts", "kotlin", "swift"}
    for body in five.values():
        assert 3 <= len([line for line in body.splitlines() if line.strip()]) <= 5
    typescript = (CLIENT.parent / "typescript" / "README.md").read_text(encoding="utf-8")
    program = (CLIENT.parent / "mobile" / "Five.kt").read_text(encoding="utf-8")
    assert set(five["python"].splitlines()[:4]) <= set(README.splitlines())
    assert set(five["ts"].splitlines()[:3]) <= set(typescript.splitlines())
    for line in five["kotlin"].splitlines()[1:3]:
        assert line in program
    assert set(five["swift"].splitlines()) <= set(five_of_swift().splitlines())
