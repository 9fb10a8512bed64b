"""POST /v1/cover: how deep must it lie."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.backing import Backing, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import flag
from ductrun.kit.forms import Depth, Edition, Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import BurialLocation, VoltageClass, WiringMethod
from ductrun.subjects.ground.excavation import EXCAVATION_SAFETY
from ductrun.subjects.parts.envelope import LEAST_CONCRETE
from ductrun.tables import TABLES
from ductrun.tables.ground_rows import CoverAbove1000V, CoverTo1000V
from ductrun.units import Length

ENCASED = flag("cover.encased")
LISTED = flag("cover.listed_for_direct_burial")
_ENVELOPE = LEAST_CONCRETE["top"]
_EXCAVATION_RULES = published("osha-1926-subpart-p")
_RACEWAYS = {WiringMethod.RMC_IMC, WiringMethod.NONMETALLIC_RACEWAY}
_NO_CONCRETE = Length.parse(0, "in")
_TO_1000_V = {row.location: row for row in TABLES["cover_to_1000_v"]}
_ABOVE = {row.voltage: row for row in TABLES["cover_above_1000_v"]}
_METHOD_COLUMNS = {
    WiringMethod.DIRECT_BURIED_CABLE: "direct_buried_cable_in",
    WiringMethod.RMC_IMC: "rmc_imc_in",
    WiringMethod.NONMETALLIC_RACEWAY: "nonmetallic_raceway_in",
    WiringMethod.GFCI_RESIDENTIAL: "gfci_residential_in",
    WiringMethod.LOW_VOLTAGE_CONTROL: "low_voltage_control_in",
}
_ABOVE_METHODS = {
    WiringMethod.DIRECT_BURIED_CABLE: "direct_buried_cable_in",
    WiringMethod.RMC_IMC: "rmc_imc_in",
    WiringMethod.NONMETALLIC_RACEWAY: "rtrc_pvc_hdpe_in",
}
_ABOVE_LOCATIONS = {
    BurialLocation.UNDER_BUILDING: "under_building_or_slab_in",
    BurialLocation.UNDER_4_IN_EXTERIOR_SLAB_NO_VEHICLES: "under_building_or_slab_in",
    BurialLocation.AIRPORT_RUNWAY: "airport_runway_in",
    BurialLocation.STREET_ROAD_DRIVEWAY_PARKING_LOT: "vehicular_area_in",
    BurialLocation.DWELLING_DRIVEWAY: "vehicular_area_in",
}


class CoverRequest(Form):
    """What is buried, and where."""

    wiring_method: WiringMethod = Field(description="What is buried.", examples=["nonmetallic_raceway"])
    location: BurialLocation = Field(description="Where.", examples=["not_otherwise_specified"])
    voltage: VoltageClass = Field(description="Voltage between conductors.", examples=["up_to_1000_v"])
    encased: Omissible[bool] = Field(
        default=None,
        description="Whether it is encased in concrete.",
        examples=[False],
        json_schema_extra=ENCASED.stated,
    )
    listed_for_direct_burial: Omissible[bool] = Field(
        default=None,
        description="Whether a raceway is listed for direct burial without encasement.",
        examples=[True],
        json_schema_extra=LISTED.stated,
    )
    cover: Omissible[Depth] = Field(
        default=None,
        description="Cover as planned, to be held against the least.",
        examples=[{"value": 24, "unit": "in"}],
    )
    code_edition: Edition = None


class CoverResult(Struct, frozen=True, gc=False):
    """The least cover and how it is measured."""

    minimum_cover: Annotated[answers.Length, Meta(description="Least cover, as printed.")]
    rule: Annotated[str, Meta(description="Where the figure stands.")]
    measured_from: Annotated[str, Meta(description="What the cover is measured between.")]
    concrete_required: Annotated[answers.Length, Meta(description="Concrete needed beside the cover; 0 for none.")]


class Places(NamedTuple):
    """Where what is said of something buried was given, relative to the sheet of the form that says it."""

    method: str = "wiring_method"
    location: str = "location"
    voltage: str = "voltage"
    encased: str = "encased"
    listed: str = "listed_for_direct_burial"
    cover: str = "cover"


_SIDE_BY_SIDE = Places()


class Buried(NamedTuple):
    """What is buried and where; `listed` is whether a raceway may lie in earth without concrete."""

    method: WiringMethod
    location: BurialLocation
    voltage: VoltageClass
    encased: bool
    listed: bool
    places: Places = _SIDE_BY_SIDE


class Cover(NamedTuple):
    """The least cover as printed, its rule, the concrete needed beside it, and the cover as planned."""

    buried: Buried
    least: Length
    rule: Backing
    concrete: Length
    planned: Length | None


def judge_cover(buried: Buried, planned: Length | None, sheet: Worksheet) -> Cover:
    """Give the least cover of what is buried, and hold the planned one against it."""
    least, rule = _least(buried, sheet)
    _refer_to_a_raceway(buried, rule, sheet)
    concrete = _concrete(buried, rule, sheet)
    if buried.encased:
        sheet.find(
            Severity.NOTE,
            "encasement_does_not_reduce",
            "An envelope around the duct does not by itself reduce the cover; only the rows of the table do, such as "
            "that of concrete above the wiring in its trench.",
            rule,
            member=buried.places.encased,
        )
    if sheet.working is not None:
        substituted = f"{buried.method}, {buried.location}, {buried.voltage}"
        sheet.show("cover", rule.citation, substituted, sheet.tell.given(least))
    if planned is not None:
        _judge_planned(planned, least, buried, rule, sheet)
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, _EXCAVATION_RULES)
    return Cover(buried, least, rule, concrete, planned)


def _judge_planned(planned: Length, least: Length, buried: Buried, rule: Backing, sheet: Worksheet) -> None:
    """Hold the cover as planned against the least."""
    shallow = under(planned.si, least.si)
    sheet.judge(not shallow)
    if shallow:
        told, required = sheet.tell.given(planned), sheet.tell.given(least)
        sheet.find(
            Severity.VIOLATION,
            "too_shallow",
            f"A cover of {text_of(told)} is less than the {text_of(required)} required. Go deeper or change the "
            "wiring method.",
            rule,
            told,
            required,
            member=buried.places.cover,
        )


def _least(buried: Buried, sheet: Worksheet) -> tuple[Length, Backing]:
    """Give the printed cover and the rule it stands in."""
    if buried.voltage is not VoltageClass.UP_TO_1000_V:
        return _least_above_1000_v(buried, sheet)
    rule = sheet.rule("cover_to_1000_v")
    row = _TO_1000_V[buried.location]
    sheet.cite(row.source)
    _note(row, rule, buried.places.location, sheet)
    return Length.parse(getattr(row, _METHOD_COLUMNS[buried.method]), "in"), rule


def _least_above_1000_v(buried: Buried, sheet: Worksheet) -> tuple[Length, Backing]:
    method, location = buried.method, buried.location
    if method not in _ABOVE_METHODS:
        raise UnanswerableError(
            sheet.fault(
                buried.places.method,
                "not_above_1000_v",
                f"Above 1000 V the table has no column for {method}.",
                [known.value for known in _ABOVE_METHODS],
            )
        )
    rule = sheet.rule("cover_above_1000_v")
    row = _ABOVE[buried.voltage]
    sheet.cite(row.source)
    _note(row, rule, buried.places.voltage, sheet)
    if location is BurialLocation.TRENCH_BELOW_2_IN_CONCRETE:
        sheet.find(
            Severity.NOTE,
            "concrete_above_is_not_a_row",
            "Above 1000 V the table has no row for a trench below concrete: the general column applies.",
            rule,
            member=buried.places.location,
        )
    column = _ABOVE_LOCATIONS.get(location, _ABOVE_METHODS[method])
    if method is WiringMethod.DIRECT_BURIED_CABLE and column == "under_building_or_slab_in":
        column = _ABOVE_METHODS[method]
    return Length.parse(getattr(row, column), "in"), rule


def _note(row: CoverTo1000V | CoverAbove1000V, rule: Backing, member: str, sheet: Worksheet) -> None:
    """Tell what the table adds to a row, as printed."""
    if row.note:
        sheet.find(Severity.NOTE, "table_note", f"The table adds, as printed: {row.note}.", rule, member=member)


def _refer_to_a_raceway(buried: Buried, rule: Backing, sheet: Worksheet) -> None:
    """Say that a cable under a building belongs in a raceway, so that its cover alone complies with nothing.

    Above 1000 V the column of buildings holds for slabs as well, and for raceways alone.
    """
    if buried.method in _RACEWAYS:
        return
    above = buried.voltage is not VoltageClass.UP_TO_1000_V
    if above and _ABOVE_LOCATIONS.get(buried.location) == "under_building_or_slab_in":
        words = (
            "Under a building or slab the table gives a cover for raceways alone: put the cable in one. The general "
            "column for cable is told here."
        )
    elif not above and buried.location is BurialLocation.UNDER_BUILDING:
        words = (
            "Under a building the table gives this cover for a cable in a raceway, or of a type identified for direct "
            "burial: put the cable in a raceway. Whether it lies in one was not judged."
        )
    else:
        return
    sheet.judge(None)
    sheet.find(Severity.CAUTION, "only_in_a_raceway", words, rule, member=buried.places.method)


def _concrete(buried: Buried, rule: Backing, sheet: Worksheet) -> Length:
    """Give the concrete needed beside the cover; a raceway not listed for direct burial needs an envelope.

    How thick the envelope of an encased one is was not asked, and so is not judged.
    """
    if buried.method is not WiringMethod.NONMETALLIC_RACEWAY or buried.listed:
        return _NO_CONCRETE
    least = sheet.tell.given(_ENVELOPE)
    sheet.judge(None if buried.encased else False)
    sheet.find(
        Severity.CAUTION if buried.encased else Severity.VIOLATION,
        "needs_concrete",
        f"A raceway that is not listed for direct burial needs a concrete envelope of at least {text_of(least)}: "
        + ("the thickness of its concrete was not judged here." if buried.encased else "encase it."),
        rule,
        limit=least,
        member=buried.places.listed,
    )
    return _ENVELOPE


def assess(request: CoverRequest, sheet: Worksheet) -> Cover:
    """Judge the cover of a request."""
    sheet.follow_edition(request.code_edition)
    encased = sheet.settle("encased", request.encased, ENCASED)
    listed = True
    if request.wiring_method is WiringMethod.NONMETALLIC_RACEWAY:
        listed = sheet.settle("listed_for_direct_burial", request.listed_for_direct_burial, LISTED)
    buried = Buried(request.wiring_method, request.location, request.voltage, encased, listed)
    return judge_cover(buried, request.cover, sheet)


def tell(found: Cover, telling: Telling) -> CoverResult:
    """Put a cover into the caller's units."""
    return CoverResult(
        minimum_cover=telling.given(found.least),
        rule=found.rule.citation,
        measured_from="from the top of the cable or raceway, not of its envelope, to the top of finished grade",
        concrete_required=telling.given(found.concrete),
    )


OPERATION = Operation(
    name="cover",
    operation_id="calculate_cover",
    summary="Minimum cover",
    description="Gives the least cover of underground wiring by method, location and voltage, what it is measured "
    "from, and whether concrete is needed or changes it.",
    request=CoverRequest,
    result=CoverResult,
    assess=assess,
    tell=tell,
    example={
        "wiring_method": "nonmetallic_raceway",
        "location": "street_road_driveway_parking_lot",
        "voltage": "up_to_1000_v",
        "encased": True,
        "listed_for_direct_burial": True,
        "cover": {"value": 24, "unit": "in"},
        "code_edition": "2023",
    },
)
