"""POST /v1/joints: sticks, joints, elbows and what goes with them."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import joints as engineering
from ductrun.engineering.rounding import over, round_up, under
from ductrun.kit.backing import PRACTICE, backing_of, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, flag, quantity
from ductrun.kit.forms import Clearance, ConduitTemperature, Form, Interval, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.choices import DuctEnds
from ductrun.subjects.conduit.elbows import DuctElbow, Elbows, elbows_of
from ductrun.subjects.conduit.joints_told import JointsResult, tell
from ductrun.subjects.parts.conduit import ListedConduit, find_row
from ductrun.tables import TABLES, TRADE_SIZES
from ductrun.tables.ground_rows import CementYield, SetTime
from ductrun.tables.rows import Conduit as ConduitRow
from ductrun.units import Duration, Length, LengthUnit, Temperature, TemperatureUnit, Volume

STICK_LENGTH = quantity("joints.stick_length", Length)
BELL_LOSS = quantity("joints.bell_loss", Length)
ENDS = choice("joints.ends", DuctEnds)
OFFCUTS_SHARED = flag("joints.offcuts_shared")
CORD_TAIL = quantity("joints.cord_tail", Length)
MANDREL_CLEARANCE = quantity("joints.mandrel_clearance", Length)
TEMPERATURE = quantity("joints.temperature", Temperature)
STAGGER = quantity("joints.stagger", Length)
_YIELDS: dict[str, CementYield] = {row.trade_size: row for row in TABLES["cement_yields"]}
_SET_TIMES: dict[str, list[tuple[SetTime, Duration]]] = {size: [] for size in _YIELDS}
for _row in TABLES["set_times"]:
    for _size in TRADE_SIZES[TRADE_SIZES.index(_row.trade_size_from) : TRADE_SIZES.index(_row.trade_size_to) + 1]:
        _SET_TIMES[_size].append((_row, Duration.parse(_row.minutes, "min")))
QUART = Volume.parse(1, "qt_us")
_MAKING = (
    "Cut square, deburr inside and out, clean, cement the spigot, seat it with a quarter turn and leave it alone for "
    f"the set time, half as long again in damp air. Stagger joints of neighboring ducts at least {STAGGER.value}."
)
_MAKING_BACKING = backing_of(TABLES["set_times"][0]).beside(STAGGER.backing.of("stagger"))


class Joining(Form):
    """How ducts are joined, and what is left in them."""

    stick_length: Omissible[Interval] = Field(
        default=None,
        description="Length a stick is sold by.",
        examples=[{"value": 20, "unit": "ft"}],
        json_schema_extra=STICK_LENGTH.stated,
    )
    bell_loss: Omissible[Clearance] = Field(
        default=None,
        description="What a joint takes of a stick's length.",
        examples=[{"value": 4, "unit": "in"}],
        json_schema_extra=BELL_LOSS.stated,
    )
    ends: Omissible[DuctEnds] = Field(
        default=None,
        description="Bells or plain ends.",
        examples=["belled"],
        json_schema_extra=ENDS.stated,
    )
    offcuts_shared: Omissible[bool] = Field(
        default=None,
        description="Whether the offcut of one duct starts the next.",
        examples=[False],
        json_schema_extra=OFFCUTS_SHARED.stated,
    )
    spare_duct_count: Omissible[Annotated[int, Field(ge=0, le=1_200)]] = Field(
        default=None, description="Ducts that stay empty, plugged at both ends.", examples=[2]
    )
    cord_tail: Omissible[Clearance] = Field(
        default=None,
        description="Pull cord left at each end of a duct.",
        examples=[{"value": 10, "unit": "ft"}],
        json_schema_extra=CORD_TAIL.stated,
    )
    mandrel_clearance: Omissible[Clearance] = Field(
        default=None,
        description="How much smaller than the bore the mandrel is.",
        examples=[{"value": 0.25, "unit": "in"}],
        json_schema_extra=MANDREL_CLEARANCE.stated,
    )
    temperature: Omissible[ConduitTemperature] = Field(
        default=None,
        description="Temperature when joining.",
        examples=[{"value": 70, "unit": "degF"}],
        json_schema_extra=TEMPERATURE.stated,
    )


class JointsRequest(Joining):
    """Ducts along a run."""

    conduit: ListedConduit = Field(description="The duct.")
    length: RunLength = Field(
        description="Length of one duct along its center line, elbows included.",
        examples=[{"value": 323, "unit": "ft"}],
    )
    duct_count: Annotated[int, Field(ge=1, le=1_200)] = Field(description="Ducts of the run.", examples=[9])
    elbows: Omissible[Annotated[list[DuctElbow], Field(max_length=50)]] = Field(
        default=None, description="Elbows and sweeps of each duct."
    )


class Ducts(NamedTuple):
    """So many ducts of a row of the tables, each of one length [m] with its elbows; `sheet` is that of the conduit."""

    row: ConduitRow
    duct_count: int
    length: float
    elbows: Elbows
    sheet: Worksheet


class Joined(NamedTuple):
    """What ducts take to be joined, proved and corded: counts of all ducts, lengths and diameter [m], cement [m3]."""

    ducts: Ducts
    stick_length: Length
    bell_loss: Length
    ends: DuctEnds
    temperature: Temperature
    straight_length: float
    stick_count: int
    joint_count: int
    coupling_count: int
    end_bell_count: int
    plug_count: int
    pull_cord_length: float
    cement_volume: float
    cement_quart_count: int
    set_time: Duration
    mandrel_diameter: float | None


def join(given: Joining, ducts: Ducts, sheet: Worksheet) -> Joined:
    """Count the sticks and joints of ducts, and what goes with them."""
    spares = _spares(given, ducts, sheet)
    stick, loss = _stick(given, sheet)
    ends = sheet.settle("ends", given.ends, ENDS)
    straight, lay = _straight(ducts), stick.si - loss.si
    each, bends = engineering.sticks(straight, lay), ducts.elbows.elbow_count
    belled = ends is DuctEnds.BELLED
    shared = sheet.settle("offcuts_shared", given.offcuts_shared, OFFCUTS_SHARED)
    joints = (engineering.sockets(each, bends, belled=belled) + 2) * ducts.duct_count
    if sheet.working is not None:
        sheet.show("sticks", "(L - elbows) / (stick - bell loss), rounded up", f"{straight:.6g} m a duct", each)
    yields = _yields(ducts)
    quarts = joints / yields.quart
    temperature = sheet.settle("temperature", given.temperature, TEMPERATURE)
    set_time = _set_time(ducts.row.trade_size, temperature, sheet)
    tail = sheet.settle("cord_tail", given.cord_tail, CORD_TAIL).si
    mandrel = _mandrel(given, ducts.row, sheet)
    _reminders(yields.quart, ducts.sheet)
    return Joined(
        ducts,
        stick,
        loss,
        ends,
        temperature,
        straight,
        stick_count=engineering.sticks(straight * ducts.duct_count, lay) if shared else each * ducts.duct_count,
        joint_count=joints,
        coupling_count=0 if belled else engineering.couplings(each, bends) * ducts.duct_count,
        end_bell_count=2 * ducts.duct_count,
        plug_count=2 * spares,
        pull_cord_length=(ducts.length + 2 * tail) * ducts.duct_count,
        cement_volume=quarts * QUART.si,
        cement_quart_count=round_up(quarts),
        set_time=set_time,
        mandrel_diameter=mandrel,
    )


def _spares(given: Joining, ducts: Ducts, sheet: Worksheet) -> int:
    """Give how many ducts stay empty; refuses more than there are."""
    spares = given.spare_duct_count or 0
    if spares > ducts.duct_count:
        raise UnanswerableError(
            sheet.fault(
                "spare_duct_count",
                "more_than_the_ducts",
                f"There are {ducts.duct_count} ducts.",
                maximum=ducts.duct_count,
            )
        )
    return spares


def _straight(ducts: Ducts) -> float:
    """Give the straight duct in one duct [m]; refuses elbows that take more than the run."""
    elbows = ducts.elbows
    if over(elbows.length, ducts.length):
        raise UnanswerableError(
            elbows.sheet.fault("", "longer_than_the_run", "The elbows together are longer than the run they lie in.")
        )
    return ducts.length - elbows.length


def _stick(given: Joining, sheet: Worksheet) -> tuple[Length, Length]:
    """Give the length of a stick and what a joint takes of it."""
    stick = sheet.settle("stick_length", given.stick_length, STICK_LENGTH)
    loss = sheet.settle("bell_loss", given.bell_loss, BELL_LOSS)
    if loss.si >= stick.si / 2:
        raise UnanswerableError(
            sheet.fault("bell_loss/value", "more_than_half_a_stick", f"A bell cannot take half of a stick of {stick}.")
        )
    return stick, loss


def _yields(ducts: Ducts) -> CementYield:
    yields, sheet = _YIELDS.get(ducts.row.trade_size), ducts.sheet
    if yields is None:
        raise UnanswerableError(
            sheet.fault("trade_size", "no_cement_yield", "No cement yield is on file for this size.", list(_YIELDS))
        )
    sheet.cite(yields.source)
    return yields


def _set_time(size: str, temperature: Temperature, sheet: Worksheet) -> Duration:
    """Give the printed set time; refuses a temperature below or above the table."""
    degrees = temperature.in_unit(TemperatureUnit.DEG_F)
    for row, minutes in _SET_TIMES[size]:
        if not under(degrees, row.lowest_degf) and not over(degrees, row.highest_degf):
            sheet.cite(row.source)
            return minutes
    lowest = min(row.lowest_degf for row in TABLES["set_times"])
    highest = max(row.highest_degf for row in TABLES["set_times"])
    raise UnanswerableError(
        sheet.fault(
            "temperature/value",
            "no_set_time",
            f"Set times are on file from {lowest:g} to {highest:g} degF: ask the maker of the cement for others.",
            minimum=Temperature(lowest, TemperatureUnit.DEG_F),
            maximum=Temperature(highest, TemperatureUnit.DEG_F),
        )
    )


def _mandrel(given: Joining, row: ConduitRow, sheet: Worksheet) -> float | None:
    """Give the diameter of the mandrel [m], None where the bore is not on file."""
    clearance = sheet.settle("mandrel_clearance", given.mandrel_clearance, MANDREL_CLEARANCE)
    if row.inside_diameter_in is None:
        return None
    bore = float(row.inside_diameter_in) * LengthUnit.INCH.scale
    if clearance.si >= bore:
        fault = f"The bore is {row.inside_diameter}: leave room for a mandrel."
        raise UnanswerableError(sheet.fault("mandrel_clearance/value", "no_mandrel_left", fault))
    return bore - clearance.si


def _reminders(per_quart: int, sheet: Worksheet) -> None:
    sheet.find(
        Severity.NOTE,
        "cement_spread",
        f"A quart makes {per_quart} joints by the conduit table; plumbing tables, for deeper sockets coated twice, "
        "give as few as two fifths of that. Primer only where it is specified.",
        published("conduit-catalogue-cement"),
        member="",
    )
    sheet.find(Severity.NOTE, "make_the_joint", _MAKING, _MAKING_BACKING, member="")
    sheet.cite("trade-practice")
    sheet.caution(
        "solvent_vapor",
        "Solvent cement gives off flammable, harmful vapor: ventilate the trench, keep flames away, wear gloves and "
        "eye protection.",
        PRACTICE,
    )


def assess(request: JointsRequest, sheet: Worksheet) -> Joined:
    """Join the ducts of a request."""
    conduit = sheet.within("conduit")
    faults = Gathering()
    with faults:
        row = find_row(request.conduit, conduit)
    with faults:
        elbows = elbows_of(request.elbows or (), request.conduit, sheet.within("elbows"))
    faults.stop()
    return join(request, Ducts(row, request.duct_count, request.length.si, elbows, conduit), sheet)


OPERATION = Operation(
    name="joints",
    operation_id="calculate_joints",
    summary="Lengths, joints and elbows",
    description="Counts sticks, joints, couplings, elbows, end bells, plugs and pull cord of ducts, the solvent cement "
    "they take and how long a joint must set.",
    request=JointsRequest,
    result=JointsResult,
    assess=assess,
    tell=tell,
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
