"""What a trench takes beside its earth: buckets, pavement, shoring, trucks; and one whole trench worked by hand."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, codes, faults, quantity, result

PAVEMENT = {"kind": "asphalt", "thickness": quantity(4, "in"), "cut_back": quantity(12, "in")}


def example(**changes: Any) -> dict[str, Any]:
    return {name: one for name, one in (copy.deepcopy(EXAMPLES["trench"]) | changes).items() if one is not None}


def along(*covers: tuple[float, float], **changes: Any) -> dict[str, Any]:
    """Give the example with stations (ft, in) in place of one cover."""
    stations = [{"station": quantity(at, "ft"), "cover": quantity(deep, "in")} for at, deep in covers]
    return example(cover=None, stations=stations, **changes)


def test_a_whole_trench_worked_by_hand() -> None:
    """Derived, line by line: 100 ft, 3 x 2 of trade 4 poured against a trench of slope 0.5 that a 24 in bucket digs.

    Bank 17.5 x 11 in (three and two of 4.5 in, 2 in between), concrete 3 in round it: 23.5 x 17 in at least. Cover
    40 in at the start and 64 in at the end, asphalt 4 in, bedding 2 in, select fill 6 in, loam of 1.25 and 0.9.
    """
    found = result(
        "trench",
        along(
            (0, 40),
            (100, 64),
            length=quantity(100, "ft"),
            practice="trench_formed",
            width=None,
            bucket_widths=[quantity(width, "in") for width in (36, 18, 24)],
            bedding=quantity(2, "in"),
            side_slope_ratio=0.5,
            select_fill=quantity(6, "in"),
            soil="loam",
            pavement=PAVEMENT,
        ),
    )

    def yards(square_inches: float) -> float:
        return square_inches / 144 * 100 / 27

    # the floor: 23.5 in are wanted, of 18, 24 and 36 in the 24 in bucket digs them; 64 + 17 + 2 in deep at the end
    assert found["width"]["value"] == pytest.approx(24)
    assert found["depth"]["value"] == pytest.approx(83)
    # concrete from 2 in above the floor, 24 + 2 x 0.5 x 2 = 26 in wide there: (26 + 0.5 x 17) x 17 = 586.5 in2
    assert (found["envelope_width"]["value"], found["envelope_height"]["value"]) == (
        pytest.approx(26),
        pytest.approx(17),
    )
    assert found["envelope_volume"]["value"] == pytest.approx(yards(586.5))
    # bedding: (24 + 0.5 x 2) x 2 = 50 in2
    assert found["bedding_volume"]["value"] == pytest.approx(yards(50))
    # select fill from 19 to 25 in above the floor: 25 x (24 + 12.5) - 19 x (24 + 9.5) = 912.5 - 636.5 = 276 in2
    assert found["select_fill_volume"]["value"] == pytest.approx(yards(276))
    # earth below the asphalt, 55 in deep at the start, 67 in the middle, 79 in at the end:
    # 55 x 51.5 = 2832.5; 67 x 57.5 = 3852.5; 79 x 63.5 = 5016.5; (2832.5 + 4 x 3852.5 + 5016.5) / 6 = 3876.5 in2
    assert found["excavation_volume"]["value"] == pytest.approx(yards(3876.5))
    # backfill: 3876.5 - 50 - 586.5 - 276 = 2964 in2
    assert found["backfill_volume"]["value"] == pytest.approx(yards(2964))
    # loose: 3876.5 x 1.25; spoil (3876.5 - 2964 / 0.9) x 1.25 = 728.96 in2: 18.75 yd3, two trucks of 10
    assert found["loose_excavation_volume"]["value"] == pytest.approx(yards(4845.625))
    assert found["spoil_volume"]["value"] == pytest.approx(yards(728.9583), rel=1e-6)
    assert (found["import_volume"]["value"], found["haul_load_count"]) == (0, 2)
    # 59 in deep at the start, 83 at the end; 5 ft deep from 100 x 1/24 ft on: 2 x (60 + 83) / 2 x 95.833 / 12 ft2
    assert found["shoring_area"] == {"value": pytest.approx(143 / 12 * 100 * 23 / 24), "unit": "ft2"}
    # the opening: 24 + 59 = 83 in wide at the start, 107 at the end; 24 in more is cut: 107 and 131, on average 119
    paved = found["pavement"]
    assert paved["kind"] == "asphalt"
    assert paved["cut_width"]["value"] == pytest.approx(131)
    assert paved["removal_area"] == paved["restoration_area"] == {"value": pytest.approx(11900 / 12), "unit": "ft2"}
    assert paved["removal_volume"] == paved["restoration_volume"]
    assert paved["removal_volume"]["value"] == pytest.approx(11900 / 12 / 3 / 27)
    # both edges run 1 ft out over 100 ft; both ends are cut across
    assert paved["saw_cut_length"]["value"] == pytest.approx(2 * math.hypot(100, 1) + (107 + 131) / 12)
    # tape 5 percent longer, 12 in down; 40 in of earth and 3 in of concrete over the ducts where it is least
    assert found["warning_tape_length"]["value"] == pytest.approx(105)
    assert found["warning_tape_depth"]["value"] == pytest.approx(12)
    assert found["least_cover_over_ducts"]["value"] == pytest.approx(43)
    assert found["measured_from"] == "from the top of the concrete to the top of finished grade"


VOLUMES = ("excavation", "bedding", "envelope", "select_fill", "backfill", "loose_excavation")


@given(
    covers=st.lists(st.floats(6, 120), min_size=3, max_size=6),
    practice=st.sampled_from(["formed", "trench_formed", "direct_buried"]),
    slope=st.sampled_from([0, 0.75, 1.5]),
    select=st.sampled_from([None, 6, 30]),
    pavement=st.sampled_from([None, PAVEMENT]),
)
def test_the_slices_of_a_trench_add_up_to_the_whole(
    covers: list[float], practice: str, slope: float, select: float | None, pavement: dict[str, Any] | None
) -> None:
    common: dict[str, Any] = {"practice": practice, "side_slope_ratio": slope, "pavement": pavement}
    if select is not None:
        common["select_fill"] = quantity(select, "in")
    if practice == "direct_buried":
        common |= {"concrete_cover": None, "pour_shape": None}

    def dug(depths: list[float]) -> dict[str, Any]:
        places = [(10.0 * index, depth) for index, depth in enumerate(depths)]
        return result("trench", along(*places, length=quantity(10 * (len(depths) - 1), "ft"), **common))

    whole = dug(covers)
    slices = [dug([covers[index], covers[index + 1]]) for index in range(len(covers) - 1)]
    for name in VOLUMES:
        total = sum(part[f"{name}_volume"]["value"] for part in slices)
        assert total == pytest.approx(whole[f"{name}_volume"]["value"], abs=1e-9), name
    assert sum(part["shoring_area"]["value"] for part in slices) == pytest.approx(whole["shoring_area"]["value"])
    rest = sum(whole[f"{name}_volume"]["value"] for name in VOLUMES[1:5])
    assert rest == pytest.approx(whole["excavation_volume"]["value"])
    if pavement:
        paved = sum(part["pavement"]["removal_area"]["value"] for part in slices)
        assert paved == pytest.approx(whole["pavement"]["removal_area"]["value"])


def test_the_narrowest_bucket_that_digs_the_width_is_taken() -> None:
    """Derived: a formed bank of 23.5 in with 6 in beside it takes 35.5 in."""

    def width(*inches: float, **changes: Any) -> float:
        request = example(width=None, bucket_widths=[quantity(one, "in") for one in inches], **changes)
        found: float = result("trench", request)["width"]["value"]
        return found

    assert width(48, 36, 12) == pytest.approx(36)
    assert width(35.5) == pytest.approx(35.5)
    assert width(24, practice="trench_formed") == pytest.approx(24)
    wider = example(width=quantity(40, "in"), bucket_widths=[quantity(48, "in")])
    assert result("trench", wider)["width"]["value"] == pytest.approx(48)


def test_concrete_fills_the_width_of_the_bucket() -> None:
    """Derived: 30 in x 17 in over 300 ft where the bank would do with 23.5 in."""
    wide = example(width=None, practice="trench_formed", bucket_widths=[quantity(30, "in")])
    assert result("trench", wide)["envelope_volume"]["value"] == pytest.approx(30 * 17 / 144 * 300 / 27)


def test_a_list_of_buckets_holds_one_that_is_wide_enough() -> None:
    [narrow] = faults("trench", example(width=None, bucket_widths=[quantity(12, "in"), quantity(24, "in")]))
    assert (narrow["pointer"], narrow["code"]) == ("#/bucket_widths", "no_bucket_wide_enough")
    assert narrow["minimum"] == quantity(35.5, "in")
    assert "takes 35.5 in" in narrow["message"]
    [empty] = faults("trench", example(width=None, bucket_widths=[]))
    assert empty["pointer"] == "#/bucket_widths"


def test_pavement_lies_within_the_cover() -> None:
    [fault] = faults("trench", example(cover=quantity(3, "in"), pavement=PAVEMENT))
    assert (fault["pointer"], fault["code"]) == ("#/pavement/thickness/value", "thicker_than_the_cover")
    assert fault["maximum"]["value"] == pytest.approx(3)
    assert result("trench", example(cover=quantity(4, "in"), pavement=PAVEMENT))["backfill_volume"]["value"] > 0
    assert "pavement" not in result("trench", example())


def test_shoring_is_counted_where_the_depth_asks_for_it_and_the_sides_stand_too_steep() -> None:
    """Derived: 43 + 17 in is 5 ft deep: both sides of 300 ft are 3,000 ft2."""

    def area(inches: float, **changes: Any) -> float:
        found: float = result("trench", example(cover=quantity(inches, "in"), **changes))["shoring_area"]["value"]
        return found

    assert area(43) == pytest.approx(3000)
    assert area(42.9) == 0
    assert area(43, side_slope_ratio=1.5) == 0
    assert area(43, soil_type="stable_rock") == 0


def test_what_must_be_brought_is_said_and_takes_trucks() -> None:
    """Derived: 3 x 47/12 x 300/27 bank yards less the concrete, at 0.5 compacted and 1.5 loose."""
    answer = ask("trench", example(compacted_volume_factor=0.5, loose_volume_factor=1.5))
    found = answer["result"]
    excavated, envelope = 3 * 47 / 12 * 300 / 27, 23.5 / 12 * 17 / 12 * 300 / 27
    brought = ((excavated - envelope) / 0.5 - excavated) * 1.5
    assert found["import_volume"]["value"] == pytest.approx(brought)
    assert found["haul_load_count"] == math.ceil(brought / 10)
    [note] = [one for one in answer["findings"] if one["code"] == "fill_must_be_brought"]
    assert (note["severity"], note["pointer"]) == ("note", "#/soil")
    assert note["actual"]["value"] == pytest.approx(brought)
    assert "fill_must_be_brought" not in codes(ask("trench", example()))


def test_trucks_by_their_capacity() -> None:
    spoil = result("trench", example())["spoil_volume"]["value"]
    found = result("trench", example(haul_capacity=quantity(16, "yd3")))
    assert found["haul_load_count"] == math.ceil(spoil / 16)
    endless = example(length=quantity(100_000, "ft"), side_slope_ratio=10, cover=quantity(1200, "in"))
    [fault] = faults(
        "trench",
        endless
        | {"loose_volume_factor": 3, "compacted_volume_factor": 0.5}
        | {"haul_capacity": quantity(0.1, "yd3"), "width": quantity(1200, "in")},
    )
    assert (fault["pointer"], fault["code"]) == ("#/haul_capacity", "too_many_loads")


def test_select_fill_that_does_not_fit_under_grade_is_said() -> None:
    answer = ask("trench", example(cover=quantity(5, "in"), select_fill=quantity(6, "in")))
    [found] = [one for one in answer["findings"] if one["code"] == "select_fill_above_grade"]
    assert (found["severity"], found["pointer"]) == ("caution", "#/select_fill")
    assert found["limit"]["value"] == pytest.approx(5)
    assert answer["result"]["backfill_volume"]["value"] == pytest.approx(0, abs=1e-9)


def test_select_fill_follows_the_cover_from_station_to_station() -> None:
    """Derived: 6 in of select fill over a cover that falls evenly from 12 in to none: 6 in half the way, then 3 in."""
    found = result("trench", along((0, 12), (300, 0), select_fill=quantity(6, "in")))
    beside = 36 * 17 - 23.5 * 17
    assert found["select_fill_volume"]["value"] == pytest.approx((beside + 36 * (6 + 3) / 2) / 144 * 300 / 27)


def test_depths_read_in_feet_and_inches() -> None:
    findings = ask("trench", example(cover=quantity(46.5, "in")))["findings"]
    deep = [one["message"] for one in findings if one["code"] in {"needs_egress", "needs_protection"}]
    assert len(deep) == 2
    assert all("The trench is 5 ft 3-1/2 in deep" in message for message in deep)


def test_a_bank_without_concrete_is_measured_from_its_ducts() -> None:
    bare = example(practice="direct_buried", concrete_cover=None)
    found = result("trench", bare)
    assert found["measured_from"] == "from the top of the ducts to the top of finished grade"
    assert found["least_cover_over_ducts"]["value"] == pytest.approx(30)
    assert (found["envelope_width"]["value"], found["envelope_height"]["value"]) == (
        pytest.approx(17.5),
        pytest.approx(11),
    )


def test_select_fill_that_reads_like_its_room_is_told_to_the_digit_that_parts_them() -> None:
    answer = ask("trench", example(select_fill=quantity(30.00001, "in")))
    [found] = [one for one in answer["findings"] if one["code"] == "select_fill_above_grade"]
    assert found["message"].startswith("Select fill of 30.00001 in does not fit everywhere over the bank")
    assert "there is room for 30 in" in found["message"]
