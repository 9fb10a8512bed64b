"""POST /v1/permitted-use: is this conduit allowed here."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE, Backing, backing_of
from ductrun.kit.choices import CodeEdition, Severity, Verdict
from ductrun.kit.forms import AmbientTemperature, Edition, Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.conduit.choices import ConduitUse
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import PlacedType
from ductrun.tables import TABLES
from ductrun.tables.ground_rows import PermittedUse as PermittedUseRow
from ductrun.units import Temperature


class JudgedUse(Struct, frozen=True, gc=False):
    """One use."""

    use: Annotated[ConduitUse, Meta(description="The use asked about.")]
    verdict: Annotated[
        Verdict, Meta(description="Permitted, not, or not judged: permitted under a condition that was not looked at.")
    ]
    citation: Annotated[str, Meta(description="Where that stands, or that it is from memory.")]
    condition: Annotated[
        str | UnsetType, Meta(description="What it hangs on where it is not judged, if that is on file.")
    ] = UNSET


MOST_USES = 20
_VERDICTS = {
    "yes": Verdict.COMPLIES,
    "no": Verdict.VIOLATES,
    "caution": Verdict.NOT_JUDGED,  # under a condition
    "open": Verdict.NOT_JUDGED,  # the edition does not say
}
_SECTIONS = {row.source: row for row in TABLES["code_sections"] if row.rule.startswith("uses_")}


class _OnFile(NamedTuple):
    """What a code edition says of a use: its row, the verdict told, and what backs it."""

    row: PermittedUseRow
    told: JudgedUse
    backing: Backing


def _on_file(row: PermittedUseRow, edition: str) -> _OnFile:
    """Give what a row says in an edition, with its section there."""
    sections = _SECTIONS.get(row.source)
    section = None if sections is None else getattr(sections, f"edition_{edition}")
    backing = backing_of(row, None if section is None else f"NFPA 70-{edition}, {section}")
    verdict = _VERDICTS[row.verdict]
    condition = row.note if row.note and row.verdict == "caution" else UNSET
    return _OnFile(row, JudgedUse(ConduitUse(row.use), verdict, backing.citation, condition), backing)


_USES = {
    (row.family, row.use, edition.value): _on_file(row, edition.value)
    for edition in CodeEdition
    for row in sorted(TABLES["permitted_uses"], key=lambda one: one.from_edition)  # the latest that holds is kept
    if row.from_edition <= edition.value
}
_LIMITS = {row.material: Temperature.parse(row.limit, row.unit) for row in TABLES["service_temperatures"]}
_AMBIENTS = {
    row.family: (row, _LIMITS[row.material] if row.rule == "limited" else None, backing_of(row))
    for row in TABLES["ambient_limits"]
}
_FAMILIES = {
    ConduitType.PVC_SCHEDULE_40: "pvc_schedule_40",
    ConduitType.PVC_SCHEDULE_80: "pvc_schedule_80",
    ConduitType.PVC_TYPE_A: "pvc_type_a",
    ConduitType.PVC_TYPE_EB: "eb",
    ConduitType.PVC_EB_20: "eb",
    ConduitType.PVC_EB_35: "eb",
    ConduitType.PVC_DB_60: "db",
    ConduitType.PVC_DB_100: "db",
    ConduitType.PVC_DB_120: "db",
    ConduitType.HDPE_SCHEDULE_40: "hdpe",
    ConduitType.EMT: "emt",
    ConduitType.IMC: "imc",
    ConduitType.RMC: "rmc",
    ConduitType.ENT: "ent",
    ConduitType.FMC: "fmc",
    ConduitType.LFMC: "lfmc",
    ConduitType.LFNC_A: "lfnc",
    ConduitType.LFNC_B: "lfnc",
    ConduitType.RTRC: "rtrc",
}
_NAMES = {
    "pvc_schedule_40": "Schedule 40 PVC",
    "pvc_schedule_80": "Schedule 80 PVC",
    "pvc_type_a": "Type A PVC",
    "eb": "EB duct",
    "db": "DB duct",
}
_WORDS = {
    ConduitUse.ABOVE_GROUND: "above ground",
    ConduitUse.SUNLIGHT: "in sunlight",
    ConduitUse.PHYSICAL_DAMAGE: "where exposed to physical damage",
    ConduitUse.DIRECT_BURIAL: "buried directly, without concrete",
    ConduitUse.CONCRETE_ENCASEMENT: "in concrete",
    ConduitUse.DIRECTIONAL_BORE: "in a directional bore",
    ConduitUse.UNDER_BUILDING: "under a building",
    ConduitUse.HAZARDOUS_LOCATION: "in a hazardous location",
    ConduitUse.EMERGING_FROM_GRADE: "where it emerges from grade",
    ConduitUse.WITHIN_BUILDING: "within a building",
    ConduitUse.WET_LOCATION: "in a wet location",
    ConduitUse.CORROSIVE_INFLUENCE: "under corrosive influence",
    ConduitUse.CINDER_FILL: "in cinder fill",
    ConduitUse.PLENUM: "in a plenum",
    ConduitUse.SEVERE_PHYSICAL_DAMAGE: "where exposed to severe physical damage",
}


class Using(Form):
    """Everything a conduit meets."""

    uses: Annotated[list[ConduitUse], Field(min_length=1, max_length=MOST_USES)] = Field(
        description="Places and ways it is used.", examples=[["direct_burial", "emerging_from_grade"]]
    )
    ambient_temperature: Omissible[AmbientTemperature] = Field(
        default=None, description="Highest temperature around it.", examples=[{"value": 110, "unit": "degF"}]
    )


class PermittedUseRequest(Using):
    """A conduit and everything it meets."""

    conduit_type: ConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    code_edition: Edition = None


class PermittedUseResult(Struct, frozen=True, gc=False):
    """Whether the conduit may be used so."""

    uses: Annotated[list[JudgedUse], Meta(description="Each use, in the order asked.", max_length=MOST_USES)]


class Judged(NamedTuple):
    """The verdict on each use, in the order asked, and whether the conduit bears the ambient: None if not judged."""

    uses: list[JudgedUse]
    bears_ambient: bool | None

    @property
    def forbidden_count(self) -> int:
        """The number of uses that are not permitted, the ambient among them."""
        return sum(use.verdict is Verdict.VIOLATES for use in self.uses) + (self.bears_ambient is False)

    @property
    def within(self) -> bool | None:
        """Whether all is permitted; None where that hangs on a condition, or was not judged."""
        if self.forbidden_count:
            return False
        if any(use.verdict is Verdict.NOT_JUDGED for use in self.uses):
            return None
        return self.bears_ambient


def judge(given: Using, conduit_type: PlacedType, sheet: Worksheet) -> Judged:
    """Judge each use of a type of conduit, and the temperature around it."""
    uses = [_judged(use, conduit_type.type, index, sheet) for index, use in enumerate(given.uses)]
    judged = Judged(uses, _bears_ambient(given.ambient_temperature, conduit_type.type, sheet))
    if sheet.working is not None:
        verdicts = ", ".join(f"{one.use} {one.verdict}" for one in uses)
        sheet.show(
            "forbidden",
            "uses that violate, and 1 for an ambient over the limit",
            verdicts,
            judged.forbidden_count,
        )
    conduit_type.sheet.find(
        Severity.NOTE,
        "listing_decides",
        "The listing of the product, its marking and the adopted code with its amendments decide.",
        PRACTICE,
        member="",
    )
    sheet.judge(judged.within)
    return judged


def _name_of(conduit_type: ConduitType) -> str:
    family = _FAMILIES[conduit_type]
    return _NAMES.get(family, family.upper())


def _judged(use: ConduitUse, conduit_type: ConduitType, index: int, sheet: Worksheet) -> JudgedUse:
    name, where, member = _name_of(conduit_type), _WORDS[use], f"uses/{index}"
    found = _USES.get((_FAMILIES[conduit_type], use, sheet.edition))
    if found is None:
        words = f"Whether {name} is permitted {where} is not on file and was not judged: ask the authority."
        sheet.find(Severity.CAUTION, "use_not_judged", words, PRACTICE, member=member)
        return JudgedUse(use, Verdict.NOT_JUDGED, PRACTICE.citation)
    row, judged, backing = found
    sheet.cite(row.source)
    because = f": {row.note}" if row.note else ""
    if judged.verdict is Verdict.COMPLIES:
        if row.note:
            sheet.find(Severity.NOTE, "use_permitted", f"{name} is permitted {where}{because}.", backing, member=member)
    elif judged.verdict is Verdict.VIOLATES:
        sheet.find(
            Severity.VIOLATION,
            "use_not_permitted",
            f"{name} is not permitted {where}{because}. Take another conduit there.",
            backing,
            member=member,
        )
    elif row.verdict == "open":
        words = f"Whether {name} is permitted {where} was not judged{because}. Ask the authority."
        sheet.find(Severity.CAUTION, "use_not_judged", words, backing, member=member)
    else:
        sheet.find(
            Severity.CAUTION,
            "use_under_condition",
            f"{name} is permitted {where}, under a condition{because}. Whether that is met was not judged.",
            backing,
            member=member,
        )
    return judged


def _bears_ambient(ambient: Temperature | None, conduit_type: ConduitType, sheet: Worksheet) -> bool | None:
    """Say whether a type bears the temperature around it; None where no limit of it is on file."""
    if ambient is None:
        return True
    row, limit, backing = _AMBIENTS[_FAMILIES[conduit_type]]
    if row.code_section:
        backing = sheet.rule(row.code_section)
    sheet.cite(backing.source_id)
    told, name = sheet.tell.given(ambient), _name_of(conduit_type)
    if row.rule == "by_listing":
        words = f"The listing of {name} says what ambient it bears: {text_of(told)} was not judged."
        sheet.find(Severity.CAUTION, "ambient_not_judged", words, backing, told, member="ambient_temperature")
        return None
    if limit is None or not over(ambient.si, limit.si):
        return True
    most = sheet.tell.given(limit)
    is_hot, bears = apart(told, most)
    sheet.find(
        Severity.VIOLATION,
        "ambient_exceeded",
        f"{name} is limited to an ambient of {bears} unless listed for more; {is_hot} is over it. Keep "
        "it away from the heat, or take another conduit there.",
        backing,
        told,
        most,
        member="ambient_temperature",
    )
    return False


def assess(request: PermittedUseRequest, sheet: Worksheet) -> Judged:
    """Judge the uses of a request."""
    sheet.follow_edition(request.code_edition)
    return judge(request, PlacedType(request.conduit_type, sheet.within("conduit_type")), sheet)


def tell(judged: Judged, _telling: Telling) -> PermittedUseResult:
    """Tell the verdicts; they have no units."""
    return PermittedUseResult(judged.uses)


OPERATION = Operation(
    name="permitted-use",
    operation_id="judge_permitted_use",
    summary="Permitted uses of conduit",
    description="Judges whether a type of conduit may be used above ground, in sunlight, in earth, in concrete, under "
    "a building, where it is exposed to damage and more, each with its rule.",
    request=PermittedUseRequest,
    result=PermittedUseResult,
    assess=assess,
    tell=tell,
    example={
        "conduit_type": "pvc_schedule_40",
        "uses": ["direct_burial", "concrete_encasement", "emerging_from_grade"],
        "ambient_temperature": {"value": 110, "unit": "degF"},
        "code_edition": "2023",
    },
)
