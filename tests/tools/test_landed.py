"""The gate against the contract that landed last: a break must stand in the changelog, whoever it breaks."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest
from ductrun.subjects import OPERATIONS
from tools import gate
from tools.contract import CONTRACT
from tools.landed import contract_before, unlisted

from tests.tools.test_gate import BREAKS, TODAY, changed, schema

HEAD = "# What changed\n\n## Unreleased\n\n| where | before | now |\n|---|---|---|\n"


def listing(*rows: str) -> str:
    return HEAD + "".join(f"| {row} |\n" for row in rows) + "\n## 1.0.0\n\n| `fill` answer | `conduit_area` | |\n"


LISTED = {
    "an operation goes": "`fill` | `/v1/fill` | ",
    "a parameter goes": "every calculation | `units` | ",
    "a status goes": "`fill` | the status `422` | ",
    "a member of a request goes": "`trench` request | `bedding` | ",
    "a member of a request must be given": "`TrenchRequest` | `bedding` optional | required",
    "a value is refused": "`fill` request | the `trade_size` `4` | ",
    "a bound is narrower": "`trench` request | `side_slope_ratio` to 10 | to 5",
    "a bound of a quantity is narrower": "`trench` request | `cover` | at most 100 ft",
    "a type changes": "`calculate_fill` answer | `fill_percent`: a number | a text",
    "a kind of a union goes": "`fill` request | `conduit` of the kind `measured` | ",
    "a member of an answer goes": "`fill` answer | `result.fill_percent` | ",
    "a member of an answer may be absent": "`POST /v1/fill` | `fill_percent` | may be absent",
    "what became of an item may be of a kind more": "`BatchItemAnswer` | | the kind `pause`",
    "a member of a line of a stream goes": "`/v1/batch/stream` | `failed_count` of the summary | ",
    "an operation of a batch goes": "`BatchItem` | the kind `fill` | ",
    "a default of a parameter changes": "`fill` | | `units` as metric",
    "a parameter moves": "`/v1/fill` | `units` in the query | in a header",
    "a count of an answer may be larger": "`fill` answer | `conductor_count` | any",
    "a union is told apart by another member": "`Conduit` | by `kind` | by sort",
    "a set may not grow any more": "every answer | `Verdict` may grow | ",
    "a header goes": "`/v1/tables/units` | `ETag` | ",
    "a key is asked for": "`/v1/fill` | no `security` | ",
    "an answer may have a value more": "`FillItemAnswer` | | `type` may be `reply`",
}


@pytest.mark.parametrize("name", BREAKS)
def test_a_break_passes_where_the_changelog_lists_it_and_fails_where_it_does_not(name: str) -> None:
    change, expected = BREAKS[name]
    new = changed(change)
    assert any(str(one).startswith(expected) for one in unlisted(TODAY, new, listing()))
    left = [str(one) for one in unlisted(TODAY, new, listing(LISTED[name]))]
    assert not [one for one in left if one.startswith(expected)], left


@pytest.mark.parametrize(
    "row",
    [
        "`fill` answer | conduit_area | ",
        "`trench` answer | `conduit_area` | ",
        "every request | `conduit_area` | ",
        "every answer | `conduit_area` | ",
        "fill answer | `conduit_area` | ",
        "`fill` answer | `conduit_areas` | ",
    ],
    ids=["no backticks", "another operation", "another side", "not in every answer", "no name of a place", "not it"],
)
def test_a_row_that_does_not_name_both_the_place_and_the_member_lists_nothing(row: str) -> None:
    new = changed(lambda document: schema(document, "FillResult")["properties"].pop("conduit_area"))
    assert [str(one) for one in unlisted(TODAY, new, listing(row))] == ["FillResult.conduit_area: is gone"]


def test_one_row_lists_what_every_answer_loses() -> None:
    def lose(document: dict[str, Any]) -> None:
        for name, one in document["components"]["schemas"].items():
            if name.endswith("Answer"):
                one.get("properties", {}).pop("notice", None)

    new = changed(lose)
    assert len(unlisted(TODAY, new, listing())) >= len(OPERATIONS)
    assert unlisted(TODAY, new, listing("every answer | `notice` | ")) == []


def test_a_row_that_landed_before_excuses_nothing_and_a_new_name_is_not_one_that_goes() -> None:
    new = changed(lambda document: schema(document, "FillResult")["properties"].pop("conduit_area"))
    row = "`fill` answer | `conduit_area` | "
    assert unlisted(TODAY, new, listing(row)) == []
    assert [str(one) for one in unlisted(TODAY, new, listing(row), listing(row))] == [
        "FillResult.conduit_area: is gone"
    ]
    renamed = "`fill` answer | `area` | `conduit_area`"
    assert [str(one) for one in unlisted(TODAY, new, listing(renamed))] == ["FillResult.conduit_area: is gone"]


def git(folder: Path, *arguments: str) -> None:
    name = ["-c", "user.name=a", "-c", "user.email=a@example.org", "-c", "commit.gpgsign=false"]
    subprocess.run(["git", *name, *arguments], cwd=folder, check=True, capture_output=True)


def land(folder: Path, number: int) -> None:
    (folder / "v1.json").write_text(json.dumps({"landed": number}), encoding="utf-8")
    git(folder, "add", "v1.json")
    git(folder, "commit", "-m", f"contract {number}")


@pytest.fixture
def history(tmp_path: Path) -> Path:
    git(tmp_path, "init", "-b", "main")
    land(tmp_path, 1)
    return tmp_path


def test_the_contract_before_is_that_before_its_last_change(history: Path) -> None:
    contract = history / "v1.json"
    assert contract_before(contract) is None
    land(history, 2)
    (history / "other").write_text("x", encoding="utf-8")
    git(history, "add", "other")
    git(history, "commit", "-m", "something else")
    assert contract_before(contract) == {"landed": 1}
    contract.write_text("{}", encoding="utf-8")
    assert contract_before(contract) == {"landed": 2}


def test_a_branch_that_is_merged_is_one_change(history: Path) -> None:
    git(history, "checkout", "-b", "branch")
    land(history, 2)
    land(history, 3)
    git(history, "checkout", "main")
    git(history, "merge", "--no-ff", "-m", "merge", "branch")
    assert contract_before(history / "v1.json") == {"landed": 1}


def test_a_shallow_history_and_none_at_all_have_no_contract_before(history: Path) -> None:
    land(history, 2)
    git(history, "clone", "--depth", "1", f"file://{history}", "shallow")
    assert contract_before(history / "shallow" / "v1.json") is None
    shutil.rmtree(history / ".git")
    assert contract_before(history / "v1.json") is None


def test_without_a_history_the_gate_says_so_and_passes(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(gate, "contract_before", lambda _: None)
    assert gate.main([]) == 0
    assert "not looked at" in capsys.readouterr().err


def test_the_gate_fails_on_a_break_that_is_not_listed(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    before = changed(lambda document: schema(document, "FillResult")["properties"].update(lost={"type": "number"}))
    monkeypatch.setattr(gate, "contract_before", {CONTRACT: before}.get)
    monkeypatch.setattr(gate, "CHANGELOG", tmp_path / "CHANGELOG.md")
    monkeypatch.setattr(gate, "changelog_before", lambda *_: "")
    gate.CHANGELOG.write_text(listing(), encoding="utf-8")
    assert gate.main([]) == 1
    assert "not listed in openapi/CHANGELOG.md: FillResult.lost: is gone" in capsys.readouterr().err
    gate.CHANGELOG.write_text(listing("`fill` answer | `lost` | "), encoding="utf-8")
    assert gate.main([]) == 0
