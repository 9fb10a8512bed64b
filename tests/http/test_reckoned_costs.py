"""What the costliest requests take is not more than what they were reckoned to take, by a yardstick of this machine."""

from __future__ import annotations

import gc
import json
import time
from collections.abc import Callable
from functools import partial
from typing import Any

import pytest
from ductrun.kit.answering import Chosen, PutOffError, answer_to
from ductrun.kit.reading import reader_of
from ductrun.subjects import OPERATIONS
from tools import costly_requests as asked
from tools.costs import step_here

from tests.http.wire import ANSWERS

BY_NAME = {operation.name: operation for operation in OPERATIONS}
UNLIKE = partial(asked.run_of, unlike=True)
WIDE = asked.EXAMPLES["earth-load"] | {"trench_width": asked.quantity(30, "ft")}


def many_circuits_in_a_large_bank() -> Any:
    return asked.run_of(1, 1, 200) | {"bank": asked.RUN["bank"] | {"tiers": [40] * 30}}


CASES: list[tuple[str, Callable[[], Any]]] = [
    ("duct-run", lambda: asked.bare_run(asked.under_earth(asked.run_of(1, 8, 0), water=3))),
    ("duct-run", lambda: asked.bare_run(asked.run_of(3, 4, 0), earth_load=asked.RUN["earth_load"])),
    ("duct-run", lambda: asked.bare_run(asked.run_of(8, 4, 0))),
    ("duct-run", partial(UNLIKE, 5, 5, 40)),
    ("duct-run", partial(UNLIKE, 20, 1, 20)),
    ("duct-run", lambda: asked.breaking(UNLIKE(4, 10, 30))),
    ("duct-run", partial(asked.run_of, 1, 50, 199)),
    ("duct-run", many_circuits_in_a_large_bank),
    ("duct-run", lambda: asked.at_unlike_depths(asked.loaded(UNLIKE(3, 5, 48)))),
    ("duct-run", partial(asked.along_profile, 2, 100, 600)),
    ("duct-run", partial(asked.along_profile, 10, 300, 60_000)),
    ("duct-run", lambda: asked.with_boxes(asked.run_of(10, 2, 50), 40)),
    ("duct-run", lambda: asked.long_above(10, 1_000) | {"bank": asked.unlike_ducts(2, 40)}),
    ("earth-load", lambda: asked.full_bank(WIDE)),
    ("earth-load", lambda: asked.full_bank(WIDE) | {"bank": asked.unlike_ducts(6, 40)}),
    ("ampacity", partial(asked.rated, 48)),
    ("pull-box", partial(asked.boxed, 100)),
    ("pull-tension", asked.pulled),
    ("expansion", partial(asked.many_runs, 200, 2_000)),
]


def steps_of(name: str, body: bytes) -> float:
    operation = BY_NAME[name]
    assert operation.steps is not None
    return operation.steps(reader_of(operation.request)(body))


@pytest.mark.parametrize(("name", "make"), CASES)
def test_no_request_takes_longer_than_it_was_reckoned_to_take(name: str, make: Callable[[], Any]) -> None:
    body = json.dumps(make(), separators=(",", ":")).encode()
    put_off = answer_to(BY_NAME[name], puts_off=True)
    with pytest.raises(PutOffError) as raised:
        put_off(body, Chosen())
    assert raised.value.steps == steps_of(name, body)
    shares = []
    for _ in range(3):
        gc.collect()
        steps_here = [step_here() for _ in range(3)]
        began = time.process_time()
        ANSWERS[name](body, Chosen())
        taken = time.process_time() - began
        shares.append(taken / (steps_of(name, body) * min(*steps_here, *(step_here() for _ in range(3)))))
        if shares[-1] <= 1:
            break
    assert min(shares) <= 1
