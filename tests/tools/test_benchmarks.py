"""The benchmarks themselves: baselines that do the work, a load that counts right, figures that tell what they are."""

from __future__ import annotations

import asyncio
import json
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from ductrun.subjects.pulling.pull_tension import PullTensionRequest
from tools.benchmarks.figures import Figure, picture, table, write
from tools.benchmarks.load import ask, blocks_of, request_bytes, stream, stream_for
from tools.benchmarks.pint_app import pull
from tools.benchmarks.streams import limit_of, serving

from tests.asking import EXAMPLES, result

FIGURES = [
    Figure("fast & enough", 2.0, "two of three", 1.5),
    Figure("too large", 30.0, "of all", 20.0, at_most=True, unit="MB"),
    Figure("only told", 5.0, "by itself", unit="MB"),
]


def test_the_pint_baseline_carries_the_same_pull() -> None:
    ours = result("pull-tension", EXAMPLES["pull-tension"])
    theirs = asyncio.run(pull(PullTensionRequest.model_validate_json(request_json())))
    for mine, other in ((ours, theirs["forward"]), (ours["reversed"], theirs["backward"])):
        for section, step in zip(mine["sections"], other, strict=True):
            assert step["tension_out"]["value"] == pytest.approx(section["tension_out"]["value"], rel=1e-6)


def request_json() -> bytes:
    return request_bytes("/", 0, EXAMPLES["pull-tension"]).partition(b"\r\n\r\n")[2]


def test_a_limit_is_the_time_of_one_item() -> None:
    assert 1e-6 < limit_of("cover", 50)() < 1


def test_blocks_hold_just_so_many_lines() -> None:
    for lines in (1, 999, 2_001, 10_000):
        assert b"".join(blocks_of("cover", lines)).count(b"\n") == lines


@pytest.mark.live
def test_the_load_asks_and_counts() -> None:
    with serving() as port:
        assert len(ask(port, request_bytes("/v1/cover", port, EXAMPLES["cover"]), 0.2, connections=2)) >= 2
        assert stream(port, blocks_of("cover", 1_500)) > 1
        assert stream_for(port, blocks_of("cover", 2_000), 1.0, streams=2) > 1
        with pytest.raises(RuntimeError, match="a stream failed"):
            stream(port, [b'{"id":"a","operation":"fill","request":{}}\n'])


def test_a_figure_is_reached_from_its_own_side() -> None:
    assert [figure.reached for figure in FIGURES] == [True, False, True]
    lines = table(FIGURES, "here").splitlines()
    assert lines[-3:] == [
        "| fast & enough | 2 x | at least 1.5 x | yes | two of three |",
        "| too large | 30 MB | at most 20 MB | no | of all |",
        "| only told | 5 MB |  |  | by itself |",
    ]


def test_the_picture_has_a_bar_for_each_figure_with_a_goal(tmp_path: Path) -> None:
    drawn = ET.fromstring(picture(FIGURES, "here"))  # noqa: S314  (our own)
    widths = [bar.attrib["width"] for bar in drawn.iter("{http://www.w3.org/2000/svg}rect")]
    assert widths == ["100%", "280.0", "140.0"]
    write(FIGURES, "here", tmp_path)
    assert {path.name for path in tmp_path.iterdir()} == {"figures.md", "figures.svg"}


def test_a_form_can_be_sent_back_as_the_echo_does() -> None:
    body = json.dumps(EXAMPLES["pull-tension"])
    form = PullTensionRequest.model_validate_json(body)
    assert json.loads(form.model_dump_json(exclude_none=True)) == EXAMPLES["pull-tension"]
    assert json.loads(form.model_dump_json())["brake_limit"] is None
