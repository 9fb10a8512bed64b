"""How earth and traffic on ducts are told."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.ground.choices import Compaction, EarthLoadMethod, LiveLoadMethod
from ductrun.subjects.ground.complying import Complying
from ductrun.subjects.ground.earth_ground import (
    DEFLECTION_BAND,
    Ground,
    TierLoad,
    bends_no_more,
    ring_holds,
    wall_holds,
)
from ductrun.subjects.ground.holding_down import PourLoad, stays_down
from ductrun.subjects.ground.traffic import METHODS
from ductrun.subjects.ground.under_load import UnderLoad
from ductrun.subjects.parts.bank import MOST_IN_A_TIER, MOST_TIERS
from ductrun.subjects.parts.choices import ConduitType, TradeSize

_MOST_KINDS = MOST_TIERS * MOST_IN_A_TIER


class LiveLoadByMethod(Struct, frozen=True, gc=False):
    """The pressure of traffic on top of a duct by one method, its impact included."""

    method: Annotated[LiveLoadMethod, Meta(description="The method.")]
    pressure: Annotated[answers.Pressure, Meta(description="On top of the duct.")]


class TierUnderLoad(Struct, frozen=True, gc=False, kw_only=True):
    """Like ducts of one tier under earth and traffic; what a wall or a load not on file leaves open is absent."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.", ge=1)]
    pointer: Annotated[str, Meta(description="Place of their conduit in the request, the first of like ones.")]
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Type of the conduit, where it is given.")] = (
        UNSET
    )
    trade_size: Annotated[TradeSize | UnsetType, Meta(description="Trade size, where it is given.")] = UNSET
    outside_diameter: Annotated[answers.Length, Meta(description="Outside diameter of one of the ducts.")]
    cover: Annotated[answers.Length, Meta(description="Earth over the top of its ducts.")]
    prism_pressure: Annotated[answers.Pressure, Meta(description="Pressure of the prism of earth above a duct.")]
    trench_pressure: Annotated[
        answers.Pressure | UnsetType,
        Meta(description="Pressure of earth that arches in its trench, where the width is given."),
    ] = UNSET
    earth_pressure: Annotated[
        answers.Pressure, Meta(description="Pressure of earth taken for deflection, that of earth_load_method.")
    ]
    live_loads: Annotated[
        list[LiveLoadByMethod],
        Meta(description="Pressure of traffic, by every method asked that goes so shallow.", max_length=len(METHODS)),
    ]
    live_pressure: Annotated[
        answers.Pressure | UnsetType,
        Meta(description="Largest pressure of traffic of the methods asked; absent where none was judged."),
    ] = UNSET
    governing_method: Annotated[
        LiveLoadMethod | UnsetType,
        Meta(description="Method that gives the largest pressure of traffic; absent without traffic."),
    ] = UNSET
    pipe_stiffness: Annotated[
        answers.Pressure | UnsetType, Meta(description="Stiffness of its ducts at 5 percent deflection.")
    ] = UNSET
    deflection_percent: Annotated[
        float | UnsetType, Meta(description="By how much their vertical diameter shrinks.")
    ] = UNSET
    lowest_deflection_percent: Annotated[
        float | UnsetType, Meta(description="The low end of what the formula stands for.")
    ] = UNSET
    highest_deflection_percent: Annotated[
        float | UnsetType, Meta(description="The high end of what the formula stands for.")
    ] = UNSET
    deflection_verdict: Annotated[Verdict, Meta(description="Whether the limit of deflection is kept.")]
    deflected_bore: Annotated[
        answers.Length | UnsetType,
        Meta(description="Least inside diameter of a duct flattened by deflection_percent, where the bore is on file."),
    ] = UNSET
    least_bore: Annotated[
        answers.Length | UnsetType,
        Meta(
            description="Least inside diameter of a duct flattened by highest_deflection_percent: what a mandrel and "
            "the jam of cables are held against."
        ),
    ] = UNSET
    wall_thrust: Annotated[answers.ForcePerLength | UnsetType, Meta(description="Thrust in the wall.")] = UNSET
    wall_stress: Annotated[answers.Pressure | UnsetType, Meta(description="Compression of the wall.")] = UNSET
    wall_verdict: Annotated[Verdict, Meta(description="Whether the wall bears its compression.")]
    buckling_load: Annotated[
        answers.Pressure | UnsetType, Meta(description="Water, earth and traffic that press from around.")
    ] = UNSET
    allowable_buckling_load: Annotated[
        answers.Pressure | UnsetType, Meta(description="What the ducts bear before they buckle, safety included.")
    ] = UNSET
    buckling_verdict: Annotated[Verdict, Meta(description="Whether the ducts bear buckling_load.")]


class TierInPour(Struct, frozen=True, gc=False):
    """Like ducts of one tier in wet concrete."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.", ge=1)]
    pointer: Annotated[str, Meta(description="Place of their conduit in the request, the first of like ones.")]
    outside_diameter: Annotated[answers.Length, Meta(description="Outside diameter of one of the ducts.")]
    head: Annotated[answers.Length, Meta(description="Wet concrete over the bottom of its ducts.")]
    pressure: Annotated[answers.Pressure, Meta(description="Pressure of the wet concrete at the bottom of the ducts.")]
    verdict: Annotated[
        Verdict, Meta(description="Whether the ducts, as free rings, bear the pressure of the wet concrete.")
    ]
    allowable_pressure: Annotated[
        answers.Pressure | UnsetType,
        Meta(description="Pressure that the ducts bear, safety included, where that is on file."),
    ] = UNSET
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Type of the conduit, where it is given.")] = (
        UNSET
    )
    trade_size: Annotated[TradeSize | UnsetType, Meta(description="Trade size, where it is given.")] = UNSET


class InService(Struct, frozen=True, gc=False):
    """Empty ducts in groundwater."""

    uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Lift of the groundwater on what lies below its level.")
    ]
    hold_down_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Weight of earth, ducts and concrete that holds the ducts down.")
    ]
    verdict: Annotated[Verdict, Meta(description="Whether the ducts stay down with the factor asked.")]
    safety_factor: Annotated[
        float | UnsetType,
        Meta(
            description="hold_down_per_length over uplift_per_length, the least of any bare ducts that lie over each "
            "other; absent where nothing lifts."
        ),
    ] = UNSET


class WouldComply(Struct, frozen=True, gc=False):
    """What would keep every limit of this calculation with all else as it is; absent where nothing would."""

    least_cover: Annotated[
        answers.Length | UnsetType,
        Meta(description="Least cover, in whole inches; all from it to the greatest comply."),
    ] = UNSET
    greatest_cover: Annotated[
        answers.Length | UnsetType, Meta(description="Greatest cover, in whole inches; absent where 100 ft comply.")
    ] = UNSET
    least_pipe_stiffness: Annotated[
        answers.Pressure | UnsetType,
        Meta(description="Least stiffness; absent where wall, cover or flotation would not be kept."),
    ] = UNSET
    least_class: Annotated[
        ConduitType | UnsetType, Meta(description="Least class of direct-burial duct, of the same trade sizes.")
    ] = UNSET
    least_compaction: Annotated[
        Compaction | UnsetType, Meta(description="Least compaction of the embedment asked.")
    ] = UNSET


class EarthLoadResult(Struct, frozen=True, gc=False):
    """Ducts under earth and traffic; without tiers where no load was put on them."""

    tiers: Annotated[
        list[TierUnderLoad],
        Meta(description="Ducts in earth by tier, the bottom first, each kind of a tier.", max_length=_MOST_KINDS),
    ]
    tiers_in_pour: Annotated[
        list[TierInPour],
        Meta(
            description="Encased ducts in wet concrete by tier, the bottom first, each kind of a tier.",
            max_length=_MOST_KINDS,
        ),
    ]
    deflection_percent: Annotated[float | UnsetType, Meta(description="The largest deflection of all tiers.")] = UNSET
    lowest_deflection_percent: Annotated[
        float | UnsetType, Meta(description="The low end of what the formula stands for there.")
    ] = UNSET
    highest_deflection_percent: Annotated[
        float | UnsetType, Meta(description="The high end of what the formula stands for there.")
    ] = UNSET
    earth_load_method: Annotated[EarthLoadMethod | UnsetType, Meta(description="How earth was taken to load.")] = UNSET
    soil_modulus: Annotated[
        answers.Pressure | UnsetType, Meta(description="Modulus of soil reaction that was taken.")
    ] = UNSET
    in_service: Annotated[
        InService | UnsetType, Meta(description="Whether the empty ducts stay down in groundwater.")
    ] = UNSET
    would_comply: Annotated[WouldComply | UnsetType, Meta(description="What would comply, of ducts in earth.")] = UNSET


def tell(found: UnderLoad, telling: Telling) -> EarthLoadResult:
    """Put the load of ducts into the caller's units."""
    ground = found.ground
    if ground is None:
        return EarthLoadResult([], [])
    deflections = [tier.deflection for tier in found.tiers if tier.deflection is not None]
    most = max(deflections, default=None)
    return EarthLoadResult(
        tiers=[_told_tier(tier, ground, telling) for tier in found.tiers],
        tiers_in_pour=[_told_pour(pour, telling) for pour in found.pours],
        deflection_percent=UNSET if most is None else most,
        lowest_deflection_percent=UNSET if most is None else _least_of_band(most),
        highest_deflection_percent=UNSET if most is None else most + DEFLECTION_BAND.value,
        earth_load_method=ground.method if found.tiers else UNSET,
        soil_modulus=telling.pressure(ground.soil_modulus) if found.tiers else UNSET,
        in_service=_told_service(found, ground, telling),
        would_comply=UNSET if found.complying is None else _told_complying(found.complying, telling),
    )


def _told_tier(tier: TierLoad, ground: Ground, telling: Telling) -> TierUnderLoad:
    pressure, band = telling.pressure, DEFLECTION_BAND.value
    deflection, bore, live = tier.deflection, tier.duct.bore, tier.live
    flat = None if deflection is None or bore is None else bore
    return TierUnderLoad(
        tier=tier.number,
        pointer=tier.duct.place.pointer(),
        conduit_type=UNSET if tier.duct.kind is None else tier.duct.kind,
        trade_size=UNSET if tier.duct.size is None else tier.duct.size,
        outside_diameter=telling.size(tier.duct.outside),
        cover=telling.size(tier.cover),
        prism_pressure=pressure(tier.prism),
        trench_pressure=UNSET if tier.arched is None else pressure(tier.arched),
        earth_pressure=pressure(tier.earth),
        live_loads=[LiveLoadByMethod(one.method, pressure(one.pressure)) for one in tier.lives],
        live_pressure=_told_live(tier, ground, telling),
        governing_method=UNSET if live is None else live.method,
        pipe_stiffness=UNSET if tier.duct.stiffness is None else pressure(tier.duct.stiffness),
        deflection_percent=UNSET if deflection is None else deflection,
        lowest_deflection_percent=UNSET if deflection is None else _least_of_band(deflection),
        highest_deflection_percent=UNSET if deflection is None else deflection + band,
        deflection_verdict=Verdict.of(bends_no_more(ground, tier)),
        deflected_bore=UNSET if flat is None else telling.size(_flattened(flat, deflection or 0.0)),
        least_bore=UNSET if flat is None else telling.size(_flattened(flat, (deflection or 0.0) + band)),
        wall_thrust=UNSET if tier.thrust is None else telling.force_per_length(tier.thrust),
        wall_stress=UNSET if tier.stress is None else pressure(tier.stress),
        wall_verdict=Verdict.of(wall_holds(tier)),
        buckling_load=UNSET if tier.demand is None else pressure(tier.demand),
        allowable_buckling_load=UNSET if tier.buckling is None else pressure(tier.buckling),
        buckling_verdict=Verdict.of(ring_holds(tier)),
    )


def _told_live(tier: TierLoad, ground: Ground, telling: Telling) -> answers.Pressure | UnsetType:
    if tier.live is not None:
        return telling.pressure(tier.live.pressure)
    return telling.pressure(0.0) if ground.traffic is None else UNSET


def _least_of_band(deflection: float) -> float:
    return max(0.0, deflection - DEFLECTION_BAND.value)


def _flattened(bore: float, deflection: float) -> float:
    return bore * max(0.0, 1 - deflection / 100)


def _told_pour(pour: PourLoad, telling: Telling) -> TierInPour:
    bears = pour.bears
    return TierInPour(
        tier=pour.number,
        pointer=pour.duct.place.pointer(),
        outside_diameter=telling.size(pour.duct.outside),
        head=telling.size(pour.head),
        pressure=telling.pressure(pour.pressure),
        verdict=Verdict.of(pour.holds),
        allowable_pressure=UNSET if bears is None else telling.pressure(bears),
        conduit_type=UNSET if pour.duct.kind is None else pour.duct.kind,
        trade_size=UNSET if pour.duct.size is None else pour.duct.size,
    )


def _told_service(found: UnderLoad, ground: Ground, telling: Telling) -> InService | UnsetType:
    floating = found.floating
    if floating is None:
        return UNSET
    return InService(
        uplift_per_length=telling.force_per_length(floating.uplift),
        hold_down_per_length=telling.force_per_length(floating.hold_down),
        verdict=Verdict.of(stays_down(floating, ground)),
        safety_factor=UNSET if floating.factor is None else floating.factor,
    )


def _told_complying(found: Complying, telling: Telling) -> WouldComply:
    return WouldComply(
        least_cover=UNSET if found.least_cover is None else telling.given(found.least_cover),
        greatest_cover=UNSET if found.greatest_cover is None else telling.given(found.greatest_cover),
        least_pipe_stiffness=UNSET if found.stiffness is None else telling.pressure(found.stiffness),
        least_class=UNSET if found.least_class is None else found.least_class,
        least_compaction=UNSET if found.compaction is None else found.compaction,
    )
