"""Conduits and conductors, and the three questions of fill asked about them."""

from __future__ import annotations

from typing import Any

from tests.asking import ask, quantity


def listed(insulation: str, size: str, count: int | None = None, kind: str = "listed") -> dict[str, Any]:
    line: dict[str, Any] = {"kind": kind, "insulation": insulation, "size": size}
    return line if count is None else line | {"count": count}


def pvc(trade_size: str) -> dict[str, str]:
    return {"kind": "listed", "type": "pvc_schedule_40", "trade_size": trade_size}


def cable(inches: float, number: int | None = None) -> dict[str, Any]:
    line: dict[str, Any] = {"kind": "cable", "major_diameter": quantity(inches, "in")}
    return line if number is None else line | {"count": number}


def fill(conduit: dict[str, Any], *conductors: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("fill", {"conduit": conduit, "conductors": list(conductors), "code_edition": "2023"} | more)


def size(*conductors: dict[str, Any], kind: str = "pvc_schedule_40", **more: Any) -> dict[str, Any]:
    return ask("conduit-size", {"type": kind, "conductors": list(conductors), "code_edition": "2023"} | more)


def count(conduit: dict[str, Any], conductor: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("conductor-count", {"conduit": conduit, "conductor": conductor, "code_edition": "2023"} | more)
