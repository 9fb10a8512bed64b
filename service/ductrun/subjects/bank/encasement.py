"""POST /v1/encasement: how much concrete goes around a duct bank."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import bank as geometry
from ductrun.engineering import encasement as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, citation, number, quantity
from ductrun.kit.forms import (
    BagMass,
    BatchVolume,
    CementContent,
    Clearance,
    ConcreteDensity,
    Form,
    Omissible,
    Percent,
    RunLength,
    TrenchWidth,
    TruckVolume,
)
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.subjects.bank.choices import PourShape
from ductrun.subjects.bank.reinforcing import Reinforcing, ReinforcingTakeoff, pigment_mass, reinforcing_takeoff
from ductrun.subjects.parts.bank import DuctBank, PlacedDuct, bank_of, told_ducts
from ductrun.units import Density, Length, Mass, Volume

COVER = quantity("encasement.cover", Length)
WASTE_FORMED = number("encasement.waste_formed")
WASTE_TRENCH = number("encasement.waste_trench")
TRUCK_CAPACITY = quantity("encasement.truck_capacity", Volume)
ORDER_INCREMENT = quantity("encasement.order_increment", Volume)
BAG_MASS = quantity("encasement.bag_mass", Mass)
BAG_YIELD = quantity("encasement.bag_yield", Volume)  # of one pound of pre-mix
DENSITY = quantity("encasement.density", Density)
POUR_SHAPE = choice("encasement.pour_shape", PourShape)
LEAST_ENVELOPE = Length.parse(2, "in")


class ConcreteCover(Form):
    """Concrete outside the ducts."""

    top: Omissible[Clearance] = Field(
        default=None, description="Above the top tier.", examples=[{"value": 3, "unit": "in"}]
    )
    bottom: Omissible[Clearance] = Field(
        default=None, description="Below the bottom tier.", examples=[{"value": 3, "unit": "in"}]
    )
    side: Omissible[Clearance] = Field(
        default=None, description="Beside the widest tier, each side.", examples=[{"value": 3, "unit": "in"}]
    )


class EncasementRequest(Form):
    """A length of duct bank in concrete."""

    length: RunLength = Field(
        description="Length of the pour, to the outside face of each manhole.",
        examples=[{"value": 323, "unit": "ft"}],
    )
    bank: DuctBank = Field(description="The duct bank.")
    cover: Omissible[ConcreteCover] = Field(default=None, description="Concrete cover outside the ducts.")
    trench_width: Omissible[TrenchWidth] = Field(
        default=None,
        description="Width of the trench, when the trench is the form; leave out for a formed pour.",
        examples=[{"value": 24, "unit": "in"}],
    )
    waste_percent: Omissible[Percent] = Field(
        default=None, description="Waste on the net volume, in percent.", examples=[5]
    )
    truck_capacity: Omissible[TruckVolume] = Field(
        default=None, description="What one truck brings.", examples=[{"value": 10, "unit": "yd3"}]
    )
    order_increment: Omissible[BatchVolume] = Field(
        default=None, description="Step in which the plant sells.", examples=[{"value": 0.25, "unit": "yd3"}]
    )
    bag_mass: Omissible[BagMass] = Field(
        default=None,
        description="Mass of one bag of pre-mix, for small pours.",
        examples=[{"value": 80, "unit": "lb"}],
    )
    pour_shape: Omissible[PourShape] = Field(
        default=None,
        description="Whether the pour fills the bounding rectangle or steps with the tiers.",
        examples=["bounding_rectangle"],
    )
    maximum_aggregate: Omissible[Clearance] = Field(
        default=None, description="Largest aggregate of the mix.", examples=[{"value": 0.75, "unit": "in"}]
    )
    reinforcing: Omissible[Reinforcing] = Field(default=None, description="Bars in the envelope.")
    pigment_percent: Omissible[Annotated[float, Field(ge=0, le=100)]] = Field(
        default=None, description="Color in percent of the mass of cement, for a marked mix.", examples=[2]
    )
    cement_content: Omissible[CementContent] = Field(
        default=None, description="Cement in the mix.", examples=[{"value": 564, "unit": "lb/yd3"}]
    )
    concrete_density: Omissible[ConcreteDensity] = Field(
        default=None, description="Density of fresh concrete.", examples=[{"value": 150, "unit": "lb/ft3"}]
    )


class EncasementResult(Struct, frozen=True, gc=False):
    """Envelope, volumes and what to order."""

    envelope_width: Annotated[answers.Length, Meta(description="Greatest width of the concrete.")]
    envelope_height: Annotated[answers.Length, Meta(description="Height of the concrete.")]
    gross_volume: Annotated[answers.Volume, Meta(description="Volume of the envelope.")]
    duct_volume: Annotated[answers.Volume, Meta(description="What the ducts displace, by outside diameter.")]
    net_volume: Annotated[answers.Volume, Meta(description="Concrete in place, without waste.")]
    order_volume: Annotated[answers.Volume, Meta(description="With waste, up to the next step the plant sells.")]
    truck_load_count: Annotated[int, Meta(description="Truck loads for the order.")]
    bag_count: Annotated[int, Meta(description="Bags of pre-mix for the net volume with waste.")]
    concrete_mass: Annotated[answers.Mass, Meta(description="Mass of the net volume.")]
    ducts: Annotated[list[PlacedDuct], Meta(description="Where every duct lies.")]
    reinforcing: Annotated[ReinforcingTakeoff | UnsetType, Meta(description="Bars, if asked for.")] = UNSET
    pigment_mass: Annotated[answers.Mass | UnsetType, Meta(description="Color for the mix, if asked for.")] = UNSET


def _cover(request: EncasementRequest, sheet: Worksheet) -> tuple[float, float, float]:
    """Give the cover above, below and beside the bank [m]."""
    given = request.cover or ConcreteCover()
    sides = {"top": given.top, "bottom": given.bottom, "side": given.side}
    settled = {side: sheet.settle(f"#/cover/{side}", cover, COVER) for side, cover in sides.items()}
    for side, cover in settled.items():
        if under(cover.si, LEAST_ENVELOPE.si):
            sheet.cite("nfpa70-300-5")
            sheet.find(
                Severity.CAUTION,
                "thin_envelope",
                f"The {side} cover of {text_of(sheet.tell.given(cover))} is under the 2 in of concrete required around "
                "a raceway that is approved only when encased.",
                citation("nfpa70-300-5"),
                sheet.tell.given(cover),
                sheet.tell.given(LEAST_ENVELOPE),
            )
    return settled["top"].si, settled["bottom"].si, settled["side"].si


def _width(request: EncasementRequest, least: float) -> float:
    """Give the width of the pour [m]: that of the trench if the trench is the form."""
    trench = request.trench_width
    if trench is None:
        return least
    if under(trench.si, least):
        minimum = trench.unit.from_si(least)
        raise UnanswerableError(
            Fault(
                "#/trench_width/value",
                "trench_narrower_than_envelope",
                f"The bank with its side cover takes {minimum:.4g} {trench.unit.value}: the trench cannot be narrower.",
                {"minimum": {"value": minimum, "unit": trench.unit.value}},
            )
        )
    return trench.si


def _area(
    request: EncasementRequest, placed: geometry.Bank, cover: tuple[float, float, float], sheet: Worksheet
) -> tuple[float, float]:
    """Give the area of the pour [m2] and its greatest width [m]."""
    top, bottom, side = cover
    width = _width(request, placed.width + 2 * side)
    if request.trench_width is not None:
        if request.pour_shape is PourShape.STEPPED:
            raise UnanswerableError(
                Fault(
                    "#/pour_shape",
                    "not_with_a_trench_form",
                    "Where the trench is the form the pour fills its width: a stepped pour needs forms.",
                    ["bounding_rectangle"],
                )
            )
        return width * (placed.height + top + bottom), width
    shape = sheet.settle("#/pour_shape", request.pour_shape, POUR_SHAPE)
    if shape is PourShape.STEPPED:
        return geometry.stepped_area(placed, top, bottom, side), width
    return geometry.rectangle_area(placed, top, bottom, side), width


def _aggregate(request: EncasementRequest, placed: geometry.Bank, sheet: Worksheet) -> None:
    gap = geometry.smallest_gap(placed)
    if request.maximum_aggregate is None or not over(request.maximum_aggregate.si, 0.75 * gap):
        return
    sheet.find(
        Severity.CAUTION,
        "aggregate_too_large",
        f"Aggregate of {text_of(sheet.tell.given(request.maximum_aggregate))} does not pass a clear gap of "
        f"{text_of(sheet.tell.size(gap))} reliably: keep it to three quarters of the gap.",
        "from memory",
        sheet.tell.given(request.maximum_aggregate),
        sheet.tell.size(0.75 * gap),
    )


def compute(request: EncasementRequest, sheet: Worksheet) -> EncasementResult:
    """Give the envelope of a bank, its concrete, and what to order."""
    tell = sheet.tell
    placed = bank_of(request.bank, sheet.within("bank"))
    top, bottom, side = _cover(request, sheet)
    trench_formed = request.trench_width is not None
    waste = sheet.settle("#/waste_percent", request.waste_percent, WASTE_TRENCH if trench_formed else WASTE_FORMED)
    increment = sheet.settle("#/order_increment", request.order_increment, ORDER_INCREMENT).si
    capacity = sheet.settle("#/truck_capacity", request.truck_capacity, TRUCK_CAPACITY).si
    bag = sheet.settle("#/bag_mass", request.bag_mass, BAG_MASS)
    density = sheet.settle("#/concrete_density", request.concrete_density, DENSITY).si
    sheet.cite("pre-mix-bag-yield")
    length = request.length.si
    area, width = _area(request, placed, (top, bottom, side), sheet)
    height = placed.height + top + bottom
    duct_area = geometry.duct_area(placed)
    gross, displaced = area * length, duct_area * length
    net = gross - displaced
    order = engineering.order_volume(net, waste, increment)
    told_net, told_order = tell.concrete_volume(net), tell.concrete_volume(order)
    bag_volume = BAG_YIELD.value.si * bag.in_unit(BAG_MASS.value.unit)
    _aggregate(request, placed, sheet)
    ducts = f"{len(placed.ducts)} ducts in {len(placed.tier_tops)} tiers"
    sheet.show("W", "2 side + width of the widest tier, or the trench", ducts, tell.size(width))
    sheet.show("H", "bottom + top + height of the tiers", ducts, tell.size(height))
    sheet.show("V_gross", "area of the pour x L", f"{area:.6g} m2 x {length:.6g} m", tell.concrete_volume(gross))
    sheet.show(
        "V_ducts", "sum of pi/4 OD^2 x L", f"{duct_area:.6g} m2 x {length:.6g} m", tell.concrete_volume(displaced)
    )
    sheet.show("V_net", "V_gross - V_ducts", f"{gross:.6g} - {displaced:.6g} m3", told_net)
    sheet.show("V_order", "V_net x (1 + waste), up to the next step", f"{net:.6g} m3 x {1 + waste / 100:g}", told_order)
    sheet.find(
        Severity.CAUTION,
        "empty_ducts_float",
        "Empty ducts float in fresh concrete: tie the bank down at its spacers and place the concrete in lifts.",
        citation("cegs-16526a"),
    )
    sheet.find(
        Severity.CAUTION,
        "wet_concrete",
        "Wet concrete burns skin and eyes: wear gloves, boots and eye protection. Work in the trench only under the "
        "adopted excavation rules and their competent person.",
        "common practice, no source",
    )
    return EncasementResult(
        envelope_width=tell.size(width),
        envelope_height=tell.size(height),
        gross_volume=tell.concrete_volume(gross),
        duct_volume=tell.concrete_volume(displaced),
        net_volume=told_net,
        order_volume=told_order,
        truck_load_count=engineering.loads(order, capacity),
        bag_count=engineering.loads(net * (1 + waste / 100), bag_volume),
        concrete_mass=tell.mass(net * density),
        ducts=told_ducts(placed, tell),
        reinforcing=reinforcing_takeoff(request.reinforcing, length, width, height, sheet),
        pigment_mass=pigment_mass(request.pigment_percent, request.cement_content, net, sheet),
    )


OPERATION = Operation(
    name="encasement",
    operation_id="calculate_encasement",
    summary="Concrete encasement",
    description="Gives the envelope of a duct bank, the concrete net of the ducts by their outside diameter, the order "
    "with waste, truck loads, bags and mass; formed, or with the trench as the form.",
    request=EncasementRequest,
    result=EncasementResult,
    compute=compute,
    example={
        "length": {"value": 323, "unit": "ft"},
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "cover": {
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
