"""Conduits and cables, and the three questions of fill asked about them."""

from __future__ import annotations

from typing import Any

from tests.asking import ask, quantity


def line(cable: dict[str, Any], count: int | None) -> dict[str, Any]:
    """Give a line of so many of a cable, or the cable itself where no number is given."""
    return cable if count is None else {"count": count, "cable": cable}


def listed(insulation: str, size: str, count: int | None = None, kind: str = "listed") -> dict[str, Any]:
    return line({"kind": kind, "insulation": insulation, "size": size}, count)


def bare(size: str, count: int | None = None, **more: str) -> dict[str, Any]:
    return line({"kind": "bare", "size": size} | more, count)


def measured(diameter: dict[str, Any], count: int | None = None) -> dict[str, Any]:
    return line({"kind": "measured", "diameter": diameter}, count)


def cable(inches: float, count: int | None = None) -> dict[str, Any]:
    return line({"kind": "multiconductor", "diameter": quantity(inches, "in")}, count)


def pvc(trade_size: str) -> dict[str, str]:
    return {"kind": "listed", "type": "pvc_schedule_40", "trade_size": trade_size}


def fill(conduit: dict[str, Any], *cables: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("fill", {"conduit": conduit, "cables": list(cables), "code_edition": "2023"} | more)


def size(*cables: dict[str, Any], kind: str = "pvc_schedule_40", **more: Any) -> dict[str, Any]:
    return ask("conduit-size", {"type": kind, "cables": list(cables), "code_edition": "2023"} | more)


def count(conduit: dict[str, Any], cable: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("conductor-count", {"conduit": conduit, "cable": cable, "code_edition": "2023"} | more)
