"""Stations as they are staked, in hundreds of feet and feet or in kilometres and metres from one zero; angles."""

from __future__ import annotations

import math

from ductrun.kit.telling import Telling, UnitSystem
from ductrun.units import LengthUnit


def station_text(distance: float, telling: Telling) -> str:
    """Write a distance [m] as a station: 1+23.5 in feet, 0+123.5 in metres, to the tenth where it has one."""
    us = telling.system is UnitSystem.US
    length = LengthUnit.FT.from_si(distance) if us else distance
    whole, tenths = divmod(round(length * 10), 10)
    beyond, rest = divmod(whole, 100 if us else 1000)
    tail = f"{rest:02d}" if us else f"{rest:03d}"
    return f"{beyond}+{tail}" + (f".{tenths}" if tenths else "")


def angle_text(angle: float) -> str:
    """Write an angle [rad] in degrees, to the tenth."""
    return f"{round(math.degrees(angle), 1):g}\u00b0"
