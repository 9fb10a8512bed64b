"""The ground around ducts, settled in SI, and the figures of one tier in it."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import earth_load, flexible_duct
from ductrun.engineering.flotation import GRAVITY
from ductrun.engineering.rounding import over, under
from ductrun.kit.defaults import number, quantity
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import ArchingSoil, Compaction, EarthLoadMethod, Embedment
from ductrun.subjects.ground.earth_loading import (
    ARCHING_SOIL,
    BEDDING_ANGLE,
    COMPACTION,
    DEFLECTION_LIMIT,
    EMBEDMENT,
    FLOTATION_FACTOR,
    GROUNDWATER_DEPTH,
    LAGS,
    METHOD,
    SATURATED_DENSITY,
    SOIL_DENSITY,
    EarthAndWater,
    EarthLoading,
)
from ductrun.subjects.ground.laid_ducts import LaidKind
from ductrun.subjects.ground.loaded_ducts import LoadedDuct
from ductrun.subjects.ground.traffic import LiveLoad, TrafficLoad, live_loads, settle_traffic
from ductrun.tables import TABLES
from ductrun.units import Angle, Density, Pressure

WATER_DENSITY = quantity("earth_load.water_density", Density)
_WATER = WATER_DENSITY.value.si
DEFLECTION_BAND = number("earth_load.deflection_band")
BUCKLING_DEEP = number("earth_load.buckling_factor_deep")
BUCKLING_SHALLOW = number("earth_load.buckling_factor_shallow")
RING_FACTOR = number("earth_load.ring_factor")
_BEDDINGS = [(Angle.parse(row.angle_deg, "deg").si, row.constant) for row in TABLES["bedding_constants"]]
_BEDDING_SOURCE = TABLES["bedding_constants"][0].source
_FRICTION = {ArchingSoil(row.soil): row.friction for row in TABLES["arching_soils"]}
_REACTIONS = {
    Embedment(row.embedment): {one: Pressure.parse(getattr(row, f"{one}_psi"), "psi").si for one in Compaction}
    for row in TABLES["soil_reactions"]
}
_REACTION_SOURCE = TABLES["soil_reactions"][0].source


class Ground(NamedTuple):
    """The ground: densities [kg/m3], groundwater below grade [m], the trench that earth arches in [m] with the friction
    of its fill, support, traffic, and the limits; `embedment` is None where its modulus was given [Pa].
    """

    density: float
    saturated: float
    water_depth: float
    method: EarthLoadMethod
    trench_width: float | None
    friction: float
    lag: float
    bedding: float
    embedment: Embedment | None
    soil_modulus: float
    traffic: TrafficLoad | None
    deflection_limit: float
    flotation_factor: float


class TierLoad(NamedTuple):
    """Like ducts of a tier by its `number` from 1 at the bottom, under a cover [m]: pressures at their top [Pa],
    deflection [percent], thrust [N/m] and stress [Pa] of their wall, what presses on them and what they bear before
    they buckle [Pa]; None where that was not judged.
    """

    number: int
    cover: float
    duct: LoadedDuct
    prism: float
    arched: float | None
    earth: float
    lives: list[LiveLoad]
    live: LiveLoad | None
    deflection: float | None
    thrust: float | None
    stress: float | None
    demand: float | None
    buckling: float | None


def settle_ground(given: EarthAndWater, widest: float, sheet: Worksheet, *, encased: bool = False) -> Ground:
    """Settle the ground around ducts that are so wide together [m]; of `encased` ones only whether they float is
    asked, and nothing else is assumed.
    """
    earth = Worksheet(sheet.tell) if encased else sheet
    method = earth.settle("earth_load_method", given.earth_load_method, METHOD)
    width = None if encased else _trench_width(given, method, widest, sheet)
    friction = 0.0
    if width is not None:
        friction = _FRICTION[sheet.settle("arching_soil", given.arching_soil, ARCHING_SOIL)]
    embedment, modulus = _support(given, earth)
    return Ground(
        density=sheet.settle("soil_density", given.soil_density, SOIL_DENSITY).si,
        saturated=sheet.settle("saturated_soil_density", given.saturated_soil_density, SATURATED_DENSITY).si,
        water_depth=sheet.settle("groundwater_depth", given.groundwater_depth, GROUNDWATER_DEPTH).si,
        method=method,
        trench_width=width,
        friction=friction,
        lag=earth.settle("lag_factor", given.lag_factor, LAGS[method]),
        bedding=_bedding(given, earth),
        embedment=embedment,
        soil_modulus=modulus,
        traffic=settle_traffic(given, earth),
        deflection_limit=earth.settle("deflection_limit_percent", given.deflection_limit_percent, DEFLECTION_LIMIT),
        flotation_factor=sheet.settle("flotation_safety_factor", given.flotation_safety_factor, FLOTATION_FACTOR),
    )


def _trench_width(given: EarthLoading, method: EarthLoadMethod, widest: float, sheet: Worksheet) -> float | None:
    width = given.trench_width
    if width is None:
        if method is EarthLoadMethod.TRENCH:
            raise UnanswerableError(
                sheet.fault("trench_width", "missing", "Earth arches on the walls of a trench: give its width.")
            )
        return None
    if under(width.si, widest):
        raise UnanswerableError(
            sheet.fault(
                "trench_width/value",
                "narrower_than_the_bank",
                "The trench is narrower than the ducts in it: give its width at their top.",
                minimum=sheet.tell.size(widest),
            )
        )
    return width.si


def _support(given: EarthLoading, sheet: Worksheet) -> tuple[Embedment | None, float]:
    if given.soil_modulus is not None:
        return None, given.soil_modulus.si
    embedment = sheet.settle("embedment", given.embedment, EMBEDMENT)
    compaction = sheet.settle("compaction", given.compaction, COMPACTION)
    sheet.cite(_REACTION_SOURCE)
    return embedment, _REACTIONS[embedment][compaction]


def _bedding(given: EarthLoading, sheet: Worksheet) -> float:
    if given.bedding_constant_ratio is not None:
        return given.bedding_constant_ratio
    sheet.cite(_BEDDING_SOURCE)
    angle = sheet.settle("bedding_angle", given.bedding_angle, BEDDING_ANGLE).si
    return flexible_duct.bedding_constant(angle, _BEDDINGS)


def modulus_of(embedment: Embedment, compaction: Compaction) -> float:
    """Give the modulus of soil reaction [Pa] of an embedment."""
    return _REACTIONS[embedment][compaction]


def water_over(ground: Ground, cover: float) -> float:
    """Give the groundwater over the top of a duct [m], at most its cover."""
    return min(cover, max(0.0, cover - ground.water_depth))


def buckling_factor(duct: LoadedDuct, cover: float) -> float:
    """Give the safety factor against buckling: more where a duct lies under less than two diameters."""
    return (BUCKLING_SHALLOW if under(cover, 2 * duct.outside) else BUCKLING_DEEP).value


def buckling_of(ground: Ground, duct: LoadedDuct, cover: float) -> float | None:
    """Give the pressure a duct bears before it buckles [Pa], with its safety: in the earth, or as a free ring at least.

    None where its stiffness is not known.
    """
    later = duct.long_term_stiffness
    if later is None:
        return None
    ring = flexible_duct.ring_pressure(later, duct.poisson) / RING_FACTOR.value
    if cover <= 0.0:
        return ring
    support = flexible_duct.elastic_support(cover, duct.outside)
    share = flexible_duct.buoyancy_share(cover, water_over(ground, cover))
    held = flexible_duct.buckling_pressure(later, ground.soil_modulus, support, share)
    return max(ring, held / buckling_factor(duct, cover))


def demand_of(ground: Ground, prism: float, live: float, cover: float) -> float:
    """Give what presses on a ring from all around [Pa]: the water, what it leaves of the earth, and the traffic."""
    water = water_over(ground, cover)
    share = flexible_duct.buoyancy_share(cover, water) if cover > 0.0 else 1.0
    return _WATER * GRAVITY * water + share * prism + live


def load_tier(ground: Ground, kind: LaidKind, over_bank: float) -> TierLoad:
    """Give the figures of like ducts of a tier, the bank under a cover [m]."""
    number, duct, cover = kind.tier + 1, kind.duct, over_bank + kind.deeper
    prism = earth_load.prism_pressure(cover, ground.density)
    arched = None
    if ground.trench_width is not None:
        arched = earth_load.trench_pressure(cover, ground.trench_width, ground.friction, ground.density)
    earth = prism if ground.method is EarthLoadMethod.PRISM or arched is None else arched
    lives = [] if ground.traffic is None else live_loads(ground.traffic, cover)
    live = max(lives, key=lambda one: one.pressure, default=None)
    if ground.traffic is not None and live is None:
        return TierLoad(number, cover, duct, prism, arched, earth, lives, None, None, None, None, None, None)
    pressure = 0.0 if live is None else live.pressure
    deflected = None
    if duct.stiffness is not None:
        deflected = flexible_duct.deflection(
            earth, pressure, ground.lag, ground.bedding, duct.stiffness, ground.soil_modulus
        )
    thrust = flexible_duct.wall_thrust(prism + pressure, duct.outside)
    stress = None if duct.wall is None else thrust / duct.wall
    demand = demand_of(ground, prism, pressure, cover)
    bears = buckling_of(ground, duct, cover)
    return TierLoad(number, cover, duct, prism, arched, earth, lives, live, deflected, thrust, stress, demand, bears)


def bends_no_more(ground: Ground, tier: TierLoad) -> bool | None:
    """Say whether a duct keeps its limit of deflection; None where that was not judged."""
    return None if tier.deflection is None else not over(tier.deflection, ground.deflection_limit)


def wall_holds(tier: TierLoad) -> bool | None:
    """Say whether the wall of a duct bears its thrust; None where that was not judged."""
    return None if tier.stress is None else not over(tier.stress, tier.duct.wall_stress)


def ring_holds(tier: TierLoad) -> bool | None:
    """Say whether a duct bears what presses on it without buckling; None where that was not judged."""
    if tier.demand is None or tier.buckling is None:
        return None
    return not over(tier.demand, tier.buckling)
