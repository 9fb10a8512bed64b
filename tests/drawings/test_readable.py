"""Whatever is drawn can be read: all text large enough, on the sheet, none of it over another."""

from __future__ import annotations

import json
import os
from random import Random
from typing import Any

import pytest
from ductrun.drawings.bank_section import bank_section
from ductrun.drawings.bank_view import names_of
from ductrun.drawings.conduit_section import conduit_section
from ductrun.drawings.profile import Staked
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.route import route
from ductrun.drawings.wall import wall
from ductrun.kit.answering import REFUSALS, Chosen, drawing_of
from ductrun.kit.telling import METRIC, US, Telling
from ductrun.subjects import OPERATIONS
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.drawings.made import (
    NAMES,
    TELLINGS,
    conductors,
    envelopes,
    pull_points,
    route_sections,
    runs,
    trenches,
)
from tests.drawings.seen import Text, assert_readable, texts_of
from tests.properties.requests import RANDOMS, at_the_edges, varied

MANY = settings(
    max_examples=int(os.environ.get("DUCTRUN_FUZZ_EXAMPLES", "20")),
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
DRAWN = [operation for operation in OPERATIONS if operation.name in DRAWINGS]


def test_the_boxes_of_texts_that_lie_over_each_other_meet() -> None:
    over = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50"><title>a</title><desc>b</desc>{}</svg>'
    one = '<text x="10" y="20" font-size="10" text-anchor="start">abc</text>'
    near = '<text x="20" y="24" font-size="10" text-anchor="start">abc</text>'
    [first, second] = texts_of(over.format(one + near))
    assert first.meets(second)
    assert first == Text("abc", 10.0, 10.0, pytest.approx(12.4), pytest.approx(27.98), pytest.approx(22.4))  # type: ignore[arg-type]
    with pytest.raises(AssertionError):
        assert_readable(over.format(one + near))
    assert_readable(over.format(one))


@MANY
@given(data=st.data(), telling=TELLINGS)
def test_a_bank_is_readable(data: st.DataObject, telling: Telling) -> None:
    envelope = data.draw(envelopes())
    trench = data.draw(st.none() | trenches(envelope))
    taken = data.draw(st.dictionaries(st.sampled_from(names_of(envelope.bank)), NAMES, max_size=5))
    assert_readable(bank_section(envelope, telling, trench, name=data.draw(NAMES), circuits=taken))


@MANY
@given(given_set=conductors(), name=NAMES, telling=TELLINGS)
def test_a_conduit_is_readable(given_set: Any, name: str, telling: Telling) -> None:
    bore, lines, figures = given_set
    assert_readable(conduit_section(bore, lines, figures, telling, name=name))


@MANY
@given(data=st.data(), telling=TELLINGS)
def test_a_route_is_readable(data: st.DataObject, telling: Telling) -> None:
    sections = data.draw(route_sections())
    points = data.draw(pull_points(sections))
    heights = st.floats(-30.0, 30.0)
    ground = [(0.0, 1.0), (10.0, data.draw(heights))]
    staked = data.draw(st.none() | heights.map(lambda start: Staked(ground, start, "invert of the lowest duct")))
    assert_readable(route(sections, telling, pull_points=points, staked=staked, start_name=data.draw(NAMES)))


@MANY
@given(made=st.lists(runs(), max_size=4), telling=TELLINGS)
def test_a_wall_is_readable(made: Any, telling: Telling) -> None:
    assert_readable(wall([run for run, _ in made], telling, [travel for _, travel in made]))


@pytest.mark.parametrize("operation", DRAWN, ids=lambda operation: operation.name)
@MANY
@given(random=RANDOMS, metric=st.booleans(), edges=st.booleans())
def test_whatever_an_operation_answers_is_drawn_readably(
    operation: Any, random: Random, metric: bool, edges: bool
) -> None:
    body = (at_the_edges if edges else varied)(operation.name, random)
    draw = drawing_of(operation, DRAWINGS[operation.name])
    try:
        drawn = draw(json.dumps(body).encode(), Chosen(METRIC if metric else US))
    except REFUSALS:
        return
    assert_readable(drawn.decode())
