"""The request of a whole run, as it stands on a drawing."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule, choice
from ductrun.kit.forms import Clearance, Depth, Edition, Form, FrictionCoefficient, Omissible, RunLength, between
from ductrun.kit.texts import Name, Note, PlainText
from ductrun.subjects.bank.encasing import Encasing
from ductrun.subjects.bank.flotation_practice import Floating
from ductrun.subjects.bank.spacing_practice import Spacing
from ductrun.subjects.conduit.elbows import TANGENT
from ductrun.subjects.conduit.joining import Joining
from ductrun.subjects.duct_run.alignment import Profile, RunSections
from ductrun.subjects.duct_run.choices import Service, StraightLengths
from ductrun.subjects.duct_run.load import RunLoad
from ductrun.subjects.duct_run.moving_practice import RunMoving
from ductrun.subjects.duct_run.places import RunPlace
from ductrun.subjects.duct_run.settings import Setting
from ductrun.subjects.feeder.rating import (
    EARTH_RESISTIVITY,
    EARTH_TEMPERATURE,
    EarthRating,
    EarthTemperature,
    GroundResistivity,
    RatingPractice,
)
from ductrun.subjects.ground.digging import Digging
from ductrun.subjects.ground.earth_loading import GROUNDWATER_DEPTH, EarthLoading
from ductrun.subjects.movement.temperatures import Temperatures
from ductrun.subjects.parts.bank import DuctBank, Tiers
from ductrun.subjects.parts.cables import PulledLines
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import Conduit
from ductrun.subjects.parts.takeoff import TakeoffItem, TakeoffUnit
from ductrun.subjects.pulling.cable_order import CableOrder
from ductrun.subjects.pulling.practice import PullPractice
from ductrun.units import Voltage

STRAIGHT_LENGTHS = choice("duct_run.straight_lengths", StraightLengths)
SERVICE = choice("duct_run.service", Service)
MOST_STRETCHES = 50
MOST_CIRCUITS = 200
MOST_DUCTS = 1_200
MOST_RATES = 1_000
CircuitVoltage = Annotated[Voltage, between(Voltage, 1, 1_000_000, "V")]
DuctName = Annotated[str, Field(min_length=3, max_length=5), PlainText()]
Price = Annotated[float, Field(ge=0, le=1e9)]


class RunJoining(Joining):
    """How ducts are joined, and how their elbows are made."""

    elbow_tangent: Omissible[Clearance] = Field(
        default=None,
        description="Straight part at either end of a factory elbow.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=TANGENT.stated,
    )


class Circuit(Form):
    """Alike cables in one or several ducts."""

    name: Omissible[Name] = Field(default=None, description="Its name.", examples=["F-21"])
    ducts: Omissible[Annotated[list[DuctName], Field(min_length=1, max_length=MOST_DUCTS)]] = Field(
        default=None,
        description="The ducts it lies in, tier-position: tier 1 is the bottom one, position 1 the left one, looking "
        "from start to end.",
        examples=[["1-1", "1-3"]],
    )
    duct_count: Omissible[Annotated[int, Field(ge=1, le=MOST_DUCTS)]] = Field(
        default=None,
        description="In place of ducts: how many, the first that are free from the bottom left.",
        examples=[1],
        json_schema_extra=by_rule("one, unless ducts are named"),
    )
    cables: Omissible[PulledLines] = Field(
        default=None, description="The cables in each of its ducts; these or same_as."
    )
    same_as: Omissible[Name] = Field(
        default=None, description="Name of the circuit whose cables it has.", examples=["F-21"]
    )
    voltage: Omissible[CircuitVoltage] = Field(
        default=None,
        description="Between conductors; without it the cover over power is not judged. That of same_as, if left out.",
        examples=[{"value": 13.8, "unit": "kV"}],
    )
    load: Omissible[RunLoad] = Field(
        default=None,
        description="Its load: the voltage it loses on its way and what the ducts around it may carry are then told. "
        "That of same_as, if left out.",
    )
    service: Omissible[Service] = Field(
        default=None,
        description="What it carries.",
        examples=["power"],
        json_schema_extra=SERVICE.stated,
    )
    pulling: Omissible[PullPractice] = Field(
        default=None, description="What differs for it from the pulling of the run."
    )
    start: Omissible[Name] = Field(
        default=None,
        description="Name of the end or pull point where it begins.",
        examples=["MH-12"],
        json_schema_extra=by_rule("the start of the run"),
    )
    end: Omissible[Name] = Field(
        default=None,
        description="Name of the end or pull point where it ends.",
        examples=["MH-13"],
        json_schema_extra=by_rule("the end of the run"),
    )


class Stretch(Form):
    """A part of the run in one setting, from the end of the one before it."""

    name: Omissible[Name] = Field(default=None, description="Its name.", examples=["under the road"])
    setting: Setting = Field(description="Where it lies.")
    length: Omissible[RunLength] = Field(
        default=None,
        description="Length of one level straight; between ends with a height it is measured to their risers. This or "
        "sections.",
        examples=[{"value": 120, "unit": "ft"}],
    )
    sections: Omissible[RunSections] = Field(default=None, description="Its straights and bends; these or length.")
    bank: Omissible[DuctBank] = Field(default=None, description="Its own bank, in place of that of the run.")
    conduit: Omissible[Conduit] = Field(default=None, description="What every duct of the bank is here.")
    conduit_type: Omissible[ConduitType] = Field(
        default=None, description="Type of every duct of the bank here, its size kept.", examples=["rmc"]
    )
    tiers: Omissible[Tiers] = Field(
        default=None,
        description="Tiers of the same ducts here, where they differ: the ducts go on in order, from the bottom left.",
        examples=[[2, 2, 2]],
    )
    friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None, description="Coefficient of friction here, where it differs.", examples=[0.5]
    )
    pull_point: Omissible[RunPlace] = Field(default=None, description="The pull point at its end, if one is there.")
    digging: Omissible[Digging] = Field(default=None, description="What differs here from the digging of the run.")
    concrete: Omissible[Encasing] = Field(default=None, description="What differs here from the concrete of the run.")
    spacing: Omissible[Spacing] = Field(default=None, description="What differs here from the spacing of the run.")
    joining: Omissible[RunJoining] = Field(default=None, description="What differs here from the joining of the run.")
    rating: Omissible[EarthRating] = Field(
        default=None,
        description="What differs here from the rating of the run, or the earth from that of the site; its "
        "frequency is one for all stretches.",
    )
    earth_load: Omissible[EarthLoading] = Field(
        default=None, description="Earth and traffic here, in place of the earth_load of the run or laid over it."
    )


class Site(Form):
    """The place, once."""

    temperatures: Omissible[Temperatures] = Field(
        default=None, description="What conduit above ground sees; without them its movement is not judged."
    )
    groundwater_depth: Omissible[Depth] = Field(
        default=None,
        description="Depth of the groundwater below grade, at its highest; assumed where an earth_load asks.",
        examples=[{"value": 4, "unit": "ft"}],
        json_schema_extra=GROUNDWATER_DEPTH.stated,
    )
    earth_temperature: Omissible[EarthTemperature] = Field(
        default=None,
        description="Temperature of the earth at the depth of the ducts, where circuits have a load.",
        examples=[{"value": 20, "unit": "degC"}],
        json_schema_extra=EARTH_TEMPERATURE.stated,
    )
    earth_thermal_resistivity: Omissible[GroundResistivity] = Field(
        default=None,
        description="Thermal resistivity of the earth and the backfill, where circuits have a load.",
        examples=[{"value": 90, "unit": "degC.cm/W"}],
        json_schema_extra=EARTH_RESISTIVITY.stated,
    )


class Rate(Form):
    """The caller's own rate for an item; a key left out matches any."""

    item: TakeoffItem = Field(description="What it is for.", examples=["conduit"])
    conduit_type: Omissible[ConduitType] = Field(
        default=None, description="Of this conduit alone.", examples=["pvc_schedule_40"]
    )
    size: Omissible[Name] = Field(default=None, description="Of this size alone.", examples=["4"])
    unit: Omissible[TakeoffUnit] = Field(
        default=None,
        description="What it is for one of; what is ordered is rounded up in it.",
        examples=["ft"],
        json_schema_extra=by_rule("the US unit of the item: ft, ft2, yd3, gal_us, of cement qt_us; else each"),
    )
    unit_price: Omissible[Price] = Field(
        default=None,
        description="Price for one of the unit, in the caller's money; this, or labor hours, or both.",
        examples=[3.25],
    )
    unit_labor_hours: Omissible[Price] = Field(
        default=None, description="Labor hours for one of the unit.", examples=[0.05]
    )


class DuctRunRequest(Form):
    """A run from end to end."""

    name: Omissible[Name] = Field(default=None, description="Its name.", examples=["MH-12 to MH-13"])
    note: Omissible[Note] = Field(default=None, description="A remark, told back as it is.")
    code_edition: Edition = None
    bank: Omissible[DuctBank] = Field(
        default=None, description="The duct bank; needed unless every stretch has its own."
    )
    circuits: Omissible[Annotated[list[Circuit], Field(max_length=MOST_CIRCUITS)]] = Field(
        default=None, description="The circuits; ducts left over are spares."
    )
    start: RunPlace = Field(description="What stands at the start.")
    stretches: Annotated[list[Stretch], Field(min_length=1, max_length=MOST_STRETCHES)] = Field(
        description="The stretches in order."
    )
    end: RunPlace = Field(description="What stands at the end.")
    straight_lengths: Omissible[StraightLengths] = Field(
        default=None,
        description="Where the lengths of straights end: at the bends, or, as dimensioned on a plan, at the "
        "intersections of their tangents.",
        examples=["to_intersections"],
        json_schema_extra=STRAIGHT_LENGTHS.stated,
    )
    profile: Omissible[Profile] = Field(
        default=None, description="Elevations of ground and line: they give every grade and cover, none is given then."
    )
    site: Omissible[Site] = Field(default=None, description="The place.")
    spacing: Omissible[Spacing] = Field(default=None, description="How ducts are held apart.")
    joining: Omissible[RunJoining] = Field(default=None, description="How ducts are joined.")
    concrete: Omissible[Encasing] = Field(default=None, description="How concrete is mixed and bought.")
    flotation: Omissible[Floating] = Field(
        default=None,
        description="What ducts float in and how they are held down while concrete is poured; its lifts are those that "
        "press on the ducts under earth_load too, where that has none.",
    )
    digging: Omissible[Digging] = Field(default=None, description="How the trench is dug and filled.")
    rating: Omissible[RatingPractice] = Field(
        default=None,
        description="How circuits with a load are rated in the ground, and the one frequency of the run: their voltage "
        "drop is reckoned at it too.",
    )
    earth_load: Omissible[EarthLoading] = Field(
        default=None, description="Earth and traffic on all that is buried; without it they are not asked."
    )
    movement: Omissible[RunMoving] = Field(default=None, description="How what lies above ground moves and is held.")
    pulling: Omissible[PullPractice] = Field(default=None, description="How cables are pulled.")
    ordering: Omissible[CableOrder] = Field(default=None, description="How cable is ordered.")
    rates: Omissible[Annotated[list[Rate], Field(max_length=MOST_RATES)]] = Field(
        default=None, description="The caller's rates for what is taken off."
    )
