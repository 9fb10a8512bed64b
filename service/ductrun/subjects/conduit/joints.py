"""POST /v1/joints: sticks, joints, elbows and what goes with them."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import joints as engineering
from ductrun.engineering.rounding import over, round_up, under
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, citation, flag, quantity, standing_of
from ductrun.kit.forms import (
    BendAngle,
    BendRadius,
    Clearance,
    ConduitTemperature,
    Form,
    Interval,
    Omissible,
    RunLength,
)
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.conduit.choices import DuctEnds
from ductrun.subjects.parts.conduit import ListedConduit, find_row
from ductrun.tables import TABLES, TRADE_SIZES
from ductrun.units import Duration, Length, Temperature, TemperatureUnit, Volume

STICK_LENGTH = quantity("joints.stick_length", Length)
BELL_LOSS = quantity("joints.bell_loss", Length)
ENDS = choice("joints.ends", DuctEnds)
OFFCUTS_SHARED = flag("joints.offcuts_shared")
TANGENT = quantity("joints.tangent", Length)
CORD_TAIL = quantity("joints.cord_tail", Length)
MANDREL_CLEARANCE = quantity("joints.mandrel_clearance", Length)
TEMPERATURE = quantity("joints.temperature", Temperature)
_YIELDS = {row.trade_size: row for row in TABLES["cement_yields"]}
QUART = Volume.parse(1, "qt_us")


class DuctElbow(Form):
    """Elbows or sweeps of one kind in each duct."""

    radius: BendRadius = Field(description="Radius to the center line.", examples=[{"value": 36, "unit": "in"}])
    angle: BendAngle = Field(description="Angle.", examples=[{"value": 90, "unit": "deg"}])
    tangent: Omissible[Clearance] = Field(
        default=None, description="Straight part at either end.", examples=[{"value": 6, "unit": "in"}]
    )
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="How many in each duct.", examples=[2])


class JointsRequest(Form):
    """Ducts along a run."""

    conduit: ListedConduit = Field(description="The duct.")
    length: RunLength = Field(
        description="Length of one duct along its center line, elbows included.",
        examples=[{"value": 323, "unit": "ft"}],
    )
    duct_count: Annotated[int, Field(ge=1, le=1_200)] = Field(description="Ducts of the run.", examples=[9])
    stick_length: Omissible[Interval] = Field(
        default=None, description="Length a stick is sold by.", examples=[{"value": 20, "unit": "ft"}]
    )
    bell_loss: Omissible[Clearance] = Field(
        default=None, description="What a joint takes of a stick's length.", examples=[{"value": 4, "unit": "in"}]
    )
    ends: Omissible[DuctEnds] = Field(default=None, description="Bells or plain ends.", examples=["belled"])
    elbows: Omissible[Annotated[list[DuctElbow], Field(min_length=1, max_length=50)]] = Field(
        default=None, description="Elbows and sweeps of each duct."
    )
    offcuts_shared: Omissible[bool] = Field(
        default=None, description="Whether the offcut of one duct starts the next.", examples=[False]
    )
    spare_duct_count: Omissible[Annotated[int, Field(ge=0, le=1_200)]] = Field(
        default=None, description="Ducts that stay empty, plugged at both ends.", examples=[2]
    )
    cord_tail: Omissible[Clearance] = Field(
        default=None, description="Pull cord left at each end of a duct.", examples=[{"value": 10, "unit": "ft"}]
    )
    mandrel_clearance: Omissible[Clearance] = Field(
        default=None,
        description="How much smaller than the bore the mandrel is.",
        examples=[{"value": 0.25, "unit": "in"}],
    )
    temperature: Omissible[ConduitTemperature] = Field(
        default=None, description="Temperature when joining.", examples=[{"value": 70, "unit": "degF"}]
    )


class JointsResult(Struct, frozen=True, gc=False):
    """What to order and how long to wait."""

    stick_count: Annotated[int, Meta(description="Sticks of all ducts.")]
    straight_length: Annotated[answers.Length, Meta(description="Straight duct in one duct, elbows taken out.")]
    joint_count: Annotated[int, Meta(description="Cemented sockets of all ducts, end bells included.")]
    coupling_count: Annotated[int, Meta(description="Separate couplings; none with bells.")]
    elbow_count: Annotated[int, Meta(description="Elbows and sweeps of all ducts.")]
    elbow_length: Annotated[answers.Length, Meta(description="Developed length of the elbows of one duct.")]
    end_bell_count: Annotated[int, Meta(description="End bells, two a duct.")]
    plug_count: Annotated[int, Meta(description="Plugs for spare ducts, two each.")]
    pull_cord_length: Annotated[answers.Length, Meta(description="Cord through every duct, tails included.")]
    cement_volume: Annotated[answers.Volume, Meta(description="Solvent cement, by the conduit table.")]
    cement_quart_count: Annotated[int, Meta(description="The same in whole quarts.")]
    set_time: Annotated[answers.Duration, Meta(description="Time a joint is left alone.")]
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="Mandrel for the test, if the bore is known.")
    ] = UNSET


def _set_time(size: str, temperature: Temperature, sheet: Worksheet) -> Duration:
    """Give the printed set time; refuses a temperature below or above the table."""
    degrees, rank = temperature.in_unit(TemperatureUnit.DEG_F), TRADE_SIZES.index(size)
    for row in TABLES["set_times"]:
        spans = TRADE_SIZES.index(row.trade_size_from) <= rank <= TRADE_SIZES.index(row.trade_size_to)
        if spans and not under(degrees, row.lowest_degf) and not over(degrees, row.highest_degf):
            sheet.cite(row.source)
            return Duration.parse(row.minutes, "min")
    lowest = min(row.lowest_degf for row in TABLES["set_times"])
    highest = max(row.highest_degf for row in TABLES["set_times"])
    raise UnanswerableError(
        Fault(
            "#/temperature/value",
            "no_set_time",
            f"Set times are on file from {lowest:g} to {highest:g} degF: ask the maker of the cement for others.",
            {"minimum": {"value": lowest, "unit": "degF"}, "maximum": {"value": highest, "unit": "degF"}},
        )
    )


def _elbows(request: JointsRequest, sheet: Worksheet) -> tuple[int, float]:
    """Give the elbows of one duct and their developed length [m]."""
    count, length = 0, 0.0
    for index, elbow in enumerate(request.elbows or ()):
        tangent = sheet.settle(f"#/elbows/{index}/tangent", elbow.tangent, TANGENT).si
        count += elbow.count
        length += elbow.count * engineering.developed_length(elbow.radius.si, elbow.angle.si, tangent)
    if over(length, request.length.si):
        raise UnanswerableError(
            Fault("#/elbows", "longer_than_the_run", "The elbows together are longer than the run they lie in.")
        )
    return count, length


def compute(request: JointsRequest, sheet: Worksheet) -> JointsResult:
    """Count sticks, joints and elbows, and what goes with them."""
    tell, ducts = sheet.tell, request.duct_count
    row = find_row(request.conduit, sheet.within("conduit"))
    if request.spare_duct_count is not None and request.spare_duct_count > ducts:
        raise UnanswerableError(
            Fault("#/spare_duct_count", "more_than_the_ducts", f"There are {ducts} ducts.", {"maximum": ducts})
        )
    stick = sheet.settle("#/stick_length", request.stick_length, STICK_LENGTH)
    loss = sheet.settle("#/bell_loss", request.bell_loss, BELL_LOSS)
    if loss.si >= stick.si / 2:
        raise UnanswerableError(
            Fault("#/bell_loss/value", "more_than_half_a_stick", f"A bell cannot take half of a stick of {stick}.")
        )
    belled = sheet.settle("#/ends", request.ends, ENDS) is DuctEnds.BELLED
    elbows, elbow_length = _elbows(request, sheet)
    straight = request.length.si - elbow_length
    each = engineering.sticks(straight, stick.si - loss.si)
    shared = sheet.settle("#/offcuts_shared", request.offcuts_shared, OFFCUTS_SHARED)
    sticks = engineering.sticks(straight * ducts, stick.si - loss.si) if shared else each * ducts
    sockets = (engineering.sockets(each, elbows, belled=belled) + 2) * ducts
    couplings = 0 if belled else engineering.couplings(each, elbows) * ducts
    sheet.show("sticks", "(L - elbows) / (stick - bell loss), rounded up", f"{straight:.6g} m a duct", each)
    yields = _YIELDS.get(request.conduit.trade_size)
    if yields is None:
        raise UnanswerableError(
            Fault("#/conduit/trade_size", "no_cement_yield", "No cement yield is on file for this size.", list(_YIELDS))
        )
    sheet.cite(yields.source, "plastics-technical-manual")
    quarts = sockets / yields.quart
    temperature = sheet.settle("#/temperature", request.temperature, TEMPERATURE)
    set_time = _set_time(request.conduit.trade_size, temperature, sheet)
    tail = sheet.settle("#/cord_tail", request.cord_tail, CORD_TAIL).si
    clearance = sheet.settle("#/mandrel_clearance", request.mandrel_clearance, MANDREL_CLEARANCE)
    bore = row.inside_diameter
    if bore is not None and clearance.si >= bore.si:
        raise UnanswerableError(
            Fault("#/mandrel_clearance/value", "no_mandrel_left", f"The bore is {bore}: leave room for a mandrel.")
        )
    _reminders(yields.quart, sheet)
    return JointsResult(
        stick_count=sticks,
        straight_length=tell.distance(straight),
        joint_count=sockets,
        coupling_count=couplings,
        elbow_count=elbows * ducts,
        elbow_length=tell.distance(elbow_length),
        end_bell_count=2 * ducts,
        plug_count=2 * (request.spare_duct_count or 0),
        pull_cord_length=tell.distance((request.length.si + 2 * tail) * ducts),
        cement_volume=tell.liquid_volume(quarts * QUART.si),
        cement_quart_count=round_up(quarts),
        set_time=answers.Duration(set_time.value, set_time.unit.value),
        mandrel_diameter=UNSET if bore is None else tell.size(bore.si - clearance.si),
    )


def _reminders(per_quart: int, sheet: Worksheet) -> None:
    sheet.find(
        Severity.NOTE,
        "cement_spread",
        f"A quart makes {per_quart} joints by the conduit table; plumbing tables, for deeper sockets coated twice, "
        "give as few as two fifths of that. Primer only where it is specified.",
        citation("conduit-catalogue-cement"),
    )
    sheet.find(
        Severity.NOTE,
        "make_the_joint",
        "Cut square, deburr inside and out, clean, cement the spigot, seat it with a quarter turn and leave it alone "
        "for the set time, half as long again in damp air. Stagger joints of neighboring ducts at least 6 in.",
        standing_of(TABLES["set_times"][0]),
    )
    sheet.find(
        Severity.CAUTION,
        "solvent_vapor",
        "Solvent cement gives off flammable, harmful vapor: ventilate the trench, keep flames away, wear gloves and "
        "eye protection.",
        "common practice, no source",
    )


OPERATION = Operation(
    name="joints",
    operation_id="calculate_joints",
    summary="Lengths, joints and elbows",
    description="Counts sticks, joints, couplings, elbows, end bells, plugs and pull cord of ducts, the solvent cement "
    "they take and how long a joint must set.",
    request=JointsRequest,
    result=JointsResult,
    compute=compute,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
        "length": {"value": 323, "unit": "ft"},
        "duct_count": 9,
        "stick_length": {"value": 20, "unit": "ft"},
        "bell_loss": {"value": 0, "unit": "in"},
        "ends": "belled",
        "elbows": [
            {
                "radius": {"value": 36, "unit": "in"},
                "angle": {"value": 90, "unit": "deg"},
                "tangent": {"value": 6, "unit": "in"},
                "count": 2,
            }
        ],
        "offcuts_shared": False,
        "spare_duct_count": 2,
        "cord_tail": {"value": 10, "unit": "ft"},
        "mandrel_clearance": {"value": 0.25, "unit": "in"},
        "temperature": {"value": 70, "unit": "degF"},
    },
)
