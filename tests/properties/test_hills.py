"""Laws of cable over hills, on random routes with grades from -90 to 90 degrees, pulled from both ends.

DUCTRUN_HILLY_ROUTES sets how many routes are integrated; each is a law of its own.
"""

from __future__ import annotations

import math
import os
import random
from collections.abc import Iterator, Sequence

import pytest
from ductrun.engineering import pulling
from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend

from tests.engineering.hilly_routes import integrate, random_route

ROUTES = int(os.environ.get("DUCTRUN_HILLY_ROUTES", "200"))


def ways(seed: int) -> Iterator[tuple[Sequence[Section], float, float]]:
    """Give a random route from both ends, with its weight and incoming tension."""
    route, weight, incoming = random_route(random.Random(seed))  # noqa: S311  (routes, not secrets)
    yield route, weight, incoming
    yield pulling.reverse(route), weight, incoming


def pieces_of(section: Section, count: int) -> list[Section]:
    """Cut a section into equal pieces."""
    if isinstance(section, Straight):
        return [section._replace(length=section.length / count)] * count
    if isinstance(section, HorizontalBend):
        return [section._replace(angle=section.angle / count)] * count
    step = (section.exit_grade - section.entry_grade) / count
    starts = [section.entry_grade + step * index for index in range(count)]
    return [VerticalBend(section.radius, start, start + step, section.friction) for start in starts]


@pytest.mark.parametrize("block", range(20))
def test_a_braked_pull_agrees_with_a_fine_integration(block: int) -> None:
    """To 1e-4 of the highest tension in every section; held back, the least tension is zero."""
    for seed in range(block * ROUTES // 20, (block + 1) * ROUTES // 20):
        for route, weight, incoming in ways(seed):
            entering = pulling.least_entry(route, weight, incoming)
            pulled = pulling.pull(route, weight, entering)
            fine = integrate(route, weight, entering)
            near = 1e-4 * max(fine.highest, 1.0)
            assert [step.tension_out for step in pulled] == pytest.approx(fine.ends, abs=near), seed
            assert [step.highest for step in pulled] == pytest.approx(fine.tops, abs=near), seed
            assert fine.least >= -near, seed
            if entering > incoming * (1 + 1e-9):
                assert fine.least == pytest.approx(0.0, abs=near), seed


@pytest.mark.parametrize("seed", range(60))
def test_a_route_in_pieces_is_the_route(seed: int) -> None:
    for route, weight, incoming in ways(seed):
        entering = pulling.least_entry(route, weight, incoming)
        pulled = pulling.pull(route, weight, entering)
        scale = max(step.highest for step in pulled) + 1.0
        for count in (2, 7):
            parts = [piece for section in route for piece in pieces_of(section, count)]
            assert pulling.least_entry(parts, weight, incoming) == pytest.approx(entering, abs=1e-6 * scale)
            cut = pulling.pull(parts, weight, entering)
            ends = [step.tension_out for step in cut[count - 1 :: count]]
            assert ends == pytest.approx([step.tension_out for step in pulled], abs=1e-6 * scale)
            tops = [max(step.highest for step in cut[at : at + count]) for at in range(0, len(cut), count)]
            assert tops == pytest.approx([step.highest for step in pulled], abs=1e-6 * scale)


def test_with_a_hundredth_less_of_the_brake_the_cable_would_be_slack() -> None:
    braked = 0
    for seed in range(60):
        for route, weight, incoming in ways(seed):
            entering = pulling.least_entry(route, weight, incoming)
            if entering > incoming * (1 + 1e-9) and entering > 1.0:
                braked += 1
                assert integrate(route, weight, entering * 0.99).least < 0.0, seed
    assert braked > 20


def test_no_tension_is_ever_negative_and_more_friction_needs_less_brake() -> None:
    for seed in range(200):
        for route, weight, incoming in ways(seed):
            entering = pulling.least_entry(route, weight, incoming)
            assert all(
                step.tension_out >= 0.0 and math.isfinite(step.highest) for step in pulling.pull(route, weight, 0.0)
            )
            rougher = [section._replace(friction=section.friction * 1.3) for section in route]
            assert pulling.least_entry(rougher, weight, incoming) <= entering * (1 + 1e-12)
