"""POST /v1/permitted-use: is this conduit allowed here."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering.rounding import over
from ductrun.kit.choices import CodeEdition, Severity
from ductrun.kit.defaults import standing_of
from ductrun.kit.forms import AmbientTemperature, Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Worksheet, text_of
from ductrun.subjects.conduit.choices import ConduitUse, UseVerdict
from ductrun.subjects.parts.choices import ConduitType
from ductrun.tables import TABLES
from ductrun.units import Temperature

PVC_AMBIENT_MOST = Temperature.parse(50, "degC")  # 352.12
_USES = {(row.family, row.use): row for row in TABLES["permitted_uses"]}
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
    ConduitType.IMC: "rmc",
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
}


class PermittedUseRequest(Form):
    """A conduit and everything it meets."""

    type: ConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    uses: Annotated[list[ConduitUse], Field(min_length=1, max_length=20)] = Field(
        description="Places and ways it is used.", examples=[["direct_burial", "emerging_from_grade"]]
    )
    ambient_temperature: Omissible[AmbientTemperature] = Field(
        default=None, description="Highest temperature around it.", examples=[{"value": 110, "unit": "degF"}]
    )
    code_edition: Omissible[CodeEdition] = Field(
        default=None, description="Edition of NFPA 70 to follow.", examples=["2023"]
    )


class JudgedUse(Struct, frozen=True, gc=False):
    """One use."""

    use: ConduitUse
    verdict: Annotated[UseVerdict, Meta(description="Permitted, not, or under the condition of the finding.")]
    source: Annotated[str, Meta(description="Where that stands, or that it is from memory.")]


class PermittedUseResult(Struct, frozen=True, gc=False):
    """Whether the conduit may be used so."""

    permitted: Annotated[bool, Meta(description="Whether no use is forbidden; conditions may remain.")]
    uses: Annotated[list[JudgedUse], Meta(description="Each use, in the order asked.")]


def compute(request: PermittedUseRequest, sheet: Worksheet) -> PermittedUseResult:
    """Judge each use of a conduit."""
    sheet.follow_edition(request.code_edition)
    judged: list[JudgedUse] = []
    for use in request.uses:
        row = _USES[_FAMILIES[request.type], use]
        verdict = UseVerdict(row.verdict)
        sheet.cite(row.source)
        judged.append(JudgedUse(use, verdict, standing_of(row)))
        name, where = _NAMES.get(row.family, row.family.upper()), _WORDS[use]
        because = f": {row.note}" if row.note else ""
        if verdict is UseVerdict.NO:
            sheet.find(
                Severity.VIOLATION,
                "use_not_permitted",
                f"{name} is not permitted {where}{because}. Take another conduit there.",
                standing_of(row),
            )
        elif verdict is UseVerdict.CAUTION:
            sheet.find(Severity.CAUTION, "use_under_condition", f"{name} {where}{because}.", standing_of(row))
    hot = request.ambient_temperature
    too_hot = hot is not None and request.type.value.startswith("pvc_") and over(hot.si, PVC_AMBIENT_MOST.si)
    if too_hot and hot is not None:
        sheet.cite("nfpa70-352-10")
        sheet.find(
            Severity.VIOLATION,
            "too_hot_for_pvc",
            "PVC conduit is limited to an ambient of 50 degC (122 degF) unless listed for more; "
            f"{text_of(sheet.tell.given(hot))} is over it.",
            "NFPA 70, 352.12",
            sheet.tell.given(hot),
            sheet.tell.given(PVC_AMBIENT_MOST),
        )
    forbidden = sum(one.verdict is UseVerdict.NO for one in judged) + too_hot
    verdicts = ", ".join(f"{one.use} {one.verdict}" for one in judged)
    sheet.show("forbidden", "uses with the verdict no, and 1 for an ambient over the limit", verdicts, forbidden)
    sheet.find(
        Severity.NOTE,
        "listing_decides",
        "The listing of the product, its marking and the adopted code with its amendments decide.",
        "common practice, no source",
    )
    return PermittedUseResult(forbidden == 0, judged)


OPERATION = Operation(
    name="permitted-use",
    operation_id="judge_permitted_use",
    summary="Permitted uses of conduit",
    description="Judges whether a type of conduit may be used above ground, in sunlight, in earth, in concrete, under "
    "a building, where it is exposed to damage and more, each with its rule.",
    request=PermittedUseRequest,
    result=PermittedUseResult,
    compute=compute,
    example={
        "type": "pvc_schedule_40",
        "uses": ["direct_burial", "concrete_encasement", "emerging_from_grade"],
        "ambient_temperature": {"value": 110, "unit": "degF"},
        "code_edition": "2023",
    },
)
