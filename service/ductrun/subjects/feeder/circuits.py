"""The loaded circuits of a bank: what each carries, in which ducts, and how warm its conductors may be."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering.bank import Bank
from ductrun.engineering.rounding import over
from ductrun.kit.backing import backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import Between, Form, Omissible
from ductrun.kit.texts import Name
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.feeder.choices import CircuitSystem, ShieldGrounding, TerminalRating
from ductrun.subjects.feeder.loaded_cable import MARKINGS, LoadedCable, loaded_cable
from ductrun.subjects.parts.cables import CableLine, PulledLines
from ductrun.subjects.parts.choices import Insulation
from ductrun.subjects.parts.duct_names import DuctName, ducts_of
from ductrun.units import Current, Temperature, Voltage

SYSTEM = choice("feeder.system", CircuitSystem)
VOLTAGE = quantity("feeder.voltage", Voltage)
TERMINAL_RATING = choice("feeder.terminal_rating", TerminalRating)
LOAD_FACTOR = number("feeder.load_factor_percent")
SHIELD_GROUNDING = choice("feeder.shield_grounding", ShieldGrounding)
TEMPERATURE_LIMIT = quantity("feeder.temperature_limit", Temperature)
DRY_INSULATION = quantity("feeder.dry_insulation_temperature", Temperature)
RATED = {
    marking: Default(Temperature.parse(row.wet_degc, "degC"), backing_of(row))
    for marking, row in MARKINGS.items()
    if row.wet_degc is not None
}
IN_A_SET = {CircuitSystem.THREE_PHASE: 3, CircuitSystem.SINGLE_PHASE: 2, CircuitSystem.DIRECT_CURRENT: 2}
MOST_LOADED = 48  # ducts: every one warms every other

CircuitCurrent = Annotated[Current, Between(Current.parse(0.001, "A"), Current.parse(20, "kA"))]
DeviceRating = Annotated[Current, Between(Current.parse(1, "A"), Current.parse(6, "kA"))]
CircuitVoltage = Annotated[Voltage, Between(Voltage.parse(1, "V"), Voltage.parse(500, "kV"))]
ConductorLimit = Annotated[Temperature, Between(Temperature.parse(0, "degC"), Temperature.parse(250, "degC"))]


class CableLoading(Form):
    """How a circuit loads its cables, whatever its voltage."""

    system: Omissible[CircuitSystem] = Field(
        default=None,
        description="Kind of circuit: three conductors make a set, or two.",
        examples=["three_phase"],
        json_schema_extra=SYSTEM.stated,
    )
    loaded_conductor_count: Omissible[Annotated[int, Field(ge=1, le=100)]] = Field(
        default=None,
        description="Conductors in each duct that carry the current, neutrals that count included; other neutrals and "
        "grounds carry none here.",
        examples=[3],
        json_schema_extra=by_rule("all of the largest size in the duct"),
    )
    loaded_neutral_count: Omissible[Annotated[int, Field(ge=0, le=50)]] = Field(
        default=None,
        description="Of the loaded conductors in each duct, those that are neutrals, where loads have harmonics: each "
        "is as large as the phases, and is taken to carry as much.",
        examples=[1],
        json_schema_extra=by_rule("0: neutrals carry no heat"),
    )
    current: Omissible[CircuitCurrent] = Field(
        default=None,
        description="Current of the circuit, all its sets together; without it the answer says what it may be.",
        examples=[{"value": 340, "unit": "A"}],
    )
    load_factor_percent: Omissible[Annotated[float, Field(ge=1, le=100)]] = Field(
        default=None,
        description="Mean load of a day in percent of its peak.",
        examples=[100],
        json_schema_extra=LOAD_FACTOR.stated,
    )
    temperature_limit: Omissible[ConductorLimit] = Field(
        default=None,
        description="Highest temperature of the conductor.",
        examples=[{"value": 75, "unit": "degC"}],
        json_schema_extra=by_rule(
            f"that of the marking in wet places; {DRY_INSULATION.value} of one for dry places, "
            f"{TEMPERATURE_LIMIT.value} of a cable without a marking"
        ),
    )
    shield_grounding: Omissible[ShieldGrounding] = Field(
        default=None,
        description="Where the shields are grounded, if the cables have any.",
        examples=["both_ends"],
        json_schema_extra=SHIELD_GROUNDING.stated,
    )
    overcurrent_device: Omissible[DeviceRating] = Field(
        default=None,
        description="Rating of the overcurrent device ahead, for the least grounding conductor.",
        examples=[{"value": 400, "unit": "A"}],
    )
    terminal_rating: Omissible[TerminalRating] = Field(
        default=None,
        description="Temperature that the terminals at both ends are marked for; unmarked ones are taken for 60 degC "
        "to 100 A of overcurrent_device or, without one, of current, and for 75 degC above; where neither is given, "
        "for 60 degC to 1 AWG.",
        examples=["75_degc"],
        json_schema_extra=TERMINAL_RATING.stated,
    )


class Loading(CableLoading):
    """How a circuit loads its cables."""

    voltage: Omissible[CircuitVoltage] = Field(
        default=None,
        description="Between lines; to ground of a single phase. For the loss in insulation, and what the code allows.",
        examples=[{"value": 480, "unit": "V"}],
        json_schema_extra=VOLTAGE.stated,
    )


class LoadedCircuit(Loading):
    """A circuit in ducts of the bank."""

    name: Omissible[Name] = Field(default=None, description="What it is called.", examples=["Feeder 1"])
    ducts: Annotated[list[DuctName], Field(min_length=1, max_length=MOST_LOADED)] = Field(
        description="Its ducts, as tier-position: tier 1 at the bottom, position 1 at the left.", examples=[["1-1"]]
    )
    cables: PulledLines = Field(description="The cables in each of its ducts, grounding conductors included.")


class CircuitLoad(NamedTuple):
    """A circuit that loads ducts (indices into those of the bank), each with so many conductors of a cable.

    `sets` in parallel; `neutrals` (count) among the loaded conductors of each duct; `current` of all sets [A] if it is
    known, `voltage` [V], the load factor (ratio); the `limit` of a conductor [K], and whether its insulation is
    made for that in the ground. `lines` are all cables in a duct, on the `cables_sheet`. `ducts_sheet` is at the place
    of its ducts, `sheet` at that of how it is loaded.
    """

    name: str | None
    ducts: tuple[int, ...]
    cable: LoadedCable
    system: CircuitSystem
    sets: int
    neutrals: int
    current: float | None
    voltage: float
    load_factor: float
    grounded_at_both_ends: bool
    limit: float
    is_insulated: bool
    lines: Sequence[CableLine]
    given: Loading
    cables_sheet: Worksheet
    ducts_sheet: Worksheet
    sheet: Worksheet

    @property
    def phases_in_a_duct(self) -> int:
        """Loaded conductors in each duct that make its sets."""
        return self.cable.conductors - self.neutrals


def load_of(
    given: Loading,
    name: str | None,
    ducts: Sequence[int],
    ducts_place: Worksheet,
    lines: Sequence[CableLine],
    cables_place: Worksheet,
    sheet: Worksheet,
) -> CircuitLoad:
    """Give a circuit that loads ducts of a bank.

    `ducts_place` is the sheet of its ducts, `cables_place` that of the list of cables in each of them.
    """
    cable = loaded_cable(lines, given.loaded_conductor_count, cables_place, sheet.within("loaded_conductor_count"))
    system = sheet.settle("system", given.system, SYSTEM)
    grounding = ShieldGrounding.BOTH_ENDS
    if cable.shield is not None and system is not CircuitSystem.DIRECT_CURRENT:
        grounding = sheet.settle("shield_grounding", given.shield_grounding, SHIELD_GROUNDING)
    limit, is_insulated = _limit(given, cable, sheet)
    neutrals = given.loaded_neutral_count or 0
    return CircuitLoad(
        name=name,
        ducts=tuple(ducts),
        cable=cable,
        system=system,
        sets=sets_of(
            system,
            len(ducts),
            cable.conductors - neutrals,
            sheet,
            counted=given.loaded_conductor_count is not None,
        ),
        neutrals=neutrals,
        current=None if given.current is None else given.current.si,
        voltage=sheet.settle("voltage", given.voltage, VOLTAGE).si,
        load_factor=sheet.settle("load_factor_percent", given.load_factor_percent, LOAD_FACTOR) / 100.0,
        grounded_at_both_ends=grounding is ShieldGrounding.BOTH_ENDS,
        limit=limit,
        is_insulated=is_insulated,
        lines=lines,
        given=given,
        cables_sheet=cables_place,
        ducts_sheet=ducts_place,
        sheet=sheet,
    )


def loads_of(circuits: Sequence[LoadedCircuit], bank: Bank, sheet: Worksheet) -> list[CircuitLoad]:
    """Give the circuits of a request, on the sheet of their list; all faults at once."""
    faults = Gathering()
    found = []
    for index, circuit in enumerate(circuits):
        place = sheet.within(str(index))
        with faults:
            ducts_place = place.within("ducts")
            ducts = ducts_of(circuit.ducts, bank, ducts_place)
            cables_place = place.within("cables")
            found.append(load_of(circuit, circuit.name, ducts, ducts_place, circuit.cables, cables_place, place))
    faults.stop()
    return found


def check_ducts(loads: Sequence[CircuitLoad], names: Sequence[str]) -> None:
    """Refuse a duct that is loaded twice, and more loaded ducts than are carried."""
    loaded: dict[int, None] = {}
    faults = []
    for load in loads:
        for at, duct in enumerate(load.ducts):
            if duct in loaded:
                message = f"Duct {names[duct]} is loaded twice, where circuits heat each other: give each its own."
                faults.append(load.ducts_sheet.fault(str(at), "duct_loaded_twice", message))
            loaded[duct] = None
    if len(loaded) > MOST_LOADED:
        message = f"{len(loaded)} loaded ducts: {MOST_LOADED} are the most."
        faults.append(loads[-1].ducts_sheet.fault("", "too_many_loaded_ducts", message, maximum=MOST_LOADED))
    if faults:
        raise UnanswerableError(*faults)


def sets_of(system: CircuitSystem, ducts: int, conductors: int, sheet: Worksheet, *, counted: bool) -> int:
    """Count the sets in parallel of so many phase conductors in each duct; refuse those that make no whole sets.

    Every phase lies in every duct, so that one duct has whole sets and all ducts have as many each: what is over in one
    is a neutral, or of another system, and makes no set with what is over in the next. Isolated phases alone, of fewer
    conductors in a duct than make a set, go together from duct to duct; where a duct has more than one of them, only as
    `counted` says that loaded_conductor_count was given.
    """
    in_a_set = IN_A_SET[system]
    isolated = 0 < conductors < in_a_set and (conductors == 1 or counted)
    sets, left = divmod(ducts * conductors if isolated else conductors, in_a_set)
    if left or sets <= 0:
        raise UnanswerableError(
            sheet.fault(
                "loaded_conductor_count",
                "conductors_make_no_sets",
                f"{_in_ducts(max(conductors, 0), ducts)} no whole sets of {in_a_set}: "
                f"{_to_make_sets(conductors, in_a_set, ducts)}",
            )
        )
    return sets if isolated else ducts * sets


def _in_ducts(conductors: int, ducts: int) -> str:
    one = conductors == 1 and ducts == 1
    where = "the duct" if ducts == 1 else f"each of {ducts} ducts"
    return f"{conductors} loaded phase conductor{'' if conductors == 1 else 's'} in {where} make{'s' if one else ''}"


def _to_make_sets(conductors: int, in_a_set: int, ducts: int) -> str:
    """Say what to give where so many phase conductors in a duct make no whole sets."""
    sets, left = divmod(conductors, in_a_set)
    if sets <= 0 or not left:
        whole = conductors > 1 and not ducts * conductors % in_a_set
        return (
            f"where each duct has phases of its own, give loaded_conductor_count {conductors}; where they are of "
            "another system, give that."
            if whole
            else "give all ducts of the circuit, or as loaded_conductor_count those of each duct that carry its "
            "current, without neutrals."
        )
    words = "one is a neutral" if left == 1 else f"{left} are neutrals"
    return (
        f"where {words}, give loaded_neutral_count {left} if harmonics load it as the phases, else "
        f"loaded_conductor_count {conductors - left}; where none is, give the system they are of, or in each duct "
        "the conductors of whole sets: every phase lies in every duct."
    )


def usual_limit(marking: Insulation | None) -> Default[Temperature]:
    """Give the highest temperature that a conductor is taken to bear in the ground, by its marking if it has one."""
    if marking is None:
        return TEMPERATURE_LIMIT
    return RATED.get(marking, DRY_INSULATION)


def _limit(given: CableLoading, cable: LoadedCable, sheet: Worksheet) -> tuple[float, bool]:
    """Give the highest temperature of the conductor [K], and whether its insulation is made for that in the ground."""
    marking = cable.marking
    rated = usual_limit(marking)
    limit = sheet.settle("temperature_limit", given.temperature_limit, rated).si
    if marking is None:
        return limit, True
    if marking not in RATED:
        cable.sheet.find(
            Severity.VIOLATION,
            "insulation_for_dry_places",
            f"{marking.value} is made for dry places, and a raceway in the ground is a wet one: take a conductor "
            "marked for wet places, such as THWN-2 or XHHW-2.",
            sheet.rule("wet_raceway"),
            member="insulation",
        )
        return limit, False
    if given.temperature_limit is None or not over(limit, rated.value.si):
        return limit, True
    most, asked = sheet.tell.given(rated.value), sheet.tell.given(given.temperature_limit)
    sheet.find(
        Severity.VIOLATION,
        "conductor_temperature_over_rating",
        f"{marking.value} bears {text_of(most)} in a wet place, not {text_of(asked)}: take a conductor marked for "
        "more, or rate it lower.",
        sheet.rule("insulation_temperature"),
        asked,
        most,
        member="temperature_limit",
    )
    return limit, False
