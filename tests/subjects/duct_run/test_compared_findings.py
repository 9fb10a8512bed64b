"""Findings of runs side by side: gained and lost is what came and went, not what is told together otherwise."""

from __future__ import annotations

from typing import Any

from tests.asking import EXAMPLES, ask, quantity, result
from tests.subjects.duct_run.remedied import altered, remedied
from tests.subjects.duct_run.runs import KILN, POLE, buried


def beside(base: dict[str, Any], other: dict[str, Any], severity: str = "violation") -> tuple[list[Any], list[Any]]:
    """Give the findings of a severity that a run gained and lost against a base."""
    runs = [{"name": "base", "run": base}, {"name": "other", "run": other}]
    told = result("duct-run/compare", {"runs": runs})["runs"][1]
    gained, lost = (
        [(one["code"], one["message"].partition(":")[0]) for one in told[side] if one["severity"] == severity]
        for side in ("findings_gained", "findings_lost")
    )
    return gained, lost


def shallow(*covers: float, named: bool = True) -> dict[str, Any]:
    """Give a run of stretches between handholes with covers in inches; 18 in are required."""
    run = altered(POLE, lambda run: run.update(start={"kind": "handhole"}, end={"kind": "handhole", "name": "far"}))
    run["stretches"] = [
        {"setting": buried(cover), "length": quantity(100, "ft"), "pull_point": {"kind": "handhole"}}
        for cover in covers
    ]
    del run["stretches"][-1]["pull_point"]
    for name, stretch in zip(("yard", "lawn", "drive"), run["stretches"] if named else (), strict=False):
        stretch["name"] = name
    return run


def test_of_two_stretches_told_together_the_one_that_is_mended_is_lost_alone() -> None:
    assert beside(shallow(12, 12), shallow(12, 24)) == ([], [("too_shallow", "Lawn")])
    assert beside(shallow(12, 24), shallow(12, 12)) == ([("too_shallow", "Lawn")], [])
    assert beside(shallow(12, 24), shallow(24, 12)) == ([("too_shallow", "Lawn")], [("too_shallow", "Yard")])


def test_a_finding_whose_figures_changed_is_the_same_finding() -> None:
    assert beside(shallow(12, 12), shallow(12, 10)) == ([], []), "two sentences now, of the same two places"


def test_a_stretch_without_a_name_that_stands_behind_one_more_has_moved() -> None:
    assert beside(shallow(12, named=False), shallow(24, 12, named=False)) == ([], [])
    assert beside(shallow(12, named=False), shallow(12, 12, named=False)) == ([("too_shallow", "Stretch 2")], [])


def test_a_remedy_beside_its_run_loses_what_it_says_and_gains_no_violation() -> None:
    base = shallow(12, 24)
    [one] = [each for each in remedied(base)["found"] if each["change"] == "cover"]
    assert beside(base, one["run"]) == ([], [("too_shallow", "Yard")])


def test_what_one_more_stretch_is_told_with_is_gained_of_that_stretch_alone() -> None:
    field = altered(KILN, lambda run: run["stretches"][2]["setting"].update(kind="encased"))
    gained, lost = beside(KILN, field, "caution")
    assert {name for _, name in gained} == {"Lawn"}
    assert {name for _, name in lost} <= {"Lawn"}


def test_a_finding_of_two_circuits_pulled_alike_is_the_same_where_each_is_pulled_by_itself() -> None:
    def each_by_itself(run: dict[str, Any]) -> None:
        run["stretches"][2]["sections"][0]["length"] = quantity(20, "ft")  # a higher wall: other figures
        for circuit in run["circuits"]:
            circuit["pulling"] = {"feed_length": quantity(20, "m")}

    run = altered(EXAMPLES["duct-run"], lambda run: run.pop("pulling"))
    assert "brake_not_judged" in [one["code"] for one in ask("duct-run", run)["findings"]]
    gained, lost = beside(run, altered(run, each_by_itself), "caution")
    assert "brake_not_judged" not in [code for code, _ in (*gained, *lost)]
