"""A run to show the operation by: the shore-power feeder of a ferry landing, an invented scenario."""

from __future__ import annotations

from typing import Any


def _quantity(value: float, unit: str) -> dict[str, Any]:
    return {"value": value, "unit": unit}


def _wire(size: str) -> dict[str, Any]:
    return {"kind": "listed", "insulation": "THWN-2", "size": size, "material": "copper"}


EXAMPLE: dict[str, Any] = {
    "name": "Ferry landing, shore power",
    "code_edition": "2023",
    "bank": {"conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"}, "tiers": [3, 3]},
    "circuits": [
        {
            "name": "SP-1",
            "ducts": ["1-1"],
            "voltage": _quantity(480, "V"),
            "cables": [{"count": 3, "cable": _wire("500 kcmil")}, {"count": 1, "cable": _wire("3 AWG")}],
            "load": {"current": _quantity(300, "A"), "power_factor": 0.85},
        },
        {"name": "SP-2", "ducts": ["1-2"], "same_as": "SP-1"},
        {
            "name": "dock telephone",
            "ducts": ["2-3"],
            "service": "signal",
            "cables": [
                {
                    "count": 1,
                    "cable": {
                        "kind": "multiconductor",
                        "diameter": _quantity(0.72, "in"),
                        "mass_per_length": _quantity(0.19, "lb/ft"),
                        "conductor": {"material": "copper", "size": "18 AWG", "count": 12},
                    },
                }
            ],
        },
    ],
    "start": {"kind": "vault", "name": "V-1", "cable_allowance": _quantity(20, "ft")},
    "stretches": [
        {
            "name": "under the road",
            "setting": {"kind": "encased", "cover": _quantity(30, "in")},
            "length": _quantity(120, "ft"),
            "digging": {"pavement": {"kind": "asphalt", "thickness": _quantity(4, "in")}},
            "pull_point": {"kind": "handhole", "name": "HH-2", "cable_allowance": _quantity(10, "ft")},
        },
        {
            "name": "across the field",
            "setting": {
                "kind": "direct_buried",
                "cover": _quantity(30, "in"),
                "location": "not_otherwise_specified",
            },
            "sections": [
                {"kind": "straight", "length": _quantity(290, "ft")},
                {
                    "kind": "horizontal_bend",
                    "angle": _quantity(45, "deg"),
                    "radius": _quantity(36, "in"),
                    "turn": "left",
                },
                {"kind": "straight", "length": _quantity(218, "ft")},
                {"kind": "vertical_bend", "exit_grade": _quantity(90, "deg"), "radius": _quantity(36, "in")},
            ],
        },
        {
            "name": "up the wall",
            "setting": {"kind": "above_ground", "uses": ["sunlight", "physical_damage"]},
            "conduit_type": "pvc_schedule_80",
            "sections": [
                {"kind": "straight", "length": _quantity(14, "ft")},
                {"kind": "vertical_bend", "exit_grade": _quantity(0, "deg"), "radius": _quantity(36, "in")},
                {"kind": "straight", "length": _quantity(6, "ft")},
            ],
        },
    ],
    "end": {"kind": "equipment", "name": "shore-power cabinet", "cable_allowance": _quantity(10, "ft")},
    "site": {
        "temperatures": {
            "kind": "range",
            "lowest": _quantity(0, "degF"),
            "highest": _quantity(100, "degF"),
            "installation": _quantity(60, "degF"),
        },
        "groundwater_depth": _quantity(8, "ft"),
        "earth_temperature": _quantity(20, "degC"),
        "earth_thermal_resistivity": _quantity(90, "degC.cm/W"),
    },
    "flotation": {"lift_height": _quantity(12, "in"), "tie_down_capacity": _quantity(500, "lbf")},
    "earth_load": {"traffic": "h_20", "embedment": "coarse_grained", "compaction": "moderate"},
    "digging": {"soil": "loam", "soil_type": "type_c"},
    "pulling": {"friction_coefficient": 0.35, "brake_limit": _quantity(500, "lbf")},
    "rates": [
        {"item": "conduit", "conduit_type": "pvc_schedule_40", "unit_price": 3.25, "unit_labor_hours": 0.05},
        {"item": "concrete", "unit_price": 165, "unit_labor_hours": 0.9},
        {"item": "excavation", "unit_labor_hours": 0.12},
    ],
}
