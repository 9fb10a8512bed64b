"""Runs to ask about: invented scenarios as a drawing would have them."""

from __future__ import annotations

from typing import Any

from tests.asking import quantity

FEET = "ft"


def straight(length: float, grade: float | None = None) -> dict[str, Any]:
    given = {} if grade is None else {"grade": quantity(grade, "deg")}
    return {"kind": "straight", "length": quantity(length, FEET), **given}


def level_bend(angle: float, radius: float, **more: Any) -> dict[str, Any]:
    return {"kind": "horizontal_bend", "angle": quantity(angle, "deg"), "radius": quantity(radius, FEET), **more}


def upright_bend(exit_grade: float, radius: float, **more: Any) -> dict[str, Any]:
    return {
        "kind": "vertical_bend",
        "exit_grade": quantity(exit_grade, "deg"),
        "radius": quantity(radius, FEET),
        **more,
    }


def single(diameter: float, mass: float, size: str, count: int = 3) -> list[dict[str, Any]]:
    cable = {
        "kind": "measured",
        "diameter": quantity(diameter, "in"),
        "mass_per_length": quantity(mass, "lb/ft"),
        "conductor": {"material": "copper", "size": size, "count": 1},
        "shielding": "shielded",
    }
    return [{"count": count, "cable": cable}]


def listed(size: str, kind: str = "pvc_schedule_40") -> dict[str, Any]:
    return {"kind": "listed", "type": kind, "trade_size": size}


def buried(cover: float = 30, **more: Any) -> dict[str, Any]:
    return {"kind": "direct_buried", "cover": quantity(cover, "in"), "location": "not_otherwise_specified", **more}


# two manholes 420 ft apart between the intersections of their tangents
MANHOLES: dict[str, Any] = {
    "name": "MH-12 to MH-13, 3 x 4 bank",
    "bank": {
        "conduit": {
            "kind": "measured",
            "type": "pvc_eb_35",
            "trade_size": "5",
            "inside_diameter": quantity(5.047, "in"),
            "outside_diameter": quantity(5.563, "in"),
        },
        "tiers": [3, 3, 3, 3],
        "horizontal_separation": quantity(3, "in"),
        "vertical_separation": quantity(3, "in"),
        "signal_ducts": [0, 0, 0, 1],
        "power_signal_separation": quantity(4, "in"),
    },
    "circuits": [
        {"name": "F-21", "ducts": ["1-1"], "voltage": quantity(13.8, "kV"), "cables": single(1.42, 2.6, "500 kcmil")},
        {"name": "F-22", "ducts": ["1-3"], "same_as": "F-21"},
        {"name": "F-23", "ducts": ["2-1"], "same_as": "F-21"},
    ],
    "start": {"kind": "manhole", "name": "MH-12", "cable_allowance": quantity(30, FEET)},
    "straight_lengths": "to_intersections",
    "stretches": [
        {
            "setting": {
                "kind": "encased",
                "pour": "trench_formed",
                "concrete_cover": {side: quantity(4, "in") for side in ("top", "side", "bottom")},
            },
            "sections": [
                straight(160),
                level_bend(30, 25, made="laid_on_curve", turn="left"),
                straight(120),
                level_bend(30, 25, made="laid_on_curve", turn="right"),
                straight(140),
            ],
        }
    ],
    "end": {"kind": "manhole", "name": "MH-13", "cable_allowance": quantity(30, FEET)},
    "profile": {
        "reference": "top_of_envelope",
        "points": [
            {"station": quantity(at, FEET), "ground": quantity(ground, FEET), "line": quantity(line, FEET)}
            for at, ground, line in ((0, 14.2, 11.0), (160, 13.1, 10.2), (419.385, 11.9, 8.9))
        ],
    },
    "site": {"groundwater_depth": quantity(4, FEET)},
    "concrete": {"reinforcing": {"bar_count": 8, "bar_size": "no_4", "edge_cover": quantity(2, "in")}},
}

# 300 ft of bridge deck, which moves itself
BRIDGE: dict[str, Any] = {
    "name": "Bridge crossing, 6 x 4 in",
    "bank": {"conduit": listed("4"), "tiers": [3, 3]},
    "start": {"kind": "handhole", "name": "HH-W"},
    "stretches": [
        {"name": "west", "setting": buried(), "sections": [straight(35), upright_bend(45, 4), upright_bend(0, 4)]},
        {
            "name": "bridge",
            "conduit": {
                "kind": "measured",
                "type": "rtrc",
                "inside_diameter": quantity(4.1, "in"),
                "outside_diameter": quantity(4.36, "in"),
            },
            "tiers": [2, 2, 2],
            "length": quantity(300, FEET),
            "setting": {
                "kind": "above_ground",
                "uses": ["sunlight"],
                "structure_joints": [
                    {"position": quantity(at, FEET), "movement": quantity(by, "in")} for at, by in ((0, 1), (150, 2))
                ],
                "structure_coefficient": quantity(6.5e-6, "1/degF"),
                "fitting_travel": quantity(8, "in"),
                "support_spacing": quantity(10, FEET),
                "supports": "hanger",
            },
        },
    ],
    "end": {"kind": "handhole", "name": "HH-E"},
    "site": {
        "temperatures": {
            "kind": "range",
            "lowest": quantity(-20, "degF"),
            "highest": quantity(100, "degF"),
            "installation": quantity(50, "degF"),
            "direct_sun": False,
        }
    },
}

# a river crossed in a bore
BORE: dict[str, Any] = {
    "name": "River bore, 3 x 6 in HDPE",
    "bank": {"conduit": listed("6", "hdpe_schedule_40"), "tiers": [3]},
    "circuits": [
        {
            "name": "Feeder 7",
            "duct_count": 2,
            "voltage": quantity(13.8, "kV"),
            "cables": single(1.75, 3.9, "750 kcmil"),
        }
    ],
    "start": {"kind": "handhole", "name": "HH-1"},
    "stretches": [
        {
            "name": "south trench",
            "setting": buried(36),
            "sections": [straight(60), upright_bend(-12, 25, made="laid_on_curve")],
        },
        {
            "name": "bore",
            "setting": {
                "kind": "bored",
                "cover": quantity(15, FEET),
                "bore_diameter": quantity(22, "in"),
                "bundle_diameter": quantity(14.3, "in"),
                "drilling_fluid_density": quantity(75, "lb/ft3"),
                "duct_contents": "water",
            },
            "sections": [straight(75), upright_bend(0, 300), straight(115), upright_bend(10, 300), straight(75)],
        },
        {
            "name": "north trench",
            "setting": buried(36),
            "sections": [upright_bend(0, 25, made="laid_on_curve"), straight(140)],
        },
    ],
    "end": {"kind": "handhole", "name": "HH-2"},
    "joining": {"stick_length": quantity(50, FEET)},
    "pulling": {"brake_limit": quantity(1_000, "lbf")},
}

# a panel and a light pole
POLE: dict[str, Any] = {
    "bank": {"conduit": listed("1"), "tiers": [1]},
    "circuits": [
        {
            "voltage": quantity(277, "V"),
            "cables": [
                {
                    "count": 3,
                    "cable": {"kind": "listed", "insulation": "THWN-2", "size": "10 AWG", "material": "copper"},
                }
            ],
        }
    ],
    "start": {"kind": "equipment", "height": quantity(4, FEET)},
    "stretches": [{"setting": buried(24), "length": quantity(140, FEET)}],
    "end": {"kind": "pole_base", "height": quantity(2, FEET)},
}

# a kiln fed through a street, a yard and a lawn, with its load and the earth over it
KILN: dict[str, Any] = {
    "name": "Kiln feeder",
    "bank": {
        "conduit": listed("4"),
        "tiers": [2, 2],
        "horizontal_separation": quantity(3, "in"),
        "vertical_separation": quantity(3, "in"),
    },
    "circuits": [
        {
            "name": "KF",
            "ducts": ["1-1", "1-2"],
            "voltage": quantity(480, "V"),
            "cables": [
                {
                    "count": count,
                    "cable": {"kind": "listed", "insulation": "THWN-2", "size": size, "material": "copper"},
                }
                for count, size in ((4, "500 kcmil"), (1, "2/0 AWG"))
            ],
            "load": {
                "current": quantity(560, "A"),
                "power_factor": 0.9,
                "loaded_conductor_count": 4,
                "loaded_neutral_count": 1,
                "limit_percent": 3,
                "overcurrent_device": quantity(600, "A"),
            },
        }
    ],
    "start": {
        "kind": "equipment",
        "name": "SWBD",
        "height": quantity(1.5, FEET),
        "riser_conduit_type": "pvc_schedule_80",
        "riser_radius": quantity(36, "in"),
    },
    "stretches": [
        {
            "name": "street",
            "setting": {"kind": "encased", "cover": quantity(30, "in"), "location": "street_road_driveway_parking_lot"},
            "length": quantity(80, FEET),
            "earth_load": {"traffic": "none"},
        },
        {
            "name": "yard",
            "setting": buried(30),
            "length": quantity(200, FEET),
            "pull_point": {
                "kind": "handhole",
                "name": "HH-1",
                "box": {"length": quantity(48, "in"), "width": quantity(36, "in"), "depth": quantity(36, "in")},
            },
        },
        {"name": "lawn", "setting": buried(30), "length": quantity(60, FEET)},
    ],
    "end": {
        "kind": "equipment",
        "name": "KILN",
        "height": quantity(2, FEET),
        "riser_conduit_type": "pvc_schedule_80",
        "riser_radius": quantity(36, "in"),
    },
    "site": {
        "temperatures": {
            "kind": "range",
            "lowest": quantity(0, "degF"),
            "highest": quantity(100, "degF"),
            "installation": quantity(60, "degF"),
        },
        "groundwater_depth": quantity(2, FEET),
        "earth_temperature": quantity(20, "degC"),
        "earth_thermal_resistivity": quantity(90, "degC.cm/W"),
    },
    "earth_load": {"traffic": "h_20", "embedment": "coarse_grained", "compaction": "moderate"},
    "flotation": {"lift_height": quantity(12, "in"), "tie_down_capacity": quantity(500, "lbf")},
    "pulling": {"friction_coefficient": 0.35, "brake_limit": quantity(500, "lbf")},
}
