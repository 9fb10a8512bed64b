"""Laws of the heat in a bank: what never helps, what is alike both ways, what a limit means."""

from __future__ import annotations

from cProfile import Profile
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, quantity, result
from tests.properties.requests import RANDOMS
from tests.subjects.feeder.banks import bank, circuit, singles

FEW = settings(max_examples=25, deadline=None)
SIZES = ("2 AWG", "4/0 AWG", "350 kcmil", "500 kcmil", "750 kcmil")


def random_bank(random: Random) -> dict[str, Any]:
    """Make a bank of alike circuits without a current, in some of its ducts."""
    tiers = random.choice([[1], [2], [2, 2], [3, 3], [3, 2], [4, 4, 4]])
    names = [f"{tier + 1}-{at + 1}" for tier, ducts in enumerate(tiers) for at in range(ducts)]
    loaded = random.sample(names, random.randint(1, len(names)))
    cables = singles(random.choice(SIZES), insulation=random.choice(["XHHW-2", "THWN-2"]))
    circuits = [circuit(name, cables=cables, load_factor_percent=random.choice([50, 75, 100])) for name in loaded]
    setting = random.choice(["encased", "direct_buried"])
    concrete = {"concrete_thermal_resistivity": quantity(random.uniform(50, 85), "degC.cm/W")}
    return bank(
        tiers,
        *circuits,
        cover=quantity(random.uniform(18, 60), "in"),
        setting=setting,
        method=random.choice(["neher_mcgrath", "iec_60287"]),
        earth_thermal_resistivity=quantity(random.uniform(85, 200), "degC.cm/W"),
        **(concrete if setting == "encased" else {}),
    )


def ampacity(asked: dict[str, Any]) -> float:
    return float(result("ampacity", asked)["ampacity"]["value"])


@FEW
@given(random=RANDOMS)
def test_equal_currents_at_the_ampacity_bring_the_hottest_duct_to_its_limit(random: Random) -> None:
    asked = random_bank(random)
    amperes = ampacity(asked)
    again = asked | {"circuits": [one | {"current": quantity(amperes, "A")} for one in asked["circuits"]]}
    found = result("ampacity", again, "units=metric")
    assert max(duct["conductor_temperature"]["value"] for duct in found["ducts"]) == pytest.approx(75, abs=0.01)
    assert found["current_factor"] == pytest.approx(1, abs=1e-6)


@FEW
@given(random=RANDOMS, more=st.floats(1.01, 2))
def test_more_depth_resistivity_load_or_warmth_never_raises_the_ampacity(random: Random, more: float) -> None:
    asked = random_bank(random)
    amperes = ampacity(asked) * (1 + 1e-9)
    for member in {"cover", "earth_thermal_resistivity", "concrete_thermal_resistivity"} & set(asked):
        grown = quantity(asked[member]["value"] * more, asked[member]["unit"])
        assert ampacity(asked | {member: grown}) <= amperes, member
    assert ampacity(asked | {"earth_temperature": quantity(20 + 5 * more, "degC")}) <= amperes
    steady = [one | {"load_factor_percent": 100} for one in asked["circuits"]]
    assert ampacity(asked | {"circuits": steady}) <= amperes


@FEW
@given(random=RANDOMS)
def test_one_more_loaded_duct_never_raises_the_ampacity(random: Random) -> None:
    asked = random_bank(random)
    circuits = asked["circuits"]
    if len(circuits) > 1:
        assert ampacity(asked) <= ampacity(asked | {"circuits": circuits[:-1]}) * (1 + 1e-9)


@FEW
@given(random=RANDOMS)
def test_two_ducts_warm_each_other_alike(random: Random) -> None:
    """The rise a duct's heat makes at another is the same, watt for watt, the other way round; also across a tier."""
    one, other = random.sample([f"{tier}-{at}" for tier in (1, 2, 3) for at in (1, 2, 3)], 2)
    shares = []
    for warm, cold in ((one, other), (other, one)):
        asked = bank([3, 3, 3], circuit(warm, amperes=250), circuit(cold, amperes=0.001))
        heated, idle = result("ampacity", asked, "units=metric")["ducts"]
        shares.append(idle["mutual_rise"]["value"] / heated["heat"]["value"])
    assert shares[0] == pytest.approx(shares[1], rel=1e-6)


@pytest.mark.parametrize("tiers", [[1], [2, 2], [3, 3]])
def test_the_two_methods_part_no_more_than_they_are_known_to(tiers: list[int]) -> None:
    """By 2 with the same constants of the air in the ducts; those of plastic, which one of them lacks, part them more
    the smaller the cables are.
    """
    names = [f"{tier + 1}-{at + 1}" for tier, ducts in enumerate(tiers) for at in range(ducts)]
    for size in SIZES:
        asked = bank(tiers, *(circuit(one, cables=singles(size)) for one in names), method="both")
        cement = result("ampacity", asked | {"duct_material": "asbestos_cement"})["other_method"]
        plastic = result("ampacity", asked)["other_method"]
        assert cement["difference_percent"] < 2
        assert plastic["difference_percent"] < (5 if size != "2 AWG" else 7)


def test_twelve_ducts_in_three_circuits_cost_less_than_forty_single_pulls() -> None:
    """Counted in calls of Python, which do not depend on what else the machine does."""

    def calls(operation: str, request: Any) -> int:
        ask(operation, request)
        profile = Profile()
        profile.runcall(ask, operation, request)
        return sum(entry.callcount for entry in profile.getstats())

    ducts = [f"{tier}-{at}" for tier in (1, 2, 3) for at in (1, 2, 3, 4)]
    asked = bank([4, 4, 4], *(circuit(*ducts[at : at + 4], amperes=800) for at in (0, 4, 8)))
    assert calls("ampacity", asked) < 40 * calls("pull-tension", EXAMPLES["pull-tension"])
