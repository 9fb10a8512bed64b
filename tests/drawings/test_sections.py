"""What the sections of banks, trenches and conduits show: names, figures, marks."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest
from ductrun.drawings.bank_section import bank_section
from ductrun.drawings.bank_view import names_of
from ductrun.drawings.conduit_section import Conductors, Figures, conduit_section
from ductrun.drawings.naming import cable_words, conduit_words
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.trench_view import Ground, Surface
from ductrun.engineering.bank import Concrete, bare, encased
from ductrun.kit.telling import METRIC, US
from ductrun.subjects.parts.cables import CableLine
from ductrun.subjects.parts.conduit import MeasuredConduit

from tests.asking import EXAMPLES, quantity
from tests.drawings.made import INCH, assessed, assessed_of, bank
from tests.drawings.seen import SPACE, assert_readable, read, told, words_of

COVER = Concrete(3 * INCH, 4 * INCH, 5 * INCH)


def circles(svg: str) -> list[dict[str, Any]]:
    return [dict(node.attrib) for node in read(svg).iter(f"{SPACE}circle")]


def test_ducts_are_named_from_the_bottom_and_from_the_left() -> None:
    placed = bank(3, 2)
    assert names_of(placed) == ["1-1", "1-2", "1-3", "2-1", "2-2"]
    named = {name: (duct.x, duct.y) for name, duct in zip(names_of(placed), placed.ducts, strict=True)}
    assert named["1-1"][0] < named["1-2"][0] < named["1-3"][0]
    assert named["1-1"][1] < named["2-1"][1]


def test_a_bank_shows_its_dimensions_and_names() -> None:
    svg = bank_section(encased(bank(3, 2), COVER, stepped=False), US)
    words = words_of(svg)
    # 3 x 4.5 + 2 x 2 + 2 x 5 wide, 2 x 4.5 + 2 + 3 + 4 high (derived)
    for expected in ("width 2 ft 3-1/2 in", "1 ft", "6 in", "3 in above", "4 in below", "5 in beside", "2 in clear"):
        assert expected in words
    assert "4.5 in duct" in words
    assert {"1-1", "1-2", "1-3", "2-1", "2-2"} <= set(words)
    assert "Looking from start to end." in words
    _, description = told(svg)
    assert description == (
        "5 ducts in 2 tiers, from the bottom up: 3, 2. The concrete is 2 ft 3-1/2 in wide and 1 ft 6 in high."
    )


def test_metric_dimensions_are_in_millimetres() -> None:
    words = words_of(bank_section(encased(bank(1), COVER, stepped=False), METRIC))
    assert "114.3 mm duct" in words
    assert "76.2 mm above" in words


def test_a_duct_drawn_above_another_stands_above_it() -> None:
    svg = bank_section(bare(bank(1, 1)), US)
    low, high = (float(circle["cy"]) for circle in circles(svg))
    assert high < low


def test_ducts_too_small_for_their_names_are_named_by_tiers_beside_them() -> None:
    words = words_of(bank_section(encased(bank(40, 12), COVER, stepped=False), US))
    assert "1-1 to 1-40" in words
    assert "2-1 to 2-12" in words


def test_a_signal_duct_has_a_second_ring_and_is_told() -> None:
    without = bank_section(bare(bank(2, 2)), US)
    with_one = bank_section(bare(bank(2, 2, signal=1)), US)
    assert len(circles(with_one)) == len(circles(without)) + 1 + 2  # its ring, and the two of the legend
    assert "two rings: a signal duct" in words_of(with_one)
    assert "Signal ducts: 2-2." in told(with_one)[1]


def test_circuits_are_listed_with_their_ducts() -> None:
    svg = bank_section(bare(bank(2, 2)), US, circuits={"1-1": "feeder <A>", "1-2": "feeder <A>", "2-1": "spare"})
    assert "1-1, 1-2: feeder <A>" in words_of(svg)
    assert "2-1: spare" in words_of(svg)


def test_a_trench_shows_cover_tape_bedding_and_sides() -> None:
    envelope = encased(bank(3, 2), COVER, stepped=False)
    # 30 of cover, 18 of concrete, 6 of bedding; at grade 36 + 2 x 0.5 x 54 (derived)
    svg = bank_section(envelope, US, Ground(36 * INCH, 54 * INCH, 0.5, 6 * INCH, 12 * INCH))
    words = words_of(svg)
    for expected in ("cover 2 ft 6 in", "concrete 1 ft 6 in", "bedding 6 in", "tape at 1 ft", "floor 3 ft"):
        assert expected in words
    assert "at grade 7 ft 6 in" in words
    assert "Sides 0.5 to 1, level to upright." in words
    assert "A warning tape lies 1 ft below grade." in told(svg)[1]


def test_pavement_over_a_trench_is_shown_and_told() -> None:
    envelope = encased(bank(3, 2), COVER, stepped=False)
    paved = Ground(36 * INCH, 54 * INCH, 0.0, 6 * INCH, 12 * INCH, Surface("asphalt", 4 * INCH, 60 * INCH))
    svg = bank_section(envelope, US, paved)
    assert "asphalt 4 in" in words_of(svg)
    assert "4 in of asphalt lie over it, cut 5 ft wide." in told(svg)[1]
    assert_readable(svg)
    bare_svg = bank_section(envelope, US, paved._replace(pavement=None))
    assert len(read(svg).findall(f".//{SPACE}rect")) == len(read(bare_svg).findall(f".//{SPACE}rect")) + 1


def test_the_pavement_of_a_trench_is_in_its_drawing() -> None:
    paved = {"kind": "concrete", "thickness": {"value": 6, "unit": "in"}}
    assert "concrete pavement 6 in" in words_of(DRAWINGS["trench"](assessed("trench", pavement=paved), US))


def test_a_stepped_pour_is_told() -> None:
    assert "high, stepped with the tiers." in told(bank_section(encased(bank(3, 1), COVER, stepped=True), US))[1]


@pytest.mark.parametrize("number", [1, 3, 4, 9, 40])
def test_as_many_conductors_are_drawn_as_there_are(number: int) -> None:
    figures = Figures(20.0, 40.0, "Why.", True, None)
    svg = conduit_section(0.1, [Conductors("10 AWG THHN", number, 0.01)], figures, US)
    assert len(circles(svg)) == number + 2 + 1  # the conduit's two circles, and the sample in the list


def test_what_cannot_be_laid_is_told_and_none_is_drawn() -> None:
    svg = conduit_section(0.1, [Conductors("500 kcmil", 3, 0.06)], Figures(108.0, 40.0, "Why.", False, None), US)
    assert len(circles(svg)) == 3
    assert "No way was found in which all of them lie in this" in words_of(svg)
    assert "No way was found" in told(svg)[1]
    many = conduit_section(1.0, [Conductors("18 AWG", 101, 0.002)], Figures(1.0, 40.0, "Why.", True, None), US)
    assert "101 conductors are too many to draw." in words_of(many)


def test_fill_limit_and_jam_are_told_in_words_too() -> None:
    svg = DRAWINGS["fill"](assessed("fill"), US)
    words = " ".join(words_of(svg))
    assert "PVC schedule 40, trade size 3" in words
    assert "limit 40 %" in words
    assert "Filled 36.00 %: within the limit." in words
    assert "3 \u00d7 500 kcmil THHN" in words
    over = assessed("fill", conduit={"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"})
    assert "over the limit" in " ".join(words_of(DRAWINGS["fill"](over, US)))
    tight = conduit_section(0.1, [Conductors("a", 3, 0.0333)], Figures(33.3, 40.0, "Why.", True, 3.0), US)
    assert "inside the jam band" in " ".join(words_of(tight))


def test_the_size_that_complies_is_drawn_or_the_largest() -> None:
    assert words_of(DRAWINGS["conduit-size"](assessed("conduit-size"), US))[0] == "PVC schedule 40, trade size 2"
    cable = {"kind": "measured", "diameter": {"value": 4, "unit": "in"}}
    none = assessed("conduit-size", cables=[{"count": 4, "cable": cable}])
    assert words_of(DRAWINGS["conduit-size"](none, US))[0].startswith("No size complies.")


def test_more_than_a_list_holds_is_counted() -> None:
    lines = [Conductors(f"cable {index}", 1, 0.001) for index in range(43)]
    assert "And 3 lines more." in words_of(conduit_section(0.1, lines, Figures(1.0, 40.0, "Why.", True, None), US))


@pytest.mark.parametrize(
    ("words", "cable"),
    [
        ("500 kcmil THHN", {"kind": "listed", "insulation": "THHN", "size": "500 kcmil"}),
        ("500 kcmil XHHW, compact", {"kind": "compact", "insulation": "XHHW", "size": "500 kcmil"}),
        ("6 AWG bare", {"kind": "bare", "size": "6 AWG"}),
        ("conductor of 1.5 in", {"kind": "measured", "diameter": {"value": 1.5, "unit": "in"}}),
        ("cable of 1.5 in", {"kind": "multiconductor", "diameter": {"value": 1.5, "unit": "in"}}),
    ],
)
def test_a_cable_is_called_as_the_trade_calls_it(words: str, cable: dict[str, Any]) -> None:
    line = CableLine.model_validate({"count": 1, "cable": cable})
    assert cable_words(line.cable, US).replace("\u00a0", " ") == words


def test_a_measured_conduit_is_called_by_its_bore() -> None:
    inch = {"value": 1.5, "unit": "in"}
    conduit = MeasuredConduit.model_validate({"kind": "measured", "inside_diameter": inch})
    assert conduit_words(conduit, US).replace("\u00a0", " ") == "conduit of 1.5 in bore"


def caged(**changes: Any) -> tuple[Any, str]:
    """Give the pour of the example of encasement with steel in it, and its drawing."""
    request = copy.deepcopy(EXAMPLES["encasement"]) | {"reinforcing": {"bar_count": 8, "bar_size": "no_4"}} | changes
    request["concrete_cover"] = {side: quantity(4, "in") for side in ("top", "side", "bottom")}
    found = assessed_of("encasement", request)
    return found, DRAWINGS["encasement"](found, US)


def test_the_steel_of_a_pour_is_drawn_in_its_concrete_and_said_in_words() -> None:
    found, svg = caged()
    _, bare_svg = caged(reinforcing={"bar_count": 1, "bar_size": "no_4"})
    assert len(circles(svg)) - len(circles(bare_svg)) == 7
    dots = [one for one in circles(svg) if "f-limit" in one["class"]]
    ducts = [one for one in circles(svg) if "f-paper" in one["class"]]
    assert len(dots) == 8
    for dot in dots:
        for duct in ducts:
            apart = math.dist(*[(float(one["cx"]), float(one["cy"])) for one in (dot, duct)])
            assert apart > float(duct["r"]), "no bar in a duct"
    words = " ".join(words_of(svg))
    assert "8 no. 4 bars" in words
    assert "no. 3 ties, 1 ft apart, 3 in of concrete outside them." in words
    assert "shown evenly apart" in words
    assert f"{found.bars.tie_count}" not in words, "how many there are is another figure for every stretch"
    assert_readable(svg)


def test_steel_around_a_pour_that_steps_is_said_and_not_drawn() -> None:
    tiers = {"bank": EXAMPLES["encasement"]["bank"] | {"tiers": [3, 1]}, "pour_shape": "stepped"}
    _, svg = caged(**tiers)
    assert not [one for one in circles(svg) if "f-limit" in one["class"]]
    assert "not drawn, for the concrete steps with the tiers" in " ".join(words_of(svg))
