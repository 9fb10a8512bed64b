"""POST /v1/flotation: how hard ducts push upward, and what holds them down."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.bank import Bank, Concrete, Envelope, bare
from ductrun.kit import answers
from ductrun.kit.forms import Depth, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import FlotationMedium
from ductrun.subjects.bank.duct_masses import walls_of
from ductrun.subjects.bank.floating import Flotation, LineUplift, float_bank
from ductrun.subjects.bank.flotation_practice import MEDIUM, Floating
from ductrun.subjects.parts.bank import MOST_IN_A_TIER, MOST_TIERS, DuctBank, bank_of
from ductrun.subjects.parts.envelope import CONCRETE_COVER, POUR_SHAPE, AskedPour, ConcreteCover, PourShape, poured


class FlotationRequest(Floating):
    """A bank in a fluid."""

    bank: DuctBank = Field(description="The duct bank.")
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None,
        description="In groundwater: the hardened concrete around the ducts, whose weight holds them; left out, none "
        "is counted.",
    )
    pour_shape: Omissible[PourShape] = Field(
        default=None,
        description="Whether that concrete fills the bounding rectangle or steps with the tiers.",
        examples=["bounding_rectangle"],
        json_schema_extra=POUR_SHAPE.stated,
    )
    cover: Omissible[Depth] = Field(
        default=None,
        description="In groundwater: least earth over the top of what is buried, whose weight holds it; left out, none "
        "is counted.",
        examples=[{"value": 24, "unit": "in"}],
    )
    length: Omissible[RunLength] = Field(
        default=None, description="Length of the run, to count all tie-downs.", examples=[{"value": 300, "unit": "ft"}]
    )


class TierUplift(Struct, frozen=True, gc=False):
    """Like ducts of one tier."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.", ge=1)]
    duct_count: Annotated[int, Meta(description="Ducts of this kind in the tier.")]
    outside_diameter: Annotated[answers.Length, Meta(description="Outside diameter of one duct.")]
    mass_per_length: Annotated[answers.MassPerLength, Meta(description="Of one empty duct.")]
    duct_uplift_per_length: Annotated[answers.ForcePerLength, Meta(description="Of one duct; negative if it sinks.")]
    uplift_per_length: Annotated[answers.ForcePerLength, Meta(description="Of these ducts together.")]


class FlotationResult(Struct, frozen=True, gc=False):
    """The uplift and what holds it."""

    uplift_per_length: Annotated[
        answers.ForcePerLength,
        Meta(description="Of the ducts in the worst live lift, less the weight that lies on them; 0 if none floats."),
    ]
    full_uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Of all ducts, with the whole depth liquid at once.")
    ]
    uplift_per_station: Annotated[answers.Force, Meta(description="On one station.")]
    hold_down_per_station: Annotated[
        answers.Force,
        Meta(description="On one station: the uplift of the ducts with the safety factor, less the weight."),
    ]
    tier_uplifts: Annotated[
        list[TierUplift],
        Meta(
            description="Each kind of duct of each tier, the bottom tier first.", max_length=MOST_TIERS * MOST_IN_A_TIER
        ),
    ]
    concrete_weight_per_length: Annotated[
        answers.ForcePerLength | UnsetType,
        Meta(description="Of the concrete around the ducts, weighed in the groundwater, if it is given."),
    ] = UNSET
    earth_weight_per_length: Annotated[
        answers.ForcePerLength | UnsetType,
        Meta(description="Of the earth above, weighed in the groundwater, if its cover is given."),
    ] = UNSET
    tie_down_count: Annotated[
        int | UnsetType, Meta(description="Tie-downs at each station, if the capacity of one is given.")
    ] = UNSET
    total_tie_down_count: Annotated[
        int | UnsetType, Meta(description="Tie-downs of the run, if its length is given as well.")
    ] = UNSET


def assess(request: FlotationRequest, sheet: Worksheet) -> Flotation:
    """Float the bank of a request."""
    _refuse_weights(request, sheet)
    place = sheet.within("bank")
    placed = bank_of(request.bank, place)
    walls = walls_of(request.bank, place)
    envelope = bare(placed) if request.concrete_cover is None else _concrete(request, placed, sheet)
    cover = None if request.cover is None else request.cover.si
    return float_bank(request, envelope, walls, cover, None if request.length is None else request.length.si, sheet)


def _concrete(request: FlotationRequest, placed: Bank, sheet: Worksheet) -> Envelope:
    """Give the envelope of a bank in concrete that was poured against forms."""
    asked = AskedPour(
        request.bank,
        sheet.within("bank"),
        request.concrete_cover,
        sheet.within("concrete_cover"),
        request.pour_shape,
        sheet.within("pour_shape"),
    )
    given, place = request.concrete_cover, asked.cover_place
    top, bottom, side = (
        place.settle(name, getattr(given, name), CONCRETE_COVER).si for name in ("top", "bottom", "side")
    )
    return poured(placed, asked, Concrete(top, bottom, side))


def _refuse_weights(request: FlotationRequest, sheet: Worksheet) -> None:
    """Refuse the weight of what is not there yet while ducts float in a pour."""
    if (request.medium or MEDIUM.value) is FlotationMedium.GROUNDWATER:
        return
    faults = [
        sheet.fault(
            member,
            "only_in_groundwater",
            "While the pour is liquid nothing lies on the ducts that holds them: leave it out, or ask for groundwater.",
        )
        for member in ("concrete_cover", "cover")
        if getattr(request, member) is not None
    ]
    if faults:
        raise UnanswerableError(*faults)


def tell(found: Flotation, telling: Telling) -> FlotationResult:
    """Put a flotation into the caller's units."""
    per_length = telling.force_per_length
    return FlotationResult(
        uplift_per_length=per_length(found.live_uplift),
        full_uplift_per_length=per_length(found.full_uplift),
        uplift_per_station=telling.force(found.station_uplift),
        hold_down_per_station=telling.force(found.hold_down),
        tier_uplifts=[_told_line(line, telling) for line in found.lines],
        concrete_weight_per_length=_told_weight(found.weights.concrete, telling),
        earth_weight_per_length=_told_weight(found.weights.earth, telling),
        tie_down_count=UNSET if found.tie_downs is None else found.tie_downs,
        total_tie_down_count=UNSET if found.all_tie_downs is None else found.all_tie_downs,
    )


def _told_weight(weight: float | None, telling: Telling) -> answers.ForcePerLength | UnsetType:
    return UNSET if weight is None else telling.force_per_length(weight)


def _told_line(line: LineUplift, telling: Telling) -> TierUplift:
    return TierUplift(
        tier=line.tier + 1,
        duct_count=line.duct_count,
        outside_diameter=telling.size(line.outside),
        mass_per_length=telling.mass_per_length(line.duct_mass),
        duct_uplift_per_length=telling.force_per_length(line.uplift),
        uplift_per_length=telling.force_per_length(line.uplift * line.duct_count),
    )


OPERATION = Operation(
    name="flotation",
    operation_id="calculate_flotation",
    summary="Flotation of ducts",
    description="Gives the uplift of empty, water-filled or cable-filled ducts in fresh concrete, slurry or "
    "groundwater, per duct, tier and station, for the worst live lift of a pour or against the weight of concrete and "
    "earth, and the tie-downs that hold it.",
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
