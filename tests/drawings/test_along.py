"""What is drawn along a route or a wall: pulls, plan and profile, straps and fittings, spacer stations."""

from __future__ import annotations

import math
from typing import Any

import pytest
from ductrun.drawings.alignment import PullPoint, RouteSection, aligned
from ductrun.drawings.chart import axis_of
from ductrun.drawings.figures import figure
from ductrun.drawings.profile import Staked
from ductrun.drawings.pull_diagram import Pull, pull_diagram
from ductrun.drawings.registry import DRAWINGS, limits_of
from ductrun.drawings.route import route
from ductrun.drawings.stations import angle_text, station_text
from ductrun.drawings.wall import Run, Travel, wall
from ductrun.engineering.pulling import HorizontalBend, Straight, VerticalBend
from ductrun.kit.telling import METRIC, US
from ductrun.units import AnyQuantity

from tests.drawings.made import assessed, assessed_of
from tests.drawings.seen import SPACE, assert_readable, read, told, words_of

FOOT = 0.3048
QUARTER = math.pi / 2


def feet(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "ft"}


def straight(length: float, grade: float = 0.0) -> dict[str, Any]:
    return {"kind": "straight", "length": feet(length), "grade": {"value": grade, "unit": "deg"}}


def level_bend(angle: float = 90.0, radius: float = 3.0) -> dict[str, Any]:
    return {"kind": "horizontal_bend", "radius": feet(radius), "angle": {"value": angle, "unit": "deg"}}


@pytest.mark.parametrize(
    ("feet_along", "us", "metric"),
    [(0.0, "0+00", "0+000"), (123.5, "1+23.5", "0+037.6"), (99.96, "1+00", "0+030.5"), (4567.0, "45+67", "1+392")],
)
def test_stations_are_hundreds_of_feet_or_thousands_of_metres(feet_along: float, us: str, metric: str) -> None:
    assert station_text(feet_along * FOOT, US) == us
    assert station_text(feet_along * FOOT, METRIC) == metric


def test_angles_are_degrees() -> None:
    assert [angle_text(math.radians(angle)) for angle in (90.0, 22.5, 11.25)] == [
        "90\u00b0",
        "22.5\u00b0",
        "11.2\u00b0",
    ]


def test_a_scale_holds_a_limit_that_is_near_and_not_one_that_is_far() -> None:
    near = axis_of(AnyQuantity(100.0, "lbf"), AnyQuantity(250.0, "lbf"))
    assert near.most > 250.0
    far = axis_of(AnyQuantity(100.0, "lbf"), AnyQuantity(1000.0, "lbf"))
    assert 100.0 < far.most < 200.0
    assert axis_of(AnyQuantity(0.0, "lbf"), None).most > 0.0


def test_a_pull_tells_both_ends_its_limits_and_the_better_end() -> None:
    found = assessed("pull-tension")
    words = " ".join(words_of(DRAWINGS["pull-tension"](found, US)))
    # the figures that the answer tells of this example
    assert "limit 8,000 lbf" in words
    assert "limit 500 lbf/ft" in words
    assert "As given: ends at 3,573.9 lbf" in words
    assert "From the other end (better): ends at 3,025.5 lbf" in words
    assert "From station 0+00 to 4+69.4" in words


def test_a_brake_is_told_at_both_frictions() -> None:
    found = assessed("pull-tension", sections=[straight(300, -30), straight(100)])
    _, description = told(DRAWINGS["pull-tension"](found, US))
    assert "brake" in description
    assert "at the low friction it ends at" in description


def test_ends_are_told_apart_by_line_and_mark_and_not_by_colour_alone() -> None:
    svg = DRAWINGS["pull-tension"](assessed("pull-tension"), US)
    dashes = {node.attrib.get("stroke-dasharray", "") for node in read(svg).iter(f"{SPACE}path")}
    assert {"", "5 3", "9 3 2 3"} <= dashes
    assert list(read(svg).iter(f"{SPACE}circle"))


def test_a_limit_that_is_not_known_is_told_as_not_judged() -> None:
    cable = {
        "kind": "measured",
        "diameter": {"value": 1.2, "unit": "in"},
        "mass_per_length": {"value": 2, "unit": "lb/ft"},
    }
    found = assessed("pull-tension", cables=[{"count": 3, "cable": cable}])
    assert "it was not judged." in " ".join(words_of(DRAWINGS["pull-tension"](found, US)))


def test_a_plan_shows_every_pull_from_its_end_with_pull_points() -> None:
    sections = [straight(300), level_bend(), straight(200), level_bend(), straight(20), level_bend(), straight(300)]
    found = assessed("pull-plan", sections=sections)
    assert len(found.spans) > 1
    svg = DRAWINGS["pull-plan"](found, US)
    words = " ".join(words_of(svg))
    assert f"pull points, dotted, at {station_text(found.spans[0].end, US)}" in words
    assert all(f"Pull {number}, " in words for number in range(1, len(found.spans) + 1))


def test_where_no_plan_keeps_the_limits_the_route_is_drawn() -> None:
    found = assessed(
        "pull-plan", sections=[straight(20), level_bend(170), level_bend(170), level_bend(170), straight(20)]
    )
    assert not found.spans
    svg = DRAWINGS["pull-plan"](found, US)
    assert words_of(svg)[0].startswith("No plan keeps the limits.")
    assert "The side to which bends turn is not given" in " ".join(words_of(svg))


def test_five_hundred_sections_are_drawn_readably() -> None:
    sections = [one for _ in range(250) for one in (straight(3), level_bend(1, 30))]
    found = assessed("pull-tension", sections=sections)
    svg = DRAWINGS["pull-tension"](found, US)
    assert_readable(svg)
    assert "Some names are left out for want of room." in " ".join(words_of(svg))
    assert len(svg) < 1_000_000


def test_sections_may_carry_names() -> None:
    found = assessed("pull-tension", sections=[straight(100), straight(100)])
    pull = Pull(0.0, found.pulling.sections, found.forward, None)
    svg = pull_diagram(
        [pull], found.pulling.load.weight, limits_of(found.pulling, US), US, name="Feeder", section_names=["up", "down"]
    )
    assert {"up", "down"} <= set(words_of(svg))
    assert "pulled from the other end" not in words_of(svg)


def test_four_left_turns_come_back_to_the_start() -> None:
    side = RouteSection(Straight(10.0, 0.0))
    turn = RouteSection(HorizontalBend(2.0, QUARTER), "left")
    placed = aligned([side, turn] * 4, [])
    end = placed[-1].points[-1]
    assert (end.x, end.y, end.z) == pytest.approx((0.0, 0.0, 0.0), abs=1e-9)
    # along the arcs of 2 m; stations by their chords, a little less
    assert end.along == pytest.approx(4 * (10.0 + math.pi))
    assert end.station == pytest.approx(end.along, rel=1e-3)
    corner = placed[1].points[-1]
    assert (corner.x, corner.y) == pytest.approx((12.0, 2.0))
    right = aligned([side, turn._replace(turn="right")], [])[-1].points[-1]
    assert (right.x, right.y) == pytest.approx((12.0, -2.0))


def test_a_riser_climbs_without_a_station_and_a_slope_with_less_than_its_length() -> None:
    up = [RouteSection(VerticalBend(1.0, 0.0, QUARTER)), RouteSection(Straight(5.0, QUARTER))]
    end = aligned(up, [])[-1].points[-1]
    assert (end.x, end.z, end.station) == pytest.approx((1.0, 6.0, 1.0))
    slope = aligned([RouteSection(Straight(10.0, math.radians(30)))], [])[0].points[-1]
    assert (slope.z, slope.station) == pytest.approx((5.0, 10.0 * math.cos(math.radians(30))))


def test_a_heading_breaks_at_a_pull_point_where_that_is_given() -> None:
    side = RouteSection(Straight(10.0, 0.0))
    end = aligned([side, side], [PullPoint(1, "vault", QUARTER)])[-1].points[-1]
    assert (end.x, end.y) == pytest.approx((10.0, 10.0))
    end = aligned([side, side], [PullPoint(1, "vault")])[-1].points[-1]
    assert (end.x, end.y) == pytest.approx((20.0, 0.0))


def test_a_route_lists_what_lies_along_it() -> None:
    sections = [
        RouteSection(Straight(100 * FOOT, 0.0)),
        RouteSection(HorizontalBend(3 * FOOT, QUARTER), "left"),
        RouteSection(Straight(50 * FOOT, 0.0)),
        RouteSection(VerticalBend(3 * FOOT, 0.0, QUARTER), name="riser"),
    ]
    svg = route(sections, US, pull_points=[PullPoint(2, "handhole")], start_name="vault", end_name="pad")
    words = words_of(svg)
    for expected in (
        "vault",
        "bend left 90\u00b0, radius 3 ft",
        "handhole",
        "riser: bend up 90\u00b0, radius 3 ft",
        "pad",
    ):
        assert expected in words
    assert "1+04.7" in words  # 100 ft and a quarter of a circle of 3 ft (derived)
    assert "It ends 3 ft above its start." in told(svg)[1]
    assert "At pull points (squares) the heading may break;" in " ".join(words)


def test_what_lies_along_a_route_is_written_out_on_as_many_lines_as_it_takes() -> None:
    """The column leaves room for some 34 letters."""
    name = "Section 4 of the long way across the playing field"
    svg = route([RouteSection(Straight(90.0, 0.0)), RouteSection(HorizontalBend(3 * FOOT, QUARTER), "left", name)], US)
    assert f"{name}: bend left 90\u00b0, radius 3 ft" in " ".join(words_of(svg))
    assert not any("\u2026" in word for word in words_of(svg))
    assert_readable(svg)


def test_a_level_route_has_no_profile_and_a_slope_is_told_in_percent() -> None:
    assert "The route is level: it has no profile to draw." in words_of(route([RouteSection(Straight(9.0, 0.0))], US))
    slope = [RouteSection(Straight(90.0, math.atan(0.05)))]
    words = words_of(route(slope, METRIC))
    assert {"+5 %", "Profile", "0.0 m", "4.5 m"} <= set(words)
    assert "Heights from the start of the conduit" in " ".join(words)


def test_a_profile_shows_the_ground_and_the_elevations_that_were_sent() -> None:
    # 90 m long at 5 percent from 61.2 m on: 4.5 m up, to 65.7 (derived); the ground lies above it
    slope = [RouteSection(Straight(90.0 / math.cos(math.atan(0.05)), math.atan(0.05)))]
    svg = route(slope, METRIC, staked=Staked([(0.0, 62.0), (90.0, 67.0)], 61.2, "top of duct"))
    words = words_of(svg)
    assert {"61.2 m", "67.0 m"} <= set(words)
    assert "Elevations, top of duct, drawn" in " ".join(words)
    assert "finished grade." in " ".join(words)
    assert "stroke-dasharray" in svg


def test_no_height_is_told_as_less_than_nothing_and_a_shaft_says_what_is_drawn_smaller() -> None:
    shaft = [RouteSection(Straight(70.0, math.pi / 2)), RouteSection(Straight(5.0, -1e-9))]
    words = words_of(route(shaft, METRIC))
    assert "-0.0 m" not in words
    assert "times smaller than lengths." in " ".join(words)


def test_more_than_a_list_holds_is_counted() -> None:
    sections = [
        one
        for _ in range(70)
        for one in (RouteSection(Straight(1.0, 0.0)), RouteSection(HorizontalBend(1.0, 0.1), "left"))
    ]
    assert "And 12 more." in words_of(route(sections, US))  # 70 bends and two ends, 60 of them listed


def test_a_wall_shows_fittings_anchors_straps_travel_and_openings() -> None:
    words = " ".join(words_of(DRAWINGS["expansion"](assessed("expansion"), US)))
    assert "It moves 1 ft 9-5/8 in over the whole span" in words  # 3.38e-5 x 380 x 12 x 140 = 21.58 in (derived)
    assert "Expansion fittings of 6 in travel: 4, at 94 ft 6 in" in words
    assert "Anchors: 3, at 95 ft, 190 ft, 285 ft." in words
    assert "90 \u00b0F 2.143 in" in words
    assert "380 ft" in words


def test_straps_that_slide_and_straps_that_hold_are_told_apart() -> None:
    svg = DRAWINGS["supports"](assessed("supports"), US)
    words = words_of(svg)
    assert "strap that lets the run slide" in words
    assert "strap that holds" in words
    assert "Straps that hold: 2, at 49 ft 6 in, 50 ft 6 in." in words
    assert "Straps stand 5 ft apart at most." in words


def test_a_run_that_goes_on_is_told_so() -> None:
    conduit = {"kind": "listed", "type": "emt", "trade_size": "2"}
    found = assessed_of("supports", {"conduit": conduit, "length": feet(95), "termination_count": 1})
    # straps every 10 ft from 3 ft on; it is drawn to as far behind the last one, at 93 ft (derived)
    assert "96 ft, and on" in words_of(DRAWINGS["supports"](found, US))


def test_what_stands_too_close_to_be_drawn_apart_is_told() -> None:
    found = assessed("supports", length=feet(1000), fittings={"fitting_count": 9})
    assert "let it slide stand too close to be" in " ".join(words_of(DRAWINGS["supports"](found, US)))
    found = assessed("expansion", length=feet(9000))
    assert "expansion fittings stand too close to be" in " ".join(words_of(DRAWINGS["expansion"](found, US)))


def test_fittings_without_room_are_told_and_not_drawn() -> None:
    words = " ".join(words_of(wall([Run(1.0, None, 3)], US, [Travel(0.3, 0.15)])))
    assert "It needs 3 expansion fittings, for which it has no room: none is drawn." in words
    assert "expansion fitting: barrel" not in words


def test_runs_held_by_the_ground_are_told_so() -> None:
    words = " ".join(words_of(DRAWINGS["expansion"](assessed("expansion", setting="direct_buried"), US)))
    assert words.startswith("Held by the ground: nothing moves")


def test_spacers_show_their_stations_and_tiers() -> None:
    svg = DRAWINGS["spacers"](assessed("spacers"), US)
    words = " ".join(words_of(svg))
    assert "61 stations, 5 ft apart, the first 0 ft from the start." in words  # 300 / 5 + 1 (derived)
    assert {"1-3", "2-3", "3-2"} <= set(words_of(svg))
    far = assessed("spacers", length=feet(3000))
    assert "The 601 stations stand too close to be drawn" in " ".join(words_of(DRAWINGS["spacers"](far, US)))


def test_flotation_shows_the_ducts_that_are_held_down() -> None:
    words = words_of(DRAWINGS["flotation"](assessed("flotation"), US))
    assert {"1-1", "3-3"} <= set(words)
    assert "width 1 ft 5-1/2 in" in words  # 3 x 4.5 + 2 x 2 (derived)


@pytest.mark.parametrize(
    ("value", "unit", "text"),
    [
        (35_586.4, "N", "35,586 N"),  # a limit never reads as more than it is told to be
        (2.14286, "in", "2.143 in"),
        (29.5, "in", "2 ft 5-1/2 in"),
        (903.14, "mm", "903.1 mm"),
        (95.5, "ft", "95 ft 6 in"),
        (27.709, "m", "27.709 m"),
        (32.222, "degC", "32.2 \u00b0C"),
        (-4.0, "degF", "-4 \u00b0F"),
    ],
)
def test_figures_are_written_to_be_read_at_a_glance(value: float, unit: str, text: str) -> None:
    assert figure(AnyQuantity(value, unit)).replace("\u00a0", " ") == text
