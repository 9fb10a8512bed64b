"""POST /v1/encasement: how much concrete goes around a duct bank."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import encasement as engineering
from ductrun.operations import answers
from ductrun.operations.choices import Severity
from ductrun.operations.conduits import Conduit, outside_diameter
from ductrun.operations.defaults import citation, number, quantity
from ductrun.operations.inputs import (
    BagMass,
    BatchVolume,
    Clearance,
    ConcreteDensity,
    Form,
    Omissible,
    Percent,
    RunLength,
    TrenchWidth,
    TruckVolume,
)
from ductrun.operations.operation import Operation
from ductrun.operations.spacers import Tiers, caution_overhang
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.units import Density, Length, Mass, Volume

HORIZONTAL_SEPARATION = quantity("bank.horizontal_separation", Length)
VERTICAL_SEPARATION = quantity("bank.vertical_separation", Length)
COVER = quantity("encasement.cover", Length)
WASTE_FORMED = number("encasement.waste_formed")
WASTE_TRENCH = number("encasement.waste_trench")
TRUCK_CAPACITY = quantity("encasement.truck_capacity", Volume)
ORDER_INCREMENT = quantity("encasement.order_increment", Volume)
BAG_MASS = quantity("encasement.bag_mass", Mass)
BAG_YIELD = quantity("encasement.bag_yield", Volume)  # of one pound of pre-mix
DENSITY = quantity("encasement.density", Density)
LEAST_ENVELOPE = Length.parse(2, "in")


class DuctBank(Form):
    """Ducts in tiers."""

    conduit: Conduit = Field(description="The duct, the same throughout.")
    tiers: Tiers = Field(description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 3]])
    horizontal_separation: Omissible[Clearance] = Field(
        default=None,
        description="Clear distance between ducts of a tier.",
        examples=[{"value": 2, "unit": "in"}],
    )
    vertical_separation: Omissible[Clearance] = Field(
        default=None, description="Clear distance between tiers.", examples=[{"value": 2, "unit": "in"}]
    )


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
    concrete_density: Omissible[ConcreteDensity] = Field(
        default=None, description="Density of fresh concrete.", examples=[{"value": 150, "unit": "lb/ft3"}]
    )


class EncasementResult(Struct, frozen=True, gc=False):
    """Envelope, volumes and what to order."""

    envelope_width: Annotated[answers.Length, Meta(description="Width of the concrete.")]
    envelope_height: Annotated[answers.Length, Meta(description="Height of the concrete.")]
    gross_volume: Annotated[answers.Volume, Meta(description="Volume of the envelope.")]
    duct_volume: Annotated[answers.Volume, Meta(description="What the ducts displace, by outside diameter.")]
    net_volume: Annotated[answers.Volume, Meta(description="Concrete in place, without waste.")]
    order_volume: Annotated[answers.Volume, Meta(description="With waste, up to the next step the plant sells.")]
    truck_load_count: Annotated[int, Meta(description="Truck loads for the order.")]
    bag_count: Annotated[int, Meta(description="Bags of pre-mix for the net volume with waste.")]
    concrete_mass: Annotated[answers.Mass, Meta(description="Mass of the net volume.")]


def _cover(request: EncasementRequest, sheet: Worksheet) -> tuple[float, float, float]:
    """Give the cover above, below and beside the bank [m]."""
    given = request.cover or ConcreteCover()
    sides = {"top": given.top, "bottom": given.bottom, "side": given.side}
    settled = {side: sheet.settle(f"#/cover/{side}", cover, COVER) for side, cover in sides.items()}
    for side, cover in settled.items():
        if cover.si < LEAST_ENVELOPE.si * (1 - 1e-9):
            sheet.cite("nfpa70-300-5")
            sheet.find(
                Severity.CAUTION,
                "thin_envelope",
                f"The {side} cover of {cover} is under the 2 in of concrete required around a raceway that is approved "
                "only when encased.",
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
    if trench.si < least * (1 - 1e-9):
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


def compute(request: EncasementRequest, sheet: Worksheet) -> EncasementResult:
    """Give the envelope of a bank, its concrete, and what to order."""
    bank, tell = request.bank, sheet.tell
    diameter = outside_diameter(bank.conduit, sheet, "#/bank/conduit")
    across = sheet.settle("#/bank/horizontal_separation", bank.horizontal_separation, HORIZONTAL_SEPARATION).si
    between = sheet.settle("#/bank/vertical_separation", bank.vertical_separation, VERTICAL_SEPARATION).si
    top, bottom, side = _cover(request, sheet)
    trench_formed = request.trench_width is not None
    waste = sheet.settle("#/waste_percent", request.waste_percent, WASTE_TRENCH if trench_formed else WASTE_FORMED)
    increment = sheet.settle("#/order_increment", request.order_increment, ORDER_INCREMENT).si
    capacity = sheet.settle("#/truck_capacity", request.truck_capacity, TRUCK_CAPACITY).si
    bag = sheet.settle("#/bag_mass", request.bag_mass, BAG_MASS)
    density = sheet.settle("#/concrete_density", request.concrete_density, DENSITY).si
    sheet.cite("pre-mix-bag-yield")
    caution_overhang(bank.tiers, sheet)

    length, ducts = request.length.si, sum(bank.tiers)
    width = _width(request, engineering.envelope_width(bank.tiers, diameter, across, side))
    height = engineering.envelope_height(len(bank.tiers), diameter, between, top, bottom)
    gross = engineering.prism_volume(width, height, length)
    displaced = engineering.duct_volume(ducts, diameter, length)
    net = gross - displaced
    order = engineering.order_volume(net, waste, increment)
    told_net, told_order = tell.concrete_volume(net), tell.concrete_volume(order)
    bag_volume = BAG_YIELD.value.si * bag.in_unit(BAG_MASS.value.unit)
    sheet.show(
        "W",
        "2 side + C OD + (C - 1) separation, or the trench",
        f"{ducts} ducts of {diameter:.5g} m",
        tell.size(width),
    )
    sheet.show("H", "bottom + top + R OD + (R - 1) separation", f"{len(bank.tiers)} tiers", tell.size(height))
    sheet.show(
        "V_gross",
        "W x H x L",
        f"{width:.5g} m x {height:.5g} m x {length:.6g} m",
        tell.concrete_volume(gross),
    )
    sheet.show(
        "V_ducts",
        "n x pi/4 x OD^2 x L",
        f"{ducts} x pi/4 x {diameter:.5g}^2 x {length:.6g}",
        tell.concrete_volume(displaced),
    )
    sheet.show("V_net", "V_gross - V_ducts", f"{gross:.6g} - {displaced:.6g} m3", told_net)
    sheet.show(
        "V_order",
        "V_net x (1 + waste), up to the next step",
        f"{net:.6g} m3 x {1 + waste / 100:g}",
        told_order,
    )
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
        },
        "cover": {
            "top": {"value": 3, "unit": "in"},
            "bottom": {"value": 3, "unit": "in"},
            "side": {"value": 3, "unit": "in"},
        },
        "waste_percent": 5,
        "truck_capacity": {"value": 10, "unit": "yd3"},
        "order_increment": {"value": 0.25, "unit": "yd3"},
        "bag_mass": {"value": 80, "unit": "lb"},
        "concrete_density": {"value": 150, "unit": "lb/ft3"},
    },
)
