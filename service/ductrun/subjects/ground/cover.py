"""POST /v1/cover: how deep must it lie."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.backing import Backing, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, flag
from ductrun.kit.forms import Clearance, Depth, Edition, Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart, text_of, without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import BurialLocation, VoltageClass, WiringMethod
from ductrun.subjects.ground.least_cover import Buried, least_cover, refer_to_a_raceway
from ductrun.subjects.parts.envelope import LEAST_CONCRETE
from ductrun.subjects.parts.excavation import EXCAVATION_SAFETY
from ductrun.units import Length

ENCASED = flag("cover.encased")
_ENVELOPE = LEAST_CONCRETE["top"]
_EXCAVATION_RULES = published("osha-1926-subpart-p")
_NO_CONCRETE = Length.parse(0, "in")
_NEEDS = "A raceway that is not listed for direct burial needs a concrete envelope of at least"


class CoverRequest(Form):
    """What is buried, and where."""

    wiring_method: WiringMethod = Field(description="What is buried.", examples=["nonmetallic_raceway"])
    location: BurialLocation = Field(description="Where.", examples=["not_otherwise_specified"])
    voltage_class: VoltageClass = Field(description="Voltage between conductors.", examples=["up_to_1000_v"])
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
    )
    cover: Omissible[Depth] = Field(
        default=None,
        description="Cover as built or planned, held against the least: earth over the top of what is buried, the "
        "shortest way to grade; that is its concrete where it is encased.",
        examples=[{"value": 24, "unit": "in"}],
    )
    concrete_above: Omissible[Clearance] = Field(
        default=None,
        description="Concrete of the envelope above the raceway, where it is encased: the rules measure through it.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=by_rule("none is counted"),
    )
    concrete_around: Omissible[Clearance] = Field(
        default=None,
        description="Least concrete of the envelope beside and below the raceway, where it is encased: one that is not "
        "listed for direct burial needs it all round.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=by_rule("not known, and not judged"),
    )
    code_edition: Edition = None


class CoverResult(Struct, frozen=True, gc=False):
    """The least cover and how it is measured."""

    minimum_cover: Annotated[answers.Length, Meta(description="Least cover, as printed.")]
    rule: Annotated[str, Meta(description="Where the figure stands.")]
    measured_from: Annotated[str, Meta(description="What the cover is measured between.")]
    concrete_required: Annotated[answers.Length, Meta(description="Concrete needed beside the cover; 0 for none.")]
    cover_over_raceway: Annotated[
        answers.Length | UnsetType,
        Meta(description="As judged: the cover given, and the concrete between it and the raceway."),
    ] = UNSET
    margin: Annotated[
        answers.Length | UnsetType,
        Meta(description="By how much it exceeds the least; below 0 if it is too shallow."),
    ] = UNSET


class Cover(NamedTuple):
    """The least cover as printed, its rule, the concrete needed beside it, and the cover given, to the raceway."""

    buried: Buried
    least: Length
    rule: Backing
    concrete: Length
    planned: Length | None


def judge_cover(buried: Buried, cover: Length | None, sheet: Worksheet, *, concrete_told: bool = False) -> Cover:
    """Give the least cover of what is buried, and hold the cover over its top against it; `concrete_told` where it is
    told elsewhere that concrete is missing or thin.
    """
    least, rule = least_cover(buried, sheet)
    refer_to_a_raceway(buried, rule, sheet)
    concrete = _concrete(buried, rule, sheet, told=concrete_told)
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
    planned = None if cover is None else _over_the_raceway(buried, cover, least, sheet)
    if planned is not None:
        _judge_planned(planned, least, buried, rule, sheet)
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, _EXCAVATION_RULES)
    return Cover(buried, least, rule, concrete, planned)


def _over_the_raceway(buried: Buried, cover: Length, least: Length, sheet: Worksheet) -> Length:
    """Give the cover as the rules measure it, to the raceway, through the concrete above it; in the unit in which the
    least is told, for one is held against the other.
    """
    above = buried.concrete_above
    unit = cover.unit
    if sheet.tell.given(cover).unit != sheet.tell.given(least).unit:
        unit = least.unit
    elif above is None or not above.si:
        return cover
    return Length(without_noise(unit.from_si(cover.si + (0.0 if above is None else above.si))), unit)


def _judge_planned(planned: Length, least: Length, buried: Buried, rule: Backing, sheet: Worksheet) -> None:
    """Hold the cover as planned against the least."""
    shallow = under(planned.si, least.si)
    sheet.judge(not shallow)
    if shallow:
        told, required = sheet.tell.given(planned), sheet.tell.given(least)
        has, needs = apart(told, required)
        sheet.find(
            Severity.VIOLATION,
            "too_shallow",
            f"A cover of {has} is less than the {needs} required. Go deeper or change the wiring method.",
            rule,
            told,
            required,
            member=buried.places.cover,
        )


def _concrete(buried: Buried, rule: Backing, sheet: Worksheet, *, told: bool) -> Length:
    """Give the concrete needed beside the cover; a raceway not listed for direct burial needs an envelope."""
    if buried.method is not WiringMethod.NONMETALLIC_RACEWAY or buried.listed:
        return _NO_CONCRETE
    if buried.encased:
        _judge_envelope(buried, rule, sheet, told=told)
    elif buried.listed is None:
        _leave_listing_open(buried, rule, sheet)
    else:
        sheet.judge(within=False)
        least = sheet.tell.given(_ENVELOPE)
        words = f"{_NEEDS} {text_of(least)}: encase it."
        if not told:
            sheet.find(Severity.VIOLATION, "needs_concrete", words, rule, limit=least, member=buried.places.listed)
    return _ENVELOPE


def _judge_envelope(buried: Buried, rule: Backing, sheet: Worksheet, *, told: bool) -> None:
    """Hold the concrete around a raceway, as far as it was given, against the least; say what else is needed."""
    places, least = buried.places, sheet.tell.given(_ENVELOPE)
    sides = (
        (buried.concrete_above, places.concrete, "above it"),
        (buried.concrete_around, places.around, "beside or below it"),
    )
    unknown = [where for given, _, where in sides if given is None]
    thin = [(given, member, where) for given, member, where in sides if given is not None and _is_thin(given)]
    is_open = buried.listed is None
    sheet.judge((None if is_open else False) if thin else None if unknown else True)
    severity, code = (Severity.CAUTION, "concrete_not_judged") if is_open else (Severity.VIOLATION, "needs_concrete")
    for given, member, where in () if told else thin:
        figure = sheet.tell.given(given)
        has, needs = apart(figure, least)
        words = f"{_NEEDS} {needs}: {where} there is {has}." + (
            " Whether this one is listed is not known." if is_open else ""
        )
        sheet.find(severity, code, words, rule, figure, least, member=member)
    if unknown and not thin:
        words = f"{_NEEDS} {text_of(least)}: how much there is {' and '.join(unknown)} was not given."
        sheet.find(Severity.CAUTION, "concrete_not_judged", words, rule, limit=least, member=places.listed)


def _is_thin(concrete: Length) -> bool:
    return under(concrete.si, _ENVELOPE.si)


def _leave_listing_open(buried: Buried, rule: Backing, sheet: Worksheet) -> None:
    """Say that a raceway may need concrete, where nobody said that it is listed for burial without."""
    sheet.judge(None)
    least = sheet.tell.given(_ENVELOPE)
    sheet.find(
        Severity.CAUTION,
        "listing_not_judged",
        "Whether this raceway is listed for direct burial is not known. One that is not needs a concrete envelope of "
        f"at least {text_of(least)}: {buried.to_list}.",
        rule,
        limit=least,
        member=buried.places.listed,
    )


def assess(request: CoverRequest, sheet: Worksheet) -> Cover:
    """Judge the cover of a request."""
    sheet.follow_edition(request.code_edition)
    encased = sheet.settle("encased", request.encased, ENCASED)
    listed: bool | None = True
    if request.wiring_method is WiringMethod.NONMETALLIC_RACEWAY:
        listed = request.listed_for_direct_burial
    above, around = request.concrete_above, request.concrete_around
    if not encased:
        _refuse_concrete(request, sheet)
        above = around = None
    kind, location, voltage = request.wiring_method, request.location, request.voltage_class
    buried = Buried(kind, location, voltage, encased, listed, concrete_above=above, concrete_around=around)
    return judge_cover(buried, request.cover, sheet)


def _refuse_concrete(request: CoverRequest, sheet: Worksheet) -> None:
    """Refuse the concrete of an envelope where there is none."""
    faults = [
        sheet.fault(member, "contradiction", f"Only what is encased has concrete of an envelope {where} it.")
        for member, given, where in (
            ("concrete_above", request.concrete_above, "above"),
            ("concrete_around", request.concrete_around, "around"),
        )
        if given is not None and given.si
    ]
    if faults:
        raise UnanswerableError(*faults)


def tell(found: Cover, telling: Telling) -> CoverResult:
    """Put a cover into the caller's units."""
    planned = found.planned
    return CoverResult(
        minimum_cover=telling.given(found.least),
        rule=found.rule.citation,
        measured_from="from the top of the cable or raceway, not of its envelope, the shortest way to the top of "
        "finished grade",
        concrete_required=telling.given(found.concrete),
        cover_over_raceway=UNSET if planned is None else telling.given(planned),
        margin=UNSET if planned is None else telling.size(planned.si - found.least.si),
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
        "voltage_class": "up_to_1000_v",
        "encased": True,
        "listed_for_direct_burial": True,
        "cover": {"value": 24, "unit": "in"},
        "code_edition": "2023",
    },
)
