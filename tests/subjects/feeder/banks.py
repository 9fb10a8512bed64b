"""Banks and circuits that the tests of ampacity ask about."""

from __future__ import annotations

from typing import Any

from tests.asking import quantity

WIRE = {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"}
DUCT = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")}
GROUND: dict[str, Any] = {"count": 1, "cable": {"kind": "bare", "size": "1/0 AWG", "material": "copper"}}
MEDIUM_VOLTAGE: dict[str, Any] = {
    "kind": "measured",
    "diameter": quantity(1.35, "in"),
    "conductor": {"material": "copper", "size": "4/0 AWG", "count": 1},
    "layers": {
        "insulation": {"material": "xlpe", "thickness": quantity(0.22, "in")},
        "shield": {"metal_area": quantity(16, "mm2")},
        "jacket": {"material": "pe", "thickness": quantity(0.08, "in")},
    },
}


def singles(size: str = "500 kcmil", count: int = 3, **more: Any) -> list[dict[str, Any]]:
    """Give so many singles of a size in a duct."""
    return [{"count": count, "cable": WIRE | {"size": size} | more}]


def circuit(*ducts: str, amperes: float | None = None, **more: Any) -> dict[str, Any]:
    """Give a circuit of three 500 kcmil of copper in each of its ducts, at 75 degC."""
    current = {} if amperes is None else {"current": quantity(amperes, "A")}
    return {
        "ducts": list(ducts),
        "cables": singles(),
        "temperature_limit": quantity(75, "degC"),
        **current,
        **more,
    }


def bank(tiers: list[int], *circuits: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Give a bank of ducts 3 in apart under 30 in of earth, encased in 3 in of concrete."""
    return {
        "bank": {
            "conduit": DUCT,
            "tiers": tiers,
            "horizontal_separation": quantity(3, "in"),
            "vertical_separation": quantity(3, "in"),
        },
        "setting": "encased",
        "cover": quantity(30, "in"),
        "circuits": list(circuits),
        **more,
    }


def buried(*circuits: dict[str, Any], tiers: list[int] | None = None, **more: Any) -> dict[str, Any]:
    """Give ducts buried directly, the center of the bank 36 in down."""
    asked = bank(tiers or [1], *circuits, setting="direct_buried", depth=quantity(36, "in"), **more)
    return {member: value for member, value in asked.items() if member != "cover"}
