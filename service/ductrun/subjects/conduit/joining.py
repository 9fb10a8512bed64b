"""Ducts joined: sticks, joints and couplings, the cement they take and how long they must set."""

from __future__ import annotations

from typing import NamedTuple

from pydantic import Field

from ductrun.engineering import joints as engineering
from ductrun.engineering.rounding import over
from ductrun.kit.defaults import by_rule, choice, flag, number, quantity
from ductrun.kit.forms import Clearance, ConduitTemperature, Form, Interval, JointCement, Omissible, Percent
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.conduit.cement import Cement, cement_of, find_size, size_by_diameter
from ductrun.subjects.conduit.choices import DuctEnds, JoiningMethod, RunEnd
from ductrun.subjects.conduit.elbows import Elbows
from ductrun.subjects.conduit.making import on_lengths, remind
from ductrun.subjects.parts.choices import ConduitType
from ductrun.units import Length, Temperature

STICK_LENGTH = quantity("joints.stick_length", Length)
SHORT_STICK_LENGTH = quantity("joints.short_stick_length", Length)
WASTE_PERCENT = number("joints.waste_percent")
END = choice("joints.end", RunEnd)
METAL_END = choice("joints.metal_end", RunEnd)
BELL_LOSS = quantity("joints.bell_loss", Length)
ENDS = choice("joints.ends", DuctEnds)
OFFCUTS_SHARED = flag("joints.offcuts_shared")
CORD_TAIL = quantity("joints.cord_tail", Length)
MANDREL_CLEARANCE = quantity("joints.mandrel_clearance", Length)
TEMPERATURE = quantity("joints.temperature", Temperature)
_METHODS: dict[ConduitType, JoiningMethod] = {
    **{kind: JoiningMethod.CEMENTED for kind in ConduitType if kind.startswith("pvc_")},
    ConduitType.HDPE_SCHEDULE_40: JoiningMethod.FUSED,
    ConduitType.RMC: JoiningMethod.THREADED,
    ConduitType.IMC: JoiningMethod.THREADED,
    ConduitType.EMT: JoiningMethod.COUPLED,
}
_BELLS = {JoiningMethod.CEMENTED}


class Joining(Form):
    """How ducts are joined, and what is left in them."""

    stick_length: Omissible[Interval] = Field(
        default=None,
        description="Length a stick is sold by.",
        examples=[{"value": 20, "unit": "ft"}],
        json_schema_extra=by_rule(f"{STICK_LENGTH.value}; of steel {SHORT_STICK_LENGTH.value}"),
    )
    bell_loss: Omissible[Clearance] = Field(
        default=None,
        description="What a joint takes of a stick's length.",
        examples=[{"value": 4, "unit": "in"}],
        json_schema_extra=BELL_LOSS.stated,
    )
    waste_percent: Omissible[Percent] = Field(
        default=None,
        description="Sticks to order beyond those laid.",
        examples=[3],
        json_schema_extra=WASTE_PERCENT.stated,
    )
    cement_per_joint: Omissible[JointCement] = Field(
        default=None,
        description="Solvent cement that a cemented joint takes.",
        examples=[{"value": 0.02, "unit": "qt_us"}],
        json_schema_extra=by_rule("what the deeper sockets of pipe take, more than by the conduit table"),
    )
    ends: Omissible[DuctEnds] = Field(
        default=None,
        description="Bells or plain ends of the sticks; only what is cemented has bells.",
        examples=["belled"],
        json_schema_extra=ENDS.stated,
    )
    offcuts_shared: Omissible[bool] = Field(
        default=None,
        description="Whether the offcut of one duct starts the next.",
        examples=[False],
        json_schema_extra=OFFCUTS_SHARED.stated,
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


class Ducts(NamedTuple):
    """So many ducts of one trade size and bore [m], as far as those are known, each of one length [m] with its elbows,
    how they are joined and how they finish at either end; `spare_count` of them stay empty. `sheet` is that of the
    conduit, `outside` its diameter [m] if it is known.
    """

    size: str | None
    bore: float | None
    method: JoiningMethod
    duct_count: int
    length: float
    elbows: Elbows
    finishes: tuple[RunEnd, RunEnd]
    spare_count: int
    sheet: Worksheet
    outside: float | None = None


class Joined(NamedTuple):
    """What ducts take to be joined, proved and corded: counts of all ducts, lengths and diameter [m], cement [m3].

    `order_coupling_count` leaves out the couplings that come on lengths of threaded conduit. Cement and set time are
    those of cemented joints alone.
    """

    ducts: Ducts
    stick_length: Length
    straight_length: float
    stick_count: int
    waste_percent: float
    joint_count: int
    coupling_count: int
    order_coupling_count: int
    plug_count: int
    pull_cord_length: float
    cement: Cement | None
    mandrel_diameter: float | None

    def finish_count(self, finish: RunEnd) -> int:
        """Count the ends of all ducts that finish so."""
        return self.ducts.finishes.count(finish) * self.ducts.duct_count


def known_method(conduit_type: ConduitType | None) -> JoiningMethod | None:
    """Say how a type of conduit is joined; None where that is not on file."""
    return None if conduit_type is None else _METHODS.get(conduit_type)


def method_of(conduit_type: ConduitType, sheet: Worksheet) -> JoiningMethod:
    """Say how a type of conduit is joined; refuses one that does not come in lengths, on the sheet of the conduit."""
    method = _METHODS.get(conduit_type)
    if method is None:
        raise UnanswerableError(
            sheet.fault(
                "type",
                "not_in_lengths",
                f"{conduit_type} comes in coils, or its joints are not on file: count them by its maker's list.",
                [kind.value for kind in _METHODS],
            )
        )
    return method


def finishes_of(
    given: Joining, start: RunEnd | None, end: RunEnd | None, method: JoiningMethod, sheet: Worksheet
) -> tuple[RunEnd, RunEnd]:
    """Settle how ducts finish at both ends; refuses every bell on what is not cemented, those of its sticks too."""
    if method in _BELLS:
        return sheet.settle("start", start, END), sheet.settle("end", end, END)
    others = [one.value for one in RunEnd if one is not RunEnd.END_BELL]
    words = f"An end bell is cemented on; this conduit is {method}. Give how it finishes."
    faults = [
        sheet.fault(member, "no_bell_fits", words, others)
        for member, one in (("start", start), ("end", end))
        if one is RunEnd.END_BELL
    ]
    if given.ends is DuctEnds.BELLED:
        faults.append(_no_bells(method, sheet))
    if faults:
        raise UnanswerableError(*faults)
    return sheet.settle("start", start, METAL_END), sheet.settle("end", end, METAL_END)


def refuse_cement(given: Joining, method: JoiningMethod, sheet: Worksheet) -> None:
    """Refuse what only cement takes of a method that takes none."""
    words = f"Only what is cemented takes it; this conduit is {method}. Leave it out."
    faults = [
        sheet.fault(member, "contradiction", words)
        for member, one in (("cement_per_joint", given.cement_per_joint), ("temperature", given.temperature))
        if one is not None
    ]
    if faults:
        raise UnanswerableError(*faults)


def join(given: Joining, ducts: Ducts, sheet: Worksheet) -> Joined:
    """Count the sticks and joints of ducts, and what goes with them."""
    stick, lay = _lay(given, ducts, sheet)
    belled = _belled(given, ducts.method, sheet)
    straight = _straight(ducts)
    each, bends, count = engineering.sticks(straight, lay), ducts.elbows.elbow_count, ducts.duct_count
    shared = sheet.settle("offcuts_shared", given.offcuts_shared, OFFCUTS_SHARED)
    cemented = ducts.method is JoiningMethod.CEMENTED
    finished = sum(end is not RunEnd.NONE for end in ducts.finishes)
    between = engineering.couplings(each, bends)
    sockets = engineering.sockets(each, bends, belled=belled) if cemented else between
    coupled = not belled and ducts.method is not JoiningMethod.FUSED
    at_elbows = ducts.finishes.count(RunEnd.ELBOW) if coupled else 0  # each takes a coupling, with a socket for it
    joints = (sockets + finished + (at_elbows if cemented else 0)) * count
    if sheet.working is not None:
        sheet.show("sticks", "(L - elbows) / (stick - bell loss), rounded up", f"{straight:.6g} m a duct", each)
    sticks = engineering.sticks(straight * count, lay) if shared else each * count
    couplings = ((between if coupled else 0) + at_elbows + ducts.finishes.count(RunEnd.COUPLING)) * count
    if not cemented:
        remind(ducts.method, sticks, couplings, ducts.sheet)
    tail = sheet.settle("cord_tail", given.cord_tail, CORD_TAIL).si
    mandrel = _mandrel(given, ducts.bore, sheet)
    return Joined(
        ducts,
        stick,
        straight,
        stick_count=sticks,
        waste_percent=sheet.settle("waste_percent", given.waste_percent, WASTE_PERCENT),
        joint_count=joints,
        coupling_count=couplings,
        order_coupling_count=couplings - on_lengths(ducts.method, sticks, couplings),
        plug_count=2 * ducts.spare_count,
        pull_cord_length=(ducts.length + 2 * tail) * count,
        cement=_cement(given, joints, ducts, sheet) if cemented else None,
        mandrel_diameter=mandrel,
    )


def _belled(given: Joining, method: JoiningMethod, sheet: Worksheet) -> bool:
    """Say whether the sticks have bells; refuses bells on what is not cemented."""
    if method in _BELLS:
        return sheet.settle("ends", given.ends, ENDS) is DuctEnds.BELLED
    if given.ends is DuctEnds.BELLED:
        raise UnanswerableError(_no_bells(method, sheet))
    return False


def _no_bells(method: JoiningMethod, sheet: Worksheet) -> Fault:
    words = f"Only what is cemented has bells; this conduit is {method}."
    return sheet.fault("ends", "no_bell_fits", words, [DuctEnds.PLAIN.value])


def _cement(given: Joining, joints: int, ducts: Ducts, sheet: Worksheet) -> Cement | None:
    size = ducts.size
    if size is None:
        size = None if ducts.bore is None else size_by_diameter(ducts.outside, ducts.bore)
        find_size(size, ducts.sheet)
    if size is None:
        return None
    temperature = sheet.settle("temperature", given.temperature, TEMPERATURE)
    return cement_of(joints, size, given.cement_per_joint, temperature, sheet, ducts.sheet)


def _straight(ducts: Ducts) -> float:
    """Give the straight duct in one duct [m]; refuses elbows that take more than the run."""
    elbows = ducts.elbows
    if over(elbows.length, ducts.length):
        raise UnanswerableError(
            elbows.sheet.fault("", "longer_than_the_run", "The elbows together are longer than the run they lie in.")
        )
    return ducts.length - elbows.length


def _lay(given: Joining, ducts: Ducts, sheet: Worksheet) -> tuple[Length, float]:
    """Give the length of a stick, and what it lays once it is joined [m]."""
    steel = ducts.method in (JoiningMethod.THREADED, JoiningMethod.COUPLED)
    stick = sheet.settle("stick_length", given.stick_length, SHORT_STICK_LENGTH if steel else STICK_LENGTH)
    loss = sheet.settle("bell_loss", given.bell_loss, BELL_LOSS)
    if loss.si >= stick.si / 2:
        raise UnanswerableError(
            sheet.fault(
                "bell_loss/value",
                "more_than_half_a_stick",
                f"A bell cannot take half of a stick of {text_of(sheet.tell.given(stick))}.",
            )
        )
    return stick, stick.si - loss.si


def _mandrel(given: Joining, bore: float | None, sheet: Worksheet) -> float | None:
    """Give the diameter of the mandrel [m], None where the bore is not on file."""
    clearance = sheet.settle("mandrel_clearance", given.mandrel_clearance, MANDREL_CLEARANCE)
    if bore is None:
        return None
    if clearance.si >= bore:
        fault = f"The bore is {text_of(sheet.tell.size(bore))}: leave room for a mandrel."
        raise UnanswerableError(sheet.fault("mandrel_clearance/value", "no_mandrel_left", fault))
    return bore - clearance.si
