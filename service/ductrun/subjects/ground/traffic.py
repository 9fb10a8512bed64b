"""The load of traffic at the depth of a duct, by every method on file."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import earth_load as engineering
from ductrun.engineering.earth_load import Wheel
from ductrun.kit.defaults import number, quantity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.choices import LiveLoadMethod, Traffic
from ductrun.subjects.ground.earth_loading import LIVE_LOAD_METHOD, SPREAD, WHEEL_LOAD, EarthLoading
from ductrun.tables import TABLES
from ductrun.units import ForcePerLength, Length, Pressure

METHODS = (LiveLoadMethod.HANDBOOK_TABLE, LiveLoadMethod.AASHTO_SPREAD, LiveLoadMethod.BOUSSINESQ)
_H_20 = WHEEL_LOAD.value.si
_APART = quantity("earth_load.wheels_apart", Length).value.si
_PRINT = (quantity("earth_load.tire_width", Length).value.si, quantity("earth_load.tire_length", Length).value.si)
_SHORT_PRINT = (_PRINT[0], quantity("earth_load.spread_tire_length", Length).value.si)
_ALLOWANCE = number("earth_load.dynamic_allowance").value
_ALLOWANCE_COVER = quantity("earth_load.dynamic_allowance_cover", Length).value.si
_PRESENCE = number("earth_load.multiple_presence").value
_LANE_LOAD = quantity("earth_load.lane_load", ForcePerLength).value.si
_LANE_WIDTH = quantity("earth_load.lane_width", Length).value.si
_ROWS = [
    (Length.parse(row.cover_ft, "ft").si, Pressure.parse(row.pressure_psf, "psf").si)
    for row in TABLES["live_load_covers"]
]
_IMPACTS = [
    (0.0 if row.up_to_ft is None else Length.parse(row.up_to_ft, "ft").si, row.factor)
    for row in TABLES["impact_factors"]
]
SOURCES = {
    LiveLoadMethod.HANDBOOK_TABLE: TABLES["live_load_covers"][0].source,
    LiveLoadMethod.AASHTO_SPREAD: SPREAD.backing.source_id,
    LiveLoadMethod.BOUSSINESQ: TABLES["impact_factors"][0].source,
}


class TrafficLoad(NamedTuple):
    """A wheel by its load [N], by what its load widens with the depth, and the methods that are asked."""

    wheel_load: float
    spread: float
    methods: tuple[LiveLoadMethod, ...]


class LiveLoad(NamedTuple):
    """The pressure [Pa] of traffic at a depth by one method."""

    method: LiveLoadMethod
    pressure: float


def settle_traffic(given: EarthLoading, sheet: Worksheet) -> TrafficLoad | None:
    """Settle what passes over the ducts; None where nothing does."""
    if given.traffic is Traffic.NONE:
        return None
    load = sheet.settle("wheel_load", given.wheel_load, WHEEL_LOAD).si
    method = sheet.settle("live_load_method", given.live_load_method, LIVE_LOAD_METHOD)
    methods = METHODS if method is LiveLoadMethod.GOVERNING else (method,)
    spread = SPREAD.value
    if LiveLoadMethod.AASHTO_SPREAD in methods:
        spread = sheet.settle("load_spread_ratio", given.load_spread_ratio, SPREAD)
    sheet.cite(*(SOURCES[one] for one in methods))
    return TrafficLoad(load, spread, methods)


def live_loads(traffic: TrafficLoad, cover: float) -> list[LiveLoad]:
    """Give the pressure below a cover [m] by every method asked that goes so shallow; none does without cover."""
    if cover <= 0.0:
        return []
    return [
        LiveLoad(method, pressure)
        for method in traffic.methods
        if (pressure := _PRESSURES[method](traffic, cover)) is not None
    ]


def _by_table(traffic: TrafficLoad, cover: float) -> float | None:
    pressure = engineering.between_rows(cover, _ROWS)
    return None if pressure is None else pressure * traffic.wheel_load / _H_20


def _by_spread(traffic: TrafficLoad, cover: float) -> float:
    allowance = engineering.dynamic_allowance(cover, _ALLOWANCE, _ALLOWANCE_COVER)
    wheel = Wheel(traffic.wheel_load, *_SHORT_PRINT, _APART)
    wheels = engineering.spread_pressure(wheel, cover, traffic.spread, _PRESENCE, allowance)
    return wheels + engineering.lane_pressure(_LANE_LOAD, _LANE_WIDTH, cover, traffic.spread, _PRESENCE)


def _by_boussinesq(traffic: TrafficLoad, cover: float) -> float:
    wheel = Wheel(traffic.wheel_load, *_PRINT, _APART)
    return engineering.boussinesq_pressure(wheel, cover, engineering.stepped(cover, _IMPACTS))


_PRESSURES = {
    LiveLoadMethod.HANDBOOK_TABLE: _by_table,
    LiveLoadMethod.AASHTO_SPREAD: _by_spread,
    LiveLoadMethod.BOUSSINESQ: _by_boussinesq,
}


def worked(method: LiveLoadMethod, traffic: TrafficLoad, cover: float) -> str:
    """Give what a method puts in below a cover [m], as its working writes it."""
    wheel = f"P = {traffic.wheel_load:.6g} N, H = {cover:.5g} m"
    if method is LiveLoadMethod.AASHTO_SPREAD:
        allowance = engineering.dynamic_allowance(cover, _ALLOWANCE, _ALLOWANCE_COVER)
        width, length = (side + traffic.spread * cover for side in _SHORT_PRINT)
        wheels = 1
        if width > _APART:
            wheels, width = 2, width + _APART
        return (
            f"{wheels} x {traffic.wheel_load:.6g} N x (1 + {allowance:.4g}) x {_PRESENCE:g}/"
            f"({width:.5g} m x {length:.5g} m) + {_LANE_LOAD:.6g} N/m x {_PRESENCE:g}/"
            f"{_LANE_WIDTH + traffic.spread * cover:.5g} m"
        )
    if method is LiveLoadMethod.BOUSSINESQ:
        impact = engineering.stepped(cover, _IMPACTS)
        return f"{wheel}, w = {_PRINT[0]:.5g} m, l = {_PRINT[1]:.5g} m, {_APART:.5g} m apart, impact = {impact:g}"
    return wheel
