"""What the largest requests cost: seconds of one core and memory, beside what they were reckoned to take.

Each is answered in a process of its own, without a server. The exit status is 1 where one took longer than reckoned.
"""

from __future__ import annotations

import json
import multiprocessing
import resource
import sys
import time
from collections.abc import Callable
from functools import partial
from typing import Any, NamedTuple, cast

from ductrun.http.representations import representations_of
from ductrun.kit.answering import MOST_REQUEST_STEPS, REFUSALS, PutOffError, answer_to
from ductrun.kit.bounding import TooCostlyError
from ductrun.subjects import OPERATIONS

from tools import costly_requests as asked

HTML = "text/html"
SVG = "image/svg+xml"
CSV = "text/csv"
WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
STEPS_A_SECOND = 100_000
_LEAST = 0.02  # seconds, below which nothing is held against what was reckoned
_YARDSTICK_STEPS = 40


class Case(NamedTuple):
    """A request: what it is, its operation, how it is made, and how its answer is wanted."""

    words: str
    operation: str
    make: Callable[[], Any]
    media_type: str = "application/json"
    remedies: bool = False


class Found(NamedTuple):
    """What a request took: its bytes, the seconds reckoned, those taken, memory in MiB, and bytes of the answer."""

    body: int
    reckoned: float
    taken: float
    memory: float
    answer: int
    words: str


UNLIKE = partial(asked.run_of, unlike=True)
LONG: Callable[[], Any] = partial(UNLIKE, 10, 10, 200)
EARTH = asked.RUN["earth_load"]

CASES = [
    Case("run: 200 circuits alike, 100 sections", "duct-run", partial(asked.run_of, 1, 100, 199)),
    Case("run: 200 unlike circuits, 10 times 10 sections", "duct-run", LONG),
    Case("run: 80 unlike circuits, 50 stretches of 5 sections", "duct-run", partial(UNLIKE, 50, 5, 80)),
    Case("run: 100 unlike circuits, 200 sections without a pull point", "duct-run", partial(UNLIKE, 1, 200, 100)),
    Case("run: 1,200 unlike ducts, 16 stretches", "duct-run", asked.all_unlike),
    Case("run: 480 loaded ducts", "duct-run", lambda: asked.at_unlike_depths(asked.loaded(UNLIKE(10, 10, 48)))),
    Case("run: 36 boxes of 100 entries", "duct-run", lambda: asked.with_boxes(asked.run_of(37, 2, 50), 40)),
    Case(
        "run: earth on 1,200 ducts, 50 stretches",
        "duct-run",
        lambda: asked.bare_run(asked.run_of(50, 4, 0), earth_load=EARTH),
    ),
    Case(
        "run: the same along a profile, 30 stretches, three covers",
        "duct-run",
        lambda: asked.bare_run(asked.under_earth(asked.run_of(30, 4, 0), water=3)),
    ),
    Case("run: above ground, 1,000 joints", "duct-run", lambda: asked.above(asked.run_of(10, 40, 40), 100)),
    Case("run: 200 unlike circuits, as a page", "duct-run", LONG, HTML),
    Case("the same, as a drawing", "duct-run", LONG, SVG),
    Case("the same, as a workbook", "duct-run", LONG, WORKBOOK),
    Case("the same, as a list", "duct-run", LONG, CSV),
    Case("the same 50 stretches, as a page", "duct-run", partial(UNLIKE, 50, 5, 80), HTML),
    Case("run: 200 sections, remedies", "duct-run", partial(UNLIKE, 1, 200, 100), remedies=True),
    Case(
        "run: earth along a profile, remedies",
        "duct-run",
        lambda: asked.bare_run(asked.under_earth(asked.run_of(30, 4, 0))),
        remedies=True,
    ),
    Case(
        "run: 5 circuits that break limits, remedies",
        "duct-run",
        lambda: asked.breaking(UNLIKE(2, 9, 5)),
        remedies=True,
    ),
    Case(
        "run: 60 circuits that break limits, remedies",
        "duct-run",
        lambda: asked.breaking(UNLIKE(4, 20, 60)),
        remedies=True,
    ),
    Case("nine runs compared", "duct-run/compare", lambda: asked.compared(partial(UNLIKE, 10, 2, 20))),
    Case("the same, as a page", "duct-run/compare", lambda: asked.compared(partial(UNLIKE, 10, 2, 20)), HTML),
    Case(
        "nine runs of 45 unlike circuits compared",
        "duct-run/compare",
        lambda: asked.compared(partial(UNLIKE, 9, 4, 45)),
    ),
    Case("the same, as a page", "duct-run/compare", lambda: asked.compared(partial(UNLIKE, 9, 4, 45)), HTML),
    Case("ampacity: 48 ducts, both methods, 4 studies", "ampacity", partial(asked.rated, 48)),
    Case("pull-box: 100 entries of 6 circuits, 50 boxes", "pull-box", partial(asked.boxed, 100)),
    Case("pull-plan: 400 places, 500 sections", "pull-plan", asked.planned),
    Case("pull-tension: 500 sections, all studies", "pull-tension", asked.pulled),
    Case(
        "earth-load: 1,200 ducts",
        "earth-load",
        lambda: asked.full_bank(asked.EXAMPLES["earth-load"], trench_width=asked.quantity(30, "ft")),
    ),
    Case(
        "earth-load: 1,200 unlike ducts",
        "earth-load",
        lambda: (
            asked.full_bank(asked.EXAMPLES["earth-load"], trench_width=asked.quantity(30, "ft"))
            | {"bank": asked.unlike_ducts(30, 40)}
        ),
    ),
    Case("encasement: 1,200 ducts", "encasement", lambda: asked.full_bank(asked.EXAMPLES["encasement"])),
    Case(
        "conduit-size: 200 kinds of cable",
        "conduit-size",
        lambda: asked.EXAMPLES["conduit-size"] | {"cables": [{"count": 1, "cable": asked.WIRE}] * 200},
    ),
    Case("run: above ground, 50 times 2,000 ft", "duct-run", partial(asked.long_above, 50, 2_000)),
    Case(
        "run: above ground, 80 unlike ducts",
        "duct-run",
        lambda: asked.long_above(50, 1_000) | {"bank": asked.unlike_ducts(2, 40)},
    ),
    Case("run: a profile of 100 points, 4 circuits searched", "duct-run", partial(asked.along_profile, 4, 100, 600)),
    Case("run: a profile of 500 points, 19 circuits", "duct-run", partial(asked.along_profile, 19, 500, 60_000)),
    Case("expansion: 200 runs, 50 temperatures", "expansion", partial(asked.many_runs, 200, 2_000)),
    Case(
        "supports: 25,000 ft",
        "supports",
        lambda: (
            {name: value for name, value in asked.EXAMPLES["supports"].items() if name != "fittings"}
            | {"length": asked.quantity(25_000, "ft")}
        ),
    ),
    Case("voltage-drop", "voltage-drop", lambda: asked.EXAMPLES["voltage-drop"]),
]


def measured(case: Case) -> Found:
    """Answer a request and give what it took; in a process of its own."""
    operation = {one.name: one for one in OPERATIONS}[case.operation]
    made = {one.media_type: one for one in representations_of(operation, answer_to(operation, puts_off=True))}
    representation = made[case.media_type]
    chosen = representation.usual._replace(remedies=case.remedies)

    def answered(body: bytes) -> tuple[float, Any]:
        steps = 0.0
        work: Callable[[], Any] = partial(representation.answer, body, chosen)
        while True:
            try:
                return steps, work()
            except PutOffError as put_off:
                steps, work = steps + put_off.steps, put_off.finish

    answered(json.dumps(operation.example).encode())  # what is built once
    body = json.dumps(case.make(), separators=(",", ":")).encode()
    before, began = _peak(), time.process_time()
    try:
        steps, written = answered(body)
    except REFUSALS as refusal:
        words = str(refusal) if isinstance(refusal, TooCostlyError) else f"{type(refusal).__name__}: {refusal}"
        return Found(len(body), 0.0, time.process_time() - began, _peak() - before, 0, words)
    taken = time.process_time() - began
    size = len(written if isinstance(written, bytes) else written[0])
    return Found(len(body), steps / STEPS_A_SECOND, taken, _peak() - before, size, "")


def step_here() -> float:
    """Give the seconds that a step takes on this machine now, by work that has nothing of the service in it."""
    began = time.process_time()
    rows = [{"at": at, "name": str(at), "pair": (at, at * 0.5)} for at in range(1_000)]
    total = 0.0
    for row in sorted(rows, key=lambda one: str(one["name"])):
        whole, half = cast(tuple[int, float], row["pair"])
        total += (whole * half + 1.0) ** 0.5
    return (time.process_time() - began) / _YARDSTICK_STEPS


def _peak() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1_024


def main() -> int:
    """Print the table."""
    context = multiprocessing.get_context("spawn")
    numbers = [int(one) for one in sys.argv[1:]] or range(len(CASES))
    print(f"the most that is done for one request: {MOST_REQUEST_STEPS / STEPS_A_SECOND:.0f} s")
    here = min(step_here() for _ in range(20))
    print(f"a step, reckoned at {1e6 / STEPS_A_SECOND:.0f} microseconds, takes {here * 1e6:.1f} here")
    print(
        "| request | body, KiB | reckoned, s | taken, s | memory, MiB | answer, MiB | |\n|---|---|---|---|---|---|---|"
    )
    kept = True
    for number in numbers:
        queue = context.SimpleQueue()
        child = context.Process(target=_put, args=(number, queue))
        child.start()
        found: Found = queue.get()
        child.join()
        longer = found.answer > 0 and found.taken > max(found.reckoned, _LEAST)
        kept = kept and not longer
        print(
            f"| {CASES[number].words} | {found.body / 1_024:.1f} | {found.reckoned:.2f} | {found.taken:.2f} "
            f"| {found.memory:.0f} | {found.answer / 1_048_576:.2f} | {found.words}{'longer than reckoned' * longer} |",
            flush=True,
        )
    return 0 if kept else 1


def _put(number: int, queue: Any) -> None:
    queue.put(measured(CASES[number]))


if __name__ == "__main__":
    sys.exit(main())
