"""What a buried bank may carry: practice, and the core that rates its circuits."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering.bank import Envelope
from ductrun.engineering.buried_heat import Place
from ductrun.engineering.heat_balance import Duct
from ductrun.engineering.rounding import under
from ductrun.kit.backing import backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, by_rule, choice, quantity
from ductrun.kit.forms import Between, Form, Omissible
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.checks import Checked, check
from ductrun.subjects.feeder.choices import AmpacityMethod, AmpacityStudy, WallMaterial
from ductrun.subjects.feeder.circuits import CircuitLoad, check_ducts
from ductrun.subjects.feeder.solving import Solved, alone, by_method, hottest
from ductrun.subjects.feeder.thermal import Earth, Question, Section, Wall, air_of, air_row
from ductrun.subjects.feeder.walls import DUCT_MATERIAL, DuctWall, refuse_tight_set, refuse_wide_cables
from ductrun.subjects.parts.duct_names import duct_names
from ductrun.tables import TABLES
from ductrun.units import Frequency, Temperature, ThermalResistivity

METHOD = choice("feeder.method", AmpacityMethod)
EARTH_RESISTIVITY = quantity("feeder.earth_thermal_resistivity", ThermalResistivity)
CONCRETE_RESISTIVITY = quantity("feeder.concrete_thermal_resistivity", ThermalResistivity)
EARTH_TEMPERATURE = quantity("feeder.earth_temperature", Temperature)
FREQUENCY = quantity("feeder.frequency", Frequency)
DUCT_WALLS = {
    WallMaterial(row.material): Default(
        ThermalResistivity.parse(row.resistivity_degc_cm_per_w, "degC.cm/W"), backing_of(row)
    )
    for row in TABLES["thermal_resistivities"]
    if row.part == "duct"
}
_LEAST_RISE = 1.0  # [K] over the earth
MOST_STUDIES = len(AmpacityStudy)

GroundResistivity = Annotated[
    ThermalResistivity, Between(ThermalResistivity.parse(20, "degC.cm/W"), ThermalResistivity.parse(1_000, "degC.cm/W"))
]
EarthTemperature = Annotated[Temperature, Between(Temperature.parse(-20, "degC"), Temperature.parse(70, "degC"))]
AirTemperature = Annotated[Temperature, Between(Temperature.parse(0, "degC"), Temperature.parse(150, "degC"))]
SystemFrequency = Annotated[Frequency, Between(Frequency.parse(10, "Hz"), Frequency.parse(400, "Hz"))]
WallResistivity = Annotated[
    ThermalResistivity, Between(ThermalResistivity.parse(0, "K.m/W"), ThermalResistivity.parse(50, "K.m/W"))
]


class BankRating(Form):
    """The method a bank is rated by, and what concrete and ducts are to its heat."""

    method: Omissible[AmpacityMethod] = Field(
        default=None,
        description="Method; both gives the one that allows less, with the other beside it.",
        examples=["neher_mcgrath"],
        json_schema_extra=METHOD.stated,
    )
    concrete_thermal_resistivity: Omissible[GroundResistivity] = Field(
        default=None,
        description="Thermal resistivity of the concrete.",
        examples=[{"value": 85, "unit": "degC.cm/W"}],
        json_schema_extra=CONCRETE_RESISTIVITY.stated,
    )
    duct_material: Omissible[WallMaterial] = Field(
        default=None,
        description="What ducts without a type are made of, for their heat; of the others their type tells.",
        examples=["pvc"],
        json_schema_extra=DUCT_MATERIAL.stated,
    )
    duct_thermal_resistivity: Omissible[WallResistivity] = Field(
        default=None,
        description="Thermal resistivity of the duct walls.",
        examples=[{"value": 650, "unit": "degC.cm/W"}],
        json_schema_extra=by_rule("that of the material"),
    )
    duct_air_temperature: Omissible[AirTemperature] = Field(
        default=None,
        description="Temperature that the air in every duct is taken to have, as printed tables do.",
        examples=[{"value": 60, "unit": "degC"}],
        json_schema_extra=by_rule("the mean of cable and duct, as it settles"),
    )


class SystemRating(Form):
    """The current that a bank is rated for."""

    frequency: Omissible[SystemFrequency] = Field(
        default=None,
        description="Frequency of the alternating current.",
        examples=[{"value": 60, "unit": "Hz"}],
        json_schema_extra=FREQUENCY.stated,
    )


class RatingPractice(BankRating, SystemRating):
    """The method banks are rated by, at one frequency for all, and what concrete and ducts are to their heat."""


class EarthRating(BankRating):
    """The earth a bank lies in, and the method it is rated by."""

    earth_thermal_resistivity: Omissible[GroundResistivity] = Field(
        default=None,
        description="Thermal resistivity of the earth and the backfill.",
        examples=[{"value": 90, "unit": "degC.cm/W"}],
        json_schema_extra=EARTH_RESISTIVITY.stated,
    )
    earth_temperature: Omissible[EarthTemperature] = Field(
        default=None,
        description="Temperature of the earth at that depth, away from the cables.",
        examples=[{"value": 20, "unit": "degC"}],
        json_schema_extra=EARTH_TEMPERATURE.stated,
    )


class PlaceRating(EarthRating, SystemRating):
    """The place a bank lies in, the current in it, and the method it is rated by."""


class Rating(PlaceRating):
    """How a bank is rated, and what is asked beside."""

    studies: Omissible[Annotated[list[AmpacityStudy], Field(max_length=MOST_STUDIES)]] = Field(
        default=None, description="What is asked beside the ampacity.", examples=[["sensitivity"]]
    )


class Rated(NamedTuple):
    """A circuit: the current of one of its conductors [A], what the circuit may carry [A], None where its current is
    fixed while others are looked for; its hottest `conductor` [K]; what stands beside it.
    """

    load: CircuitLoad
    conductor_current: float
    ampacity: float | None
    conductor: float
    checked: Checked


class LoadedDuct(NamedTuple):
    """A loaded duct: its name, its index in the bank, the number of its circuit from 1, its place and its heat."""

    name: str
    duct: int
    circuit: int
    place: Place
    heat: Duct
    limit: float


class Ampacity(NamedTuple):
    """A bank that was rated: circuits, every loaded duct in balance, the other method if both were asked.

    `names` of all ducts of the bank; `alone` what one conductor of the governing duct could carry with no other duct
    loaded [A].
    """

    envelope: Envelope
    names: Sequence[str]
    solved: Solved
    other: Solved | None
    alone: float
    circuits: tuple[Rated, ...]

    @property
    def loaded(self) -> list[LoadedDuct]:
        """Every loaded duct with its temperatures, circuit by circuit."""
        question = self.solved.question
        places = question.section.places
        ducts = [(number, load, duct) for number, load in enumerate(question.loads, start=1) for duct in load.ducts]
        return [
            LoadedDuct(self.names[duct], duct, number, places[duct], heat, load.limit)
            for (number, load, duct), heat in zip(ducts, self.solved.balance.ducts, strict=True)
        ]


def section_of(
    given: BankRating, envelope: Envelope, walls: Sequence[DuctWall], cover: float, sheet: Worksheet
) -> Section:
    """Give the section of a bank under so much earth [m]; `walls` are those of every duct."""
    bank = envelope.bank
    top = cover + (0.0 if envelope.concrete is None else envelope.concrete.top) + bank.height
    if given.duct_material is not None and all(wall.material is not None for wall in walls):
        message = (
            "Every duct has a type, which tells what it is made of: leave this out, or measured ducts without a type."
        )
        raise UnanswerableError(sheet.fault("duct_material", "contradiction", message))
    by_duct = [_wall(given, wall, sheet) for wall in walls]
    materials = {wall.material for wall in by_duct}
    if len(materials) == 1:  # where they differ no one value stands in for all
        sheet.settle("duct_thermal_resistivity", given.duct_thermal_resistivity, DUCT_WALLS[materials.pop()])
    return Section(
        places=[Place(duct.x, top - duct.y) for duct in bank.ducts],
        walls=by_duct,
        width=envelope.width,
        height=envelope.height,
        center=cover + envelope.height / 2.0,
    )


def _wall(given: BankRating, wall: DuctWall, sheet: Worksheet) -> Wall:
    material = wall.material
    if material is None:
        material = sheet.settle("duct_material", given.duct_material, DUCT_MATERIAL)
    default = DUCT_WALLS[material]
    resistivity = given.duct_thermal_resistivity or default.value
    sheet.cite(default.backing.source_id)
    return Wall(wall.inside, wall.outside, material, resistivity.si)


def rate(
    given: PlaceRating,
    envelope: Envelope,
    walls: Sequence[DuctWall],
    cover: float,
    loads: Sequence[CircuitLoad],
    sheet: Worksheet,
) -> Ampacity:
    """Give what the circuits of a bank may carry, or how warm they become.

    `walls` are those of every duct, `cover` [m] is the earth over the envelope.
    """
    names = duct_names(envelope.bank)
    check_ducts(loads, names)
    for load in loads:
        for wall in {walls[duct].inside: walls[duct] for duct in load.ducts}.values():
            refuse_wide_cables(load.cable.diameter, wall, load.cable.sheet)
            refuse_tight_set(load, wall)
    method = sheet.settle("method", given.method, METHOD)
    question = _question(given, envelope, walls, cover, loads, method, sheet)
    _refuse_cold_limits(question, sheet)
    solved, other = by_method(question, method)
    _note_air(solved, sheet)
    if other is not None:
        _note_air(other, sheet)
    circuits = tuple(
        Rated(load, current, ampacity, warmest, check(load, solved.question.earth.ambient))
        for load, current, ampacity, warmest in zip(
            loads, solved.currents, solved.ampacities, hottest(solved), strict=True
        )
    )
    return Ampacity(envelope, names, solved, other, alone(solved), circuits)


def rating_steps(loaded: int, together: int, banks: int = 1) -> float:
    """Bound the steps of rating so many loaded ducts in all the banks, of which so many at most lie together."""
    return 60.0 * banks + (60.0 + 1.5 * together) * loaded


def _note_air(solved: Solved, sheet: Worksheet) -> None:
    """Tell the constants of the air in the ducts, which no member of a request holds, with what they rest on."""
    question = solved.question
    encased = question.earth.concrete is not None
    for material in {wall.material: None for wall in question.section.walls}:
        row = air_row(material, question.method, encased=encased)
        u, v, y = air_of(material, question.method, encased=encased)
        stands_in = material.value not in row.duct and row.duct.startswith("asbestos")
        why = ": the method has none for it, and printed tables for ducts in concrete are met with these" * stands_in
        if row.duct.endswith("in_air"):
            why = ": none are for ducts in earth, and those for concrete let more heat through"
        sheet.find(
            Severity.NOTE,
            "duct_air_constants",
            f"Heat crosses the air in {material.value.replace('_', ' ')} duct by the constants of "
            f"{row.duct.replace('_', ' ')}, U {u:.4g}, V {v:.4g} and Y {round(y, 5):g}{why}.",
            backing_of(row),
            member="duct_material",
        )


def _question(
    given: PlaceRating,
    envelope: Envelope,
    walls: Sequence[DuctWall],
    cover: float,
    loads: Sequence[CircuitLoad],
    method: AmpacityMethod,
    sheet: Worksheet,
) -> Question:
    earth = sheet.settle("earth_thermal_resistivity", given.earth_thermal_resistivity, EARTH_RESISTIVITY).si
    concrete = None
    if envelope.concrete is not None:
        concrete = sheet.settle(
            "concrete_thermal_resistivity", given.concrete_thermal_resistivity, CONCRETE_RESISTIVITY
        ).si
    ambient = sheet.settle("earth_temperature", given.earth_temperature, EARTH_TEMPERATURE).si
    return Question(
        method=method,
        section=section_of(given, envelope, walls, cover, sheet),
        earth=Earth(earth, concrete, ambient),
        frequency=sheet.settle("frequency", given.frequency, FREQUENCY).si,
        air=None if given.duct_air_temperature is None else given.duct_air_temperature.si,
        loads=loads,
    )


def _refuse_cold_limits(question: Question, sheet: Worksheet) -> None:
    """Refuse a conductor that may not become warmer than the earth: it carries nothing."""
    ambient = question.earth.ambient
    told, least = sheet.tell.temperature(ambient), sheet.tell.temperature(ambient + _LEAST_RISE)
    faults = [
        load.sheet.fault(
            "temperature_limit",
            "limit_below_the_earth",
            f"The conductor may hardly be warmer than the earth around it, {text_of(told)}: it has no ampacity. Take a "
            f"conductor for {text_of(least)} or more.",
            minimum=least,
        )
        for load in question.loads
        if under(load.limit, ambient + _LEAST_RISE)
    ]
    if faults:
        raise UnanswerableError(*faults)
