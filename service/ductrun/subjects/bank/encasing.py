"""Concrete around a bank: from its envelope to what is ordered."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import bank as geometry
from ductrun.engineering import encasement as engineering
from ductrun.engineering.bank import Envelope
from ductrun.engineering.formwork import form_pressure
from ductrun.engineering.rounding import over, under
from ductrun.kit.answers import MOST_COUNTED
from ductrun.kit.backing import PRACTICE, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, number, quantity
from ductrun.kit.forms import (
    BagMass,
    BatchVolume,
    CementContent,
    Clearance,
    ConcreteDensity,
    Form,
    Omissible,
    Percent,
    TruckVolume,
)
from ductrun.kit.telling import TELLINGS
from ductrun.kit.wording import apart, in_percent, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.bank_ground import BankGround, Grounding, ground
from ductrun.subjects.bank.reinforcing import Bars, Reinforcing, reinforce
from ductrun.units import Density, Length, Mass, Pressure, Volume

WASTE_FORMED = number("encasement.waste_formed")
WASTE_TRENCH = number("encasement.waste_trench")
TRUCK_CAPACITY = quantity("encasement.truck_capacity", Volume)
ORDER_INCREMENT = quantity("encasement.order_increment", Volume)
BAG_MASS = quantity("encasement.bag_mass", Mass)
BAG_YIELD = quantity("encasement.bag_yield", Volume)  # of one pound of pre-mix
DENSITY = quantity("encasement.density", Density)
CEMENT_CONTENT = quantity("encasement.cement_content", Density)
AGGREGATE_GAP_RATIO = number("encasement.aggregate_gap_ratio")
PIGMENT_MOST = number("encasement.pigment_most_percent")
PIGMENT_LEAST = number("encasement.pigment_least_percent")
FORM_PRESSURE_FLOOR = quantity("encasement.form_pressure_floor", Pressure)
_HEAD = "The head of the whole pour governs the pressure at the foot of the forms"
_PUMPED = "Concrete that is pumped in from below presses at least a quarter more."
_OVER_FLOOR = f"{_HEAD}: no rate of placing is given that would make it less. {_PUMPED}"
_UNDER_FLOOR = {
    system: f"{_HEAD}: formulas by rate of placing begin at {text_of(telling.given(FORM_PRESSURE_FLOOR.value))} and "
    f"give no less. {_PUMPED}"
    for system, telling in TELLINGS.items()
}


class Encasing(Form):
    """How concrete is mixed, reinforced and bought."""

    waste_percent: Omissible[Percent] = Field(
        default=None,
        description="Waste on the net volume, in percent.",
        examples=[5],
        json_schema_extra=by_rule(f"{WASTE_FORMED.value:g} against forms, {WASTE_TRENCH.value:g} against earth"),
    )
    truck_capacity: Omissible[TruckVolume] = Field(
        default=None,
        description="What one truck brings.",
        examples=[{"value": 10, "unit": "yd3"}],
        json_schema_extra=TRUCK_CAPACITY.stated,
    )
    order_increment: Omissible[BatchVolume] = Field(
        default=None,
        description="Step in which the plant sells.",
        examples=[{"value": 0.25, "unit": "yd3"}],
        json_schema_extra=ORDER_INCREMENT.stated,
    )
    bag_mass: Omissible[BagMass] = Field(
        default=None,
        description="Mass of one bag of pre-mix, for small pours.",
        examples=[{"value": 80, "unit": "lb"}],
        json_schema_extra=BAG_MASS.stated,
    )
    maximum_aggregate_size: Omissible[Clearance] = Field(
        default=None, description="Largest aggregate of the mix.", examples=[{"value": 0.75, "unit": "in"}]
    )
    reinforcing: Omissible[Reinforcing] = Field(default=None, description="Bars in the envelope.")
    bank_ground: Omissible[BankGround] = Field(default=None, description="Bare conductors in the envelope, if any.")
    pigment_percent: Omissible[Annotated[float, Field(ge=0, le=100)]] = Field(
        default=None, description="Color in percent of the mass of cement, for a marked mix.", examples=[2]
    )
    cement_content: Omissible[CementContent] = Field(
        default=None,
        description="Cement in the mix.",
        examples=[{"value": 564, "unit": "lb/yd3"}],
        json_schema_extra=CEMENT_CONTENT.stated,
    )
    concrete_density: Omissible[ConcreteDensity] = Field(
        default=None,
        description="Density of fresh concrete.",
        examples=[{"value": 150, "unit": "lb/ft3"}],
        json_schema_extra=DENSITY.stated,
    )


class Encasement(NamedTuple):
    """A pour over a length [m]: volumes [m3], what is ordered, masses [kg]; what its forms carry [N/m2]."""

    envelope: Envelope
    length: float
    gross: float
    displaced: float
    net: float
    waste_percent: float
    order: float
    load_count: int
    bag_count: int
    mass: float
    bars: Bars | None
    pigment: float | None
    grounding: Grounding | None
    form_pressure: float | None


def encase(given: Encasing, envelope: Envelope, length: float, sheet: Worksheet) -> Encasement:
    """Give the concrete of an envelope over a length [m], and what to order."""
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE_TRENCH if envelope.trench_formed else WASTE_FORMED)
    increment = sheet.settle("order_increment", given.order_increment, ORDER_INCREMENT).si
    capacity = sheet.settle("truck_capacity", given.truck_capacity, TRUCK_CAPACITY).si
    bag = sheet.settle("bag_mass", given.bag_mass, BAG_MASS)
    density = sheet.settle("concrete_density", given.concrete_density, DENSITY).si
    sheet.cite(BAG_YIELD.backing.source_id)
    gross, displaced = envelope.area * length, envelope.duct_area * length
    net = gross - displaced
    order = engineering.order_volume(net, waste, increment)
    found = Encasement(
        envelope=envelope,
        length=length,
        gross=gross,
        displaced=displaced,
        net=net,
        waste_percent=waste,
        order=order,
        load_count=engineering.loads(order, capacity),
        bag_count=_bags(net * (1 + waste / 100), bag, sheet),
        mass=net * density,
        bars=_bars(given.reinforcing, envelope, length, sheet),
        pigment=_pigment(given, net, sheet),
        grounding=_grounding(given.bank_ground, length, sheet),
        form_pressure=None if envelope.trench_formed else _form_pressure(density, envelope.height, sheet),
    )
    _caution_aggregate(given.maximum_aggregate_size, envelope, sheet)
    _caution_pour(sheet)
    if sheet.working is not None:
        _show(found, sheet)
    return found


def _bags(volume: float, bag: Mass, sheet: Worksheet) -> int:
    """Count the bags of pre-mix that make a volume [m3]; refuses more than an answer can count."""
    bags = engineering.loads(volume, BAG_YIELD.value.si * bag.in_unit(BAG_MASS.value.unit))
    if bags > MOST_COUNTED:
        raise UnanswerableError(
            sheet.fault("bag_mass", "too_many_bags", f"That makes {bags:.3g} bags: give the run in parts.")
        )
    return bags


def _bars(given: Reinforcing | None, envelope: Envelope, length: float, sheet: Worksheet) -> Bars | None:
    return None if given is None else reinforce(given, envelope, length, sheet.within("reinforcing"))


def _grounding(given: BankGround | None, length: float, sheet: Worksheet) -> Grounding | None:
    return None if given is None else ground(given, length, sheet.within("bank_ground"))


def _form_pressure(density: float, height: float, sheet: Worksheet) -> float:
    """Give the pressure on forms [N/m2] of a pour of a density [kg/m3] and height [m], and say what governs it."""
    pressure = form_pressure(density, height)
    if sheet.working is not None:
        words = f"{density:.6g} kg/m3 x g x {height:.6g} m"
        sheet.show("p", "rho g H", words, sheet.tell.pressure_on_forms(pressure))
    governs = _OVER_FLOOR if over(pressure, FORM_PRESSURE_FLOOR.value.si) else _UNDER_FLOOR[sheet.tell.system]
    sheet.caution("form_pressure", governs, FORM_PRESSURE_FLOOR.backing)
    return pressure


def _pigment(given: Encasing, net: float, sheet: Worksheet) -> float | None:
    """Give the color for the mix [kg]; the dose is on the mass of cement."""
    percent = given.pigment_percent
    if percent is None:
        return None
    cement = sheet.settle("cement_content", given.cement_content, CEMENT_CONTENT).si
    dose, most, least = (in_percent(value) for value in (percent, PIGMENT_MOST.value, PIGMENT_LEAST.value))
    sheet.judge(not over(percent, PIGMENT_MOST.value))
    if over(percent, PIGMENT_MOST.value):
        has, allowed = apart(dose, most)
        words = f"A dose of {has} of cement is over the {allowed} that is allowed."
        sheet.find(
            Severity.VIOLATION, "pigment_dose", words, PIGMENT_MOST.backing, dose, most, member="pigment_percent"
        )
    elif percent > 0 and under(percent, PIGMENT_LEAST.value):
        has, enough = apart(dose, least)
        words = f"A dose of {has} of cement looks washed out: take {enough} or more."
        sheet.find(
            Severity.CAUTION, "pigment_dose", words, PIGMENT_LEAST.backing, dose, least, member="pigment_percent"
        )
    return net * cement * percent / 100


def _caution_aggregate(aggregate: Length | None, envelope: Envelope, sheet: Worksheet) -> None:
    """Caution against aggregate that does not pass between the ducts."""
    if aggregate is None:
        return
    gap = geometry.smallest_gap(envelope.bank)
    most = AGGREGATE_GAP_RATIO.value * gap
    if over(aggregate.si, most):
        sheet.find(
            Severity.CAUTION,
            "aggregate_too_large",
            f"Aggregate of {text_of(sheet.tell.given(aggregate))} does not pass a clear gap of "
            f"{text_of(sheet.tell.size(gap))} reliably: keep it to "
            f"{100 * AGGREGATE_GAP_RATIO.value:g} percent of the gap.",
            AGGREGATE_GAP_RATIO.backing,
            sheet.tell.given(aggregate),
            sheet.tell.size(most),
            member="maximum_aggregate_size",
        )


def _caution_pour(sheet: Worksheet) -> None:
    sheet.caution(
        "empty_ducts_float",
        "Empty ducts float in fresh concrete: tie the bank down at its spacers and place the concrete in lifts.",
        published("cegs-16526a"),
    )
    sheet.caution(
        "wet_concrete",
        "Wet concrete burns skin and eyes: wear gloves, boots and eye protection. Work in the trench only under the "
        "adopted excavation rules and their competent person.",
        PRACTICE,
    )


def _show(found: Encasement, sheet: Worksheet) -> None:
    envelope, length = found.envelope, found.length
    size, volume = sheet.tell.size, sheet.tell.bulk_volume
    ducts = f"{len(envelope.bank.ducts)} ducts in {len(envelope.bank.tier_tops)} tiers"
    sheet.show("W", "2 side + width of the widest tier, or the trench at its bottom", ducts, size(envelope.width))
    sheet.show("H", "bottom + top + height of the tiers", ducts, size(envelope.height))
    sheet.show("V_gross", "area of the pour x L", f"{envelope.area:.6g} m2 x {length:.6g} m", volume(found.gross))
    sheet.show(
        "V_ducts", "sum of pi/4 OD^2 x L", f"{envelope.duct_area:.6g} m2 x {length:.6g} m", volume(found.displaced)
    )
    sheet.show("V_net", "V_gross - V_ducts", f"{found.gross:.6g} - {found.displaced:.6g} m3", volume(found.net))
    sheet.show(
        "V_order",
        "V_net x (1 + waste), up to the next step",
        f"{found.net:.6g} m3 x {1 + found.waste_percent / 100:g}",
        volume(found.order),
    )
