"""Asking what would make a run comply, and sending every run that is told again."""

from __future__ import annotations

import copy
from collections.abc import Callable
from typing import Any

from tests.asking import EXAMPLES, ask


def altered(run: dict[str, Any], change: Callable[[dict[str, Any]], Any]) -> dict[str, Any]:
    run = copy.deepcopy(run)
    change(run)
    return run


def unloaded(run: dict[str, Any]) -> None:
    """Leave out what no remedy here changes: loads of circuits and of earth, of which some is not judged."""
    del run["earth_load"]
    for circuit in run["circuits"]:
        circuit.pop("load", None)


LANDING: dict[str, Any] = altered(EXAMPLES["duct-run"], unloaded)


def remedied(run: dict[str, Any]) -> dict[str, Any]:
    told: dict[str, Any] = ask("duct-run", run, "remedies=true")["remedies"]
    check_sent_again(run, told)
    return told


def by_kind(run: dict[str, Any]) -> dict[str, dict[str, Any]]:
    """Give the first remedy of each kind: those that leave least, then the cheapest."""
    found: dict[str, dict[str, Any]] = {}
    for one in remedied(run)["found"]:
        found.setdefault(one["change"], one)
    return found


def set_in(one: dict[str, Any]) -> dict[str, Any]:
    """Give what a remedy sets, by its pointers into the changed run."""
    return {pointer: member(one["run"], pointer) for pointer in one["changed"]}


def member(document: Any, pointer: str) -> Any:
    for step in pointer.split("/")[1:]:
        document = document[int(step)] if isinstance(document, list) else document[step]
    return document


def violations(answer: dict[str, Any]) -> list[tuple[str, str]]:
    return [(one["code"], one.get("pointer")) for one in answer["findings"] if one["severity"] == "violation"]


def check_sent_again(run: dict[str, Any], told: dict[str, Any]) -> None:
    """Send every changed run: what is told of it must be what it answers."""
    before = violations(ask("duct-run", run))
    gone = {(one["code"], one.get("pointer")) for remedy in told["found"] for one in remedy["removed"]}
    assert set(before) - gone == {(one["code"], one.get("pointer")) for one in told["not_found"]}
    for one in told["found"]:
        after = ask("duct-run", one["run"])
        assert after["verdict"] == one["verdict"], one["message"]
        removed = [(each["code"], each.get("pointer")) for each in one["removed"]]
        assert removed, one["message"]
        assert set(removed) <= set(before), one["message"]
        assert len(violations(after)) == one["remaining_violation_count"] == len(before) - len(removed), one["message"]
        assert {code for code, _ in violations(after)} <= {code for code, _ in before}, one["message"]
        assert one["run"] != run
        assert all(member(one["run"], pointer) is not None for pointer in one["changed"])
