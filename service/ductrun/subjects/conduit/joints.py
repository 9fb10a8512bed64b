"""POST /v1/joints: sticks, joints, elbows and what goes with them."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import round_up
from ductrun.kit import answers
from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.conduit.elbows import DuctElbow, elbows_of
from ductrun.subjects.conduit.joining import Ducts, Joined, Joining, finishes_of, join, method_of, refuse_cement
from ductrun.subjects.parts.conduit import ListedConduit, find_row
from ductrun.units import LengthUnit

AT_THE_END = by_rule("end_bell of what is cemented, none of metal and of what is fused")


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
    spare_duct_count: Omissible[Annotated[int, Field(ge=0, le=1_200)]] = Field(
        default=None, description="Ducts that stay empty, plugged at both ends.", examples=[2]
    )
    start: Omissible[RunEnd] = Field(
        default=None,
        description="How each duct finishes at the start: with an end bell, a coupling or an adapter that is ordered "
        "here, at an elbow of the run beside it with the coupling that plain ends take, in a conduit body, or with "
        "nothing, where the run beside it counts the joint.",
        examples=["end_bell"],
        json_schema_extra=AT_THE_END,
    )
    end: Omissible[RunEnd] = Field(
        default=None,
        description="How it finishes at the end.",
        examples=["none"],
        json_schema_extra=AT_THE_END,
    )


class JointsResult(Struct, frozen=True, gc=False):
    """What to order and how long to wait."""

    method: Annotated[JoiningMethod, Meta(description="How lengths of this conduit are joined.")]
    stick_count: Annotated[int, Meta(description="Sticks of all ducts.")]
    order_stick_count: Annotated[int, Meta(description="Sticks of all ducts with waste, in whole sticks.")]
    straight_length: Annotated[answers.Length, Meta(description="Straight duct in one duct, elbows taken out.")]
    joint_count: Annotated[
        int, Meta(description="Joints of all ducts with those of their ends; of cemented ones each socket.")
    ]
    coupling_count: Annotated[
        int, Meta(description="Couplings, with those at elbows of a run beside; none with bells.")
    ]
    order_coupling_count: Annotated[
        int,
        Meta(description="Couplings to order: without those that come on lengths of threaded conduit, one on each."),
    ]
    elbow_count: Annotated[int, Meta(description="Elbows and sweeps of all ducts.")]
    elbow_length: Annotated[answers.Length, Meta(description="Developed length of the elbows of one duct.")]
    end_bell_count: Annotated[int, Meta(description="End bells.")]
    adapter_count: Annotated[int, Meta(description="Terminal adapters.")]
    plug_count: Annotated[int, Meta(description="Plugs for spare ducts, two each.")]
    pull_cord_length: Annotated[answers.Length, Meta(description="Cord through every duct, tails included.")]
    cement_volume: Annotated[answers.Volume | UnsetType, Meta(description="Solvent cement of cemented joints.")] = UNSET
    cement_order_volume: Annotated[
        answers.Volume | UnsetType, Meta(description="Solvent cement to order, in whole US quarts.")
    ] = UNSET
    set_time: Annotated[
        answers.Duration | UnsetType,
        Meta(description="Initial set of a cemented joint, before it is handled."),
    ] = UNSET
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="Mandrel for the test, if the bore is known.")
    ] = UNSET


def assess(request: JointsRequest, sheet: Worksheet) -> Joined:
    """Join the ducts of a request."""
    conduit = sheet.within("conduit")
    faults = Gathering()
    with faults:
        row = find_row(request.conduit, conduit)
        method = method_of(request.conduit.type, conduit)
        if method is not JoiningMethod.CEMENTED:
            with faults:
                refuse_cement(request, method, sheet)
        finishes = finishes_of(request, request.start, request.end, method, sheet)
    with faults:
        elbows = elbows_of(request.elbows or (), request.conduit, sheet.within("elbows"))
    with faults:
        spares = _spares(request, sheet)
    faults.stop()
    bore = None if row.inside_diameter_in is None else float(row.inside_diameter_in) * LengthUnit.INCH.scale
    count, length = request.duct_count, request.length.si
    ducts = Ducts(row.trade_size, bore, method, count, length, elbows, finishes, spares, conduit)
    return join(request, ducts, sheet)


def _spares(request: JointsRequest, sheet: Worksheet) -> int:
    """Give how many ducts stay empty; refuses more than there are."""
    spares = request.spare_duct_count or 0
    if spares > request.duct_count:
        raise UnanswerableError(
            sheet.fault(
                "spare_duct_count",
                "more_than_the_ducts",
                f"There are {request.duct_count} ducts.",
                maximum=request.duct_count,
            )
        )
    return spares


def tell(joined: Joined, telling: Telling) -> JointsResult:
    """Tell what to order and how long to wait."""
    ducts, cement, mandrel = joined.ducts, joined.cement, joined.mandrel_diameter
    return JointsResult(
        method=ducts.method,
        stick_count=joined.stick_count,
        order_stick_count=round_up(joined.stick_count * (1 + joined.waste_percent / 100)),
        straight_length=telling.distance(joined.straight_length),
        joint_count=joined.joint_count,
        coupling_count=joined.coupling_count,
        order_coupling_count=joined.order_coupling_count,
        elbow_count=ducts.elbows.elbow_count * ducts.duct_count,
        elbow_length=telling.distance(ducts.elbows.length),
        end_bell_count=joined.finish_count(RunEnd.END_BELL),
        adapter_count=joined.finish_count(RunEnd.ADAPTER),
        plug_count=joined.plug_count,
        pull_cord_length=telling.distance(joined.pull_cord_length),
        cement_volume=UNSET if cement is None else telling.liquid_volume(cement.volume),
        cement_order_volume=UNSET if cement is None else telling.liquid_volume(cement.order_volume),
        set_time=UNSET if cement is None else answers.Duration(cement.set_time.value, cement.set_time.unit),
        mandrel_diameter=UNSET if mandrel is None else telling.size(mandrel),
    )


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
        "start": "end_bell",
        "end": "end_bell",
        "waste_percent": 3,
        "cement_per_joint": {"value": 0.02, "unit": "qt_us"},
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
