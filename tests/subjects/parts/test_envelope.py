"""One envelope: what encasement pours is what trench leaves room for."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, codes, faults, quantity, result

CONDUITS = st.sampled_from(
    [{"kind": "listed", "type": "pvc_schedule_40", "trade_size": size} for size in ("2", "4", "6")]
)
INCHES = st.floats(min_value=0, max_value=12).map(lambda inches: quantity(inches, "in"))
SIDES = st.fixed_dictionaries({}, optional={"top": INCHES, "bottom": INCHES, "side": INCHES})


def _split(ducts: int, usual: int, conduit: dict[str, Any]) -> list[dict[str, Any]]:
    """Give the ducts of a tier, so many of them the usual ones and the others of a conduit of their own."""
    others = {"count": ducts - usual, "conduit": conduit}
    return [{"count": usual}, others] if usual else [others]


@st.composite
def banks(draw: st.DrawFn) -> dict[str, Any]:
    tiers = draw(st.lists(st.integers(1, 5), min_size=1, max_size=5))
    bank = {
        "conduit": draw(CONDUITS),
        "tiers": tiers,
        "horizontal_separation": draw(INCHES),
        "vertical_separation": draw(INCHES),
    }
    if draw(st.booleans()):
        del bank["tiers"]
        bank["tier_ducts"] = [_split(ducts, draw(st.integers(0, ducts - 1)), draw(CONDUITS)) for ducts in tiers]
    if draw(st.booleans()):
        bank["signal_ducts"] = [draw(st.integers(0, ducts)) for ducts in tiers]
        bank["alignment"] = draw(st.sampled_from(["centered", "left", "right"]))
    return bank


@given(
    bank=banks(),
    practice=st.sampled_from(["formed", "trench_formed", "direct_buried"]),
    shape=st.sampled_from([None, "bounding_rectangle", "stepped"]),
    concrete=SIDES,
    feet=st.floats(min_value=1, max_value=2000),
    wider=st.sampled_from([None, 0, 3, 24]),
    slope=st.sampled_from([0, 0.5, 1.5]),
    bedding=st.sampled_from([0, 4]),
)
def test_trench_and_encasement_agree_on_the_envelope(
    bank: dict[str, Any],
    practice: str,
    shape: str | None,
    concrete: dict[str, Any],
    feet: float,
    wider: float | None,
    slope: float,
    bedding: float,
) -> None:
    common: dict[str, Any] = {"length": quantity(feet, "ft"), "bank": bank}
    if practice != "direct_buried":
        common["concrete_cover"] = concrete
    if shape is not None and (practice == "formed" or shape != "stepped"):
        common["pour_shape"] = shape
    digging = common | {"practice": practice, "cover": quantity(30, "in"), "side_slope_ratio": slope}
    digging["bedding"] = quantity(bedding, "in")
    least = result("encasement", common)["envelope_width"]["value"] if practice != "direct_buried" else 0
    if wider is not None and practice != "direct_buried":
        digging["width"] = quantity(least + wider, "in")
    dug = result("trench", digging)
    if practice == "trench_formed":
        common |= {"trench_width": dug["envelope_width"], "side_slope_ratio": slope}
    poured = result("encasement", common)
    if practice != "direct_buried":
        assert dug["envelope_width"]["value"] == pytest.approx(poured["envelope_width"]["value"])
        assert dug["envelope_height"]["value"] == pytest.approx(poured["envelope_height"]["value"])
    taken = "duct_volume" if practice == "direct_buried" else "gross_volume"
    assert dug["envelope_volume"]["value"] == pytest.approx(poured[taken]["value"])
    rest = [dug[f"{name}_volume"]["value"] for name in ("bedding", "envelope", "select_fill", "backfill")]
    assert sum(rest) == pytest.approx(dug["excavation_volume"]["value"])


@pytest.mark.parametrize("name", ["encasement", "trench"])
def test_concrete_thinner_than_the_least_envelope_is_cautioned_side_by_side(name: str) -> None:
    thin = EXAMPLES[name] | {"concrete_cover": {"top": quantity(1.5, "in"), "side": quantity(2, "in")}}
    [found] = [finding for finding in ask(name, thin)["findings"] if finding["code"] == "thin_envelope"]
    assert (found["pointer"], found["limit"]) == ("#/concrete_cover/top", quantity(2, "in"))
    assert "thin_envelope" not in codes(ask(name, EXAMPLES[name]))


@pytest.mark.parametrize("name", ["encasement", "trench"])
def test_the_published_spread_is_told_with_a_concrete_cover_that_is_assumed(name: str) -> None:
    request = {key: value for key, value in EXAMPLES[name].items() if key not in ("concrete_cover", "pour_shape")}
    told = {place: one for one in ask(name, request)["assumptions"] for place in one["pointers"]}
    assert set(told) == {
        "#/concrete_cover/top",
        "#/concrete_cover/bottom",
        "#/concrete_cover/side",
        "#/pour_shape",
    }
    assert told["#/concrete_cover/top"]["citation"].endswith("published from 2 to 3 in")


DUCTS = {kind: {"kind": "listed", "type": kind, "trade_size": "4"} for kind in ("pvc_eb_20", "pvc_db_120")} | {
    "pvc_type_a": {"kind": "listed", "type": "pvc_type_a", "trade_size": "3"},
    "pvc_schedule_40": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
    "measured": {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")},
}


@pytest.mark.parametrize("name", ["encasement", "trench"])
@pytest.mark.parametrize(
    ("duct", "severity", "thin", "thick"),
    [
        ("pvc_eb_20", "violation", "violates", "complies"),
        ("pvc_type_a", "violation", "violates", "complies"),
        ("pvc_db_120", "caution", "not_judged", None),
        ("measured", "caution", "not_judged", None),
        ("pvc_schedule_40", "caution", None, None),
    ],
)
def test_the_least_envelope_binds_the_ducts_that_are_approved_only_when_encased(
    name: str, duct: str, severity: str, thin: str | None, thick: str | None
) -> None:
    def poured(inches: float) -> dict[str, Any]:
        bank = EXAMPLES[name]["bank"] | {"conduit": DUCTS[duct]}
        cover = {side: quantity(inches, "in") for side in ("top", "bottom", "side")}
        return ask(name, EXAMPLES[name] | {"bank": bank, "concrete_cover": cover})

    found = poured(1.9)
    assert [one["severity"] for one in found["findings"] if one["code"] == "thin_envelope"] == [severity] * 3
    assert found.get("verdict") == thin
    kept = poured(2)
    assert kept.get("verdict") == thick
    assert "thin_envelope" not in codes(kept)


def test_one_tier_of_ducts_that_need_concrete_is_enough() -> None:
    tiers = [DUCTS["measured"], DUCTS["pvc_schedule_40"], DUCTS["pvc_eb_20"]]
    bank = EXAMPLES["encasement"]["bank"] | {"tier_ducts": [[{"count": 3, "conduit": duct}] for duct in tiers]}
    del bank["tiers"]
    thin = EXAMPLES["encasement"] | {"bank": bank, "concrete_cover": {"top": quantity(1, "in")}}
    assert ask("encasement", thin)["verdict"] == "violates"


def test_a_thin_envelope_is_told_in_the_units_of_the_answer() -> None:
    thin = EXAMPLES["encasement"] | {"concrete_cover": {"top": quantity(1, "in")}}
    [found] = [one for one in ask("encasement", thin, "units=metric")["findings"] if one["code"] == "thin_envelope"]
    assert "of 25.4 mm is under the 50.8 mm of concrete" in found["message"]


SLOPED = {
    "length": quantity(100, "ft"),
    "bank": EXAMPLES["trench"]["bank"],
    "side_slope_ratio": 1,
}


def test_a_pour_against_the_sides_of_a_sloped_trench_is_a_trapezoid() -> None:
    """Derived: 3 x 2 of trade 4: 23.5 in wide, 17 in high, slope 1: (23.5 + 17) x 17 / 144 x 100 / 27 = 17.71 yd3.

    The rectangle would be 23.5 x 17 / 144 x 100 / 27 = 10.28 yd3.
    """
    dug = result("trench", SLOPED | {"practice": "trench_formed", "cover": quantity(36, "in")})
    poured = result("encasement", SLOPED | {"trench_width": dug["width"]})
    for told in (dug["envelope_volume"], poured["gross_volume"]):
        assert told["value"] == pytest.approx(17.71, abs=0.005)
    assert dug["width"]["value"] == pytest.approx(23.5)
    assert poured["envelope_top_width"]["value"] == pytest.approx(23.5 + 2 * 17)
    rest = [dug[f"{name}_volume"]["value"] for name in ("bedding", "envelope", "select_fill", "backfill")]
    assert sum(rest) == pytest.approx((23.5 + 53) * 53 / 144 * 100 / 27)


def test_forms_stand_upright() -> None:
    [fault] = faults("encasement", SLOPED)
    assert (fault["pointer"], fault["code"]) == ("#/side_slope_ratio", "only_with_a_trench_form")
    assert "envelope_top_width" not in result("encasement", SLOPED | {"side_slope_ratio": 0})


def test_forms_are_both_sides_of_the_pour_and_what_overhangs() -> None:
    """Derived: 3 x 2 of trade 4, 17 in high, 100 ft: 2 x 17/12 x 100 = 283.3 ft2 of forms; none against earth.

    Stepped with 1 below 3: the upper tier is 23.5 in wide and the lower 10.5 in, so 13 in overhang beside.
    """
    formed = {"length": quantity(100, "ft"), "bank": EXAMPLES["trench"]["bank"]}
    assert result("encasement", formed)["form_area"] == {"value": pytest.approx(283.33, abs=0.005), "unit": "ft2"}
    assert result("encasement", formed | {"trench_width": quantity(30, "in")})["form_area"]["value"] == 0
    stepped = formed | {"pour_shape": "stepped", "bank": EXAMPLES["trench"]["bank"] | {"tiers": [1, 3]}}
    assert result("encasement", stepped)["form_area"]["value"] == pytest.approx((2 * 17 + 13) / 12 * 100)
    upright = stepped | {"bank": EXAMPLES["trench"]["bank"] | {"tiers": [3, 1]}}
    assert result("encasement", upright)["form_area"]["value"] == pytest.approx(2 * 17 / 12 * 100)


def test_a_width_that_is_refused_is_told_with_one_that_is_enough() -> None:
    narrow = {"length": quantity(100, "ft"), "bank": EXAMPLES["trench"]["bank"], "trench_width": quantity(0.5, "m")}
    [fault] = faults("encasement", narrow)
    assert fault["minimum"] == quantity(0.5969, "m")
    assert "takes 0.5969 m" in fault["message"]
    assert result("encasement", narrow | {"trench_width": fault["minimum"]})["form_area"]["value"] == 0
