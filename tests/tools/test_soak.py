"""The soak itself: hostile bodies that are what they are counted as, callers who count right, a curve one can read."""

from __future__ import annotations

import asyncio
import json
import random
from collections import Counter

import pytest
from tools.live import started
from tools.soak.callers import CUT, EXAMPLES, Caller, written
from tools.soak.hostile import hostile_line, hostile_request, verdict
from tools.soak.load_curve import Step, median_of, picture, round_up, table

from tests.drawings.seen import SPACE, assert_readable, read, words_of

STEPS = [
    Step(1, False, 1_729.4, 0.0, 0.52, 1.04),
    Step(32, False, 2_516.0, 0.0, 12.0, 123.7),
    Step(128, False, 140.0, 7_700.0, 18.2, 36.0),
    Step(128, True, 2_440.0, 96.0, 18.2, 36.0),
]


def test_a_hostile_line_is_one_line_and_not_blank() -> None:
    source = random.Random(1)  # noqa: S311  (no secret)
    for _ in range(3_000):
        line = hostile_line(source)
        assert b"\n" not in line
        assert line.strip()


def test_hostile_bodies_are_mostly_no_json_and_some_of_them_are() -> None:
    source = random.Random(2)  # noqa: S311  (no secret)
    readable = 0
    for _ in range(1_000):
        head, _, body = hostile_request(source).partition(b"\r\n\r\n")
        assert f"Content-Length: {len(body)}".encode() in head
        try:
            json.loads(body)
            readable += 1
        except ValueError:
            pass
    assert 50 < readable < 500


@pytest.mark.live
def test_a_caller_counts_an_answer_a_request_and_a_line_and_what_is_cut() -> None:
    good, bad = written("/v1/cover", EXAMPLES["cover"]), written("/v1/cover", b"{")
    line = b'{"id":"a","operation":"cover","request":%b}' % EXAMPLES["cover"]

    async def asked(port: int) -> tuple[list[int], list[int], list[int]]:
        caller = Caller(port)
        several = await caller.ask_all([good, bad, good, bad])
        lines = await caller.stream([line, b"-", b'{"id":"a","operation":"cover","request":{}}', line])
        again = await caller.ask_all([good])
        caller.close()
        return several, lines, again

    with started() as (address, _):
        port = int(address.rpartition(":")[2])
        assert asyncio.run(asked(port)) == ([200, 400, 200, 400], [200, 400, 422, 200], [200])
    assert asyncio.run(asked(port)) == ([CUT] * 4, [CUT] * 4, [CUT])


def test_hostile_bodies_are_well_where_none_fails_and_the_memory_stays() -> None:
    sizes = [(0, 74.0), (30, 88.0), (120, 90.0), (400, 91.0)]
    fault, found, kept = verdict(Counter({400: 80, 422: 20}), Counter({400: 300}), sizes)
    assert fault == "400 hostile bodies, 300 of them lines of streams"
    assert found == (
        "380 400, 20 422; 74 MB at the start, 90 after a quarter, 91 at the end: at most +1.1% from the quarter on"
    )
    assert kept
    assert not verdict(Counter({400: 80, 422: 20}), Counter({400: 299, 500: 1}), sizes)[2]
    assert not verdict(Counter({400: 80, 422: 20}), Counter({400: 299, CUT: 1}), sizes)[2]
    assert not verdict(Counter({400: 100}), Counter({400: 300}), [*sizes, (400, 95.0)])[2]


@pytest.mark.parametrize(
    ("value", "scale"), [(0.9, 1), (1, 1), (1.3, 2), (3.1, 4), (41, 60), (7_700, 8_000), (901, 1_000)]
)
def test_a_scale_ends_at_a_round_number(value: float, scale: float) -> None:
    assert round_up(value) == pytest.approx(scale)


def test_the_load_curve_can_be_read_and_has_a_dot_for_each_figure() -> None:
    drawn = picture(STEPS, 32, "2 cores")
    assert_readable(drawn)
    dots = list(read(drawn).iter(f"{SPACE}circle"))
    assert len(dots) == len(STEPS) * 4
    highest = {
        line: min(float(dot.attrib["cy"]) for dot in dots if f"s-{line}" in dot.attrib["class"])
        for line in ("there", "limit")
    }
    assert highest["limit"] < highest["there"]
    assert {"8,000", "200", "1", "32", "128", "Requests a second", "Milliseconds until the answer"} <= set(
        words_of(drawn)
    )


def test_the_load_curve_has_its_figures_in_a_table() -> None:
    assert table(STEPS).splitlines()[2:] == [
        "| 1 | 1,729 | 0 | 0.5 | 1.0 |",
        "| 32 | 2,516 | 0 | 12.0 | 124 |",
        "| 128 | 140 | 7,700 | 18.2 | 36.0 |",
        "| 128, waiting when refused | 2,440 | 96 | 18.2 | 36.0 |",
    ]


def test_steps_alike_are_one_of_their_medians() -> None:
    several = [Step(64, True, rate, 10.0 - rate, 1.0, 2.0) for rate in (1.0, 9.0, 5.0)]
    assert median_of(several) == Step(64, True, 5.0, 5.0, 1.0, 2.0)
