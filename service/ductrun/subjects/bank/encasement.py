"""POST /v1/encasement: how much concrete goes around a duct bank."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.bank import Bank, Concrete, Envelope
from ductrun.kit import answers
from ductrun.kit.forms import Omissible, RunLength, SideSlope, TrenchWidth
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.bank_ground import BankGroundTakeoff, told_ground
from ductrun.subjects.bank.encasing import Encasement, Encasing, encase
from ductrun.subjects.bank.reinforcing import ReinforcingTakeoff, told_bars
from ductrun.subjects.parts.bank import MOST_IN_A_TIER, MOST_TIERS, DuctBank, PlacedDuct, bank_of, told_ducts
from ductrun.subjects.parts.envelope import (
    POUR_SHAPE,
    SIDE_SLOPE,
    AskedPour,
    ConcreteCover,
    PourShape,
    concrete_of,
    poured,
    poured_in_trench,
    trench_width_of,
)


class EncasementRequest(Encasing):
    """A length of duct bank in concrete."""

    length: RunLength = Field(
        description="Length of the pour, to the outside face of each manhole.",
        examples=[{"value": 323, "unit": "ft"}],
    )
    bank: DuctBank = Field(description="The duct bank.")
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None, description="Concrete above, below and beside the ducts."
    )
    trench_width: Omissible[TrenchWidth] = Field(
        default=None,
        description="Width of the trench where the concrete begins, when the trench is the form; left out for a formed "
        "pour.",
        examples=[{"value": 24, "unit": "in"}],
    )
    side_slope_ratio: Omissible[SideSlope] = Field(
        default=None,
        description="Side of the trench, horizontal for one vertical, when the trench is the form.",
        examples=[0],
        json_schema_extra=SIDE_SLOPE.stated,
    )
    pour_shape: Omissible[PourShape] = Field(
        default=None,
        description="Whether the pour fills the bounding rectangle or steps with the tiers.",
        examples=["bounding_rectangle"],
        json_schema_extra=POUR_SHAPE.stated,
    )


class EncasementResult(Struct, frozen=True, gc=False):
    """Envelope, volumes and what to order."""

    envelope_width: Annotated[
        answers.Length, Meta(description="Greatest width of the concrete; at its bottom in a sloped trench.")
    ]
    envelope_height: Annotated[answers.Length, Meta(description="Height of the concrete.")]
    gross_volume: Annotated[answers.Volume, Meta(description="Volume of the envelope.")]
    duct_volume: Annotated[answers.Volume, Meta(description="What the ducts displace, by outside diameter.")]
    net_volume: Annotated[answers.Volume, Meta(description="Concrete in place, without waste.")]
    order_volume: Annotated[answers.Volume, Meta(description="With waste, up to the next step the plant sells.")]
    truck_load_count: Annotated[int, Meta(description="Truck loads for the order.")]
    bag_count: Annotated[int, Meta(description="Bags of pre-mix for the net volume with waste.")]
    concrete_mass: Annotated[answers.Mass, Meta(description="Mass of the net volume.")]
    form_area: Annotated[answers.Area, Meta(description="Forms along the pour, without its ends; 0 against earth.")]
    ducts: Annotated[
        list[PlacedDuct], Meta(description="Where every duct lies.", max_length=MOST_TIERS * MOST_IN_A_TIER)
    ]
    envelope_top_width: Annotated[
        answers.Length | UnsetType, Meta(description="Width of the concrete at its top, against the sides of a trench.")
    ] = UNSET
    form_pressure: Annotated[
        answers.Pressure | UnsetType,
        Meta(description="Of the fresh concrete at the foot of the forms, filled from above; none against earth."),
    ] = UNSET
    reinforcing_takeoff: Annotated[ReinforcingTakeoff | UnsetType, Meta(description="Bars, if asked for.")] = UNSET
    pigment_mass: Annotated[answers.Mass | UnsetType, Meta(description="Color for the mix, if asked for.")] = UNSET
    bank_ground_takeoff: Annotated[
        BankGroundTakeoff | UnsetType, Meta(description="Bare conductors in the envelope, if asked for.")
    ] = UNSET


def assess(request: EncasementRequest, sheet: Worksheet) -> Encasement:
    """Encase the bank of a request."""
    bank_place = sheet.within("bank")
    placed = bank_of(request.bank, bank_place)
    asked = AskedPour(
        request.bank,
        bank_place,
        request.concrete_cover,
        sheet.within("concrete_cover"),
        request.pour_shape,
        sheet.within("pour_shape"),
    )
    concrete = concrete_of(asked)
    envelope = _envelope(request, placed, asked, concrete, sheet)
    return encase(request, envelope, request.length.si, sheet)


def _envelope(
    request: EncasementRequest, placed: Bank, asked: AskedPour, concrete: Concrete, sheet: Worksheet
) -> Envelope:
    """Give the envelope, against forms or against the sides of the trench."""
    if request.trench_width is not None:
        place = sheet.within("trench_width")
        least = placed.width + 2 * concrete.side
        width = trench_width_of(request.trench_width, least, place)
        slope = sheet.settle("side_slope_ratio", request.side_slope_ratio, SIDE_SLOPE)
        return poured_in_trench(placed, asked, concrete, width, slope)
    if request.side_slope_ratio:
        raise UnanswerableError(
            sheet.fault(
                "side_slope_ratio",
                "only_with_a_trench_form",
                "Forms stand upright: give trench_width where the trench is the form, or leave the slope out.",
                maximum=0,
            )
        )
    return poured(placed, asked, concrete)


def tell(found: Encasement, telling: Telling) -> EncasementResult:
    """Put an encasement into the caller's units."""
    size, volume = telling.size, telling.bulk_volume
    return EncasementResult(
        envelope_width=size(found.envelope.width),
        envelope_height=size(found.envelope.height),
        gross_volume=volume(found.gross),
        duct_volume=volume(found.displaced),
        net_volume=volume(found.net),
        order_volume=volume(found.order),
        truck_load_count=found.load_count,
        bag_count=found.bag_count,
        concrete_mass=telling.mass(found.mass),
        form_area=telling.surface(found.envelope.form * found.length),
        envelope_top_width=size(found.envelope.top_width) if found.envelope.trench_formed else UNSET,
        ducts=told_ducts(found.envelope.bank, telling),
        reinforcing_takeoff=UNSET if found.bars is None else told_bars(found.bars, telling),
        form_pressure=UNSET if found.form_pressure is None else telling.pressure_on_forms(found.form_pressure),
        bank_ground_takeoff=UNSET if found.grounding is None else told_ground(found.grounding, telling),
        pigment_mass=UNSET if found.pigment is None else telling.mass(found.pigment),
    )


OPERATION = Operation(
    name="encasement",
    operation_id="calculate_encasement",
    summary="Concrete encasement",
    description="Gives the envelope of a duct bank, the concrete net of the ducts by their outside diameter, the order "
    "with waste, truck loads, bags and mass, bars, the bare conductor in it and the pressure on forms; formed, or with "
    "the trench as the form.",
    request=EncasementRequest,
    result=EncasementResult,
    assess=assess,
    tell=tell,
    example={
        "length": {"value": 323, "unit": "ft"},
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "concrete_cover": {
            "top": {"value": 3, "unit": "in"},
            "bottom": {"value": 3, "unit": "in"},
            "side": {"value": 3, "unit": "in"},
        },
        "pour_shape": "bounding_rectangle",
        "waste_percent": 5,
        "truck_capacity": {"value": 10, "unit": "yd3"},
        "order_increment": {"value": 0.25, "unit": "yd3"},
        "bag_mass": {"value": 80, "unit": "lb"},
        "concrete_density": {"value": 150, "unit": "lb/ft3"},
    },
)
