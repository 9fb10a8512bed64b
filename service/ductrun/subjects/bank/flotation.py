"""POST /v1/flotation: how hard ducts push upward, and what holds them down."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.kit import answers
from ductrun.kit.forms import Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.floating import Floating, Flotation, Tier, float_bank, wall_of
from ductrun.subjects.parts.bank import MOST_TIERS, DuctBank, bank_of, conduits_of


class FlotationRequest(Floating):
    """A bank in a fluid."""

    bank: DuctBank = Field(description="The duct bank.")
    length: Omissible[RunLength] = Field(
        default=None, description="Length of the run, to count all tie-downs.", examples=[{"value": 300, "unit": "ft"}]
    )


class TierUplift(Struct, frozen=True, gc=False):
    """One tier."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.")]
    duct_count: int
    mass_per_length: Annotated[answers.MassPerLength, Meta(description="Of one empty duct.")]
    duct_uplift_per_length: Annotated[answers.ForcePerLength, Meta(description="Of one duct; negative if it sinks.")]
    uplift_per_length: Annotated[answers.ForcePerLength, Meta(description="Of the tier.")]


class FlotationResult(Struct, frozen=True, gc=False):
    """The uplift and what holds it."""

    uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Of the ducts in the worst live lift; 0 if none floats.")
    ]
    full_uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Of all ducts, with the whole depth liquid at once.")
    ]
    uplift_per_station: Annotated[answers.Force, Meta(description="On one station.")]
    hold_down_per_station: Annotated[answers.Force, Meta(description="The same with the safety factor.")]
    tier_uplifts: Annotated[
        list[TierUplift], Meta(description="Each tier, the bottom tier first.", max_length=MOST_TIERS)
    ]
    tie_down_count: Annotated[
        int | UnsetType, Meta(description="Tie-downs at each station, if the capacity of one is given.")
    ] = UNSET
    total_tie_down_count: Annotated[
        int | UnsetType, Meta(description="Tie-downs of the run, if its length is given as well.")
    ] = UNSET


def assess(request: FlotationRequest, sheet: Worksheet) -> Flotation:
    """Float the bank of a request."""
    place = sheet.within("bank")
    placed = bank_of(request.bank, place)
    walls = [wall_of(conduit, sheet_of_it) for conduit, sheet_of_it in conduits_of(request.bank, place)]
    return float_bank(request, placed, walls, None if request.length is None else request.length.si, sheet)


def tell(found: Flotation, telling: Telling) -> FlotationResult:
    """Put a flotation into the caller's units."""
    per_length = telling.force_per_length
    return FlotationResult(
        uplift_per_length=per_length(found.live_uplift),
        full_uplift_per_length=per_length(found.full_uplift),
        uplift_per_station=telling.force(found.station_uplift),
        hold_down_per_station=telling.force(found.hold_down),
        tier_uplifts=[_told_tier(number, tier, telling) for number, tier in enumerate(found.tiers, start=1)],
        tie_down_count=UNSET if found.tie_downs is None else found.tie_downs,
        total_tie_down_count=UNSET if found.all_tie_downs is None else found.all_tie_downs,
    )


def _told_tier(number: int, tier: Tier, telling: Telling) -> TierUplift:
    return TierUplift(
        tier=number,
        duct_count=tier.duct_count,
        mass_per_length=telling.mass_per_length(tier.duct_mass),
        duct_uplift_per_length=telling.force_per_length(tier.uplift),
        uplift_per_length=telling.force_per_length(tier.uplift * tier.duct_count),
    )


OPERATION = Operation(
    name="flotation",
    operation_id="calculate_flotation",
    summary="Flotation of ducts",
    description="Gives the uplift of empty, water-filled or cable-filled ducts in fresh concrete, slurry or "
    "groundwater, per duct, tier and station, for the live lift of a pour, and the tie-downs that hold it.",
    request=FlotationRequest,
    result=FlotationResult,
    assess=assess,
    tell=tell,
    example={
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "medium": "concrete",
        "fluid_density": {"value": 150, "unit": "lb/ft3"},
        "contents": "empty",
        "duct_mass_per_length": {"value": 2, "unit": "lb/ft"},
        "lift_height": {"value": 12, "unit": "in"},
        "station_spacing": {"value": 5, "unit": "ft"},
        "tie_down_capacity": {"value": 500, "unit": "lbf"},
        "safety_factor": 1.5,
        "length": {"value": 300, "unit": "ft"},
    },
)
