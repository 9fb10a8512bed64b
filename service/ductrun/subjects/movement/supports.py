"""POST /v1/supports: straps of conduit above ground."""

from __future__ import annotations

from typing import Annotated, Literal, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import supports as engineering
from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.backing import Backing
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import count, quantity
from ductrun.kit.forms import Edition, Form, Offset, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import SupportedConduitType
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.parts.choices import TradeSize
from ductrun.tables import TABLES, TRADE_SIZES
from ductrun.tables.rows import Support as SpacingRow
from ductrun.units import Length

END_DISTANCE = quantity("supports.end_distance", Length)
TERMINATION_COUNT = count("supports.termination_count")
MOST_SUPPORTS = 5_000  # a bound of the answer, like those of the forms
_TABLE_OF = {
    SupportedConduitType.PVC_SCHEDULE_40: "pvc",
    SupportedConduitType.PVC_SCHEDULE_80: "pvc",
    SupportedConduitType.RTRC: "rtrc",
    SupportedConduitType.RMC: "rmc",
}
_SPACINGS: dict[str, dict[str, SpacingRow]] = {}
for _row in TABLES["support_spacing"]:
    _sizes = TRADE_SIZES[TRADE_SIZES.index(_row.trade_size_from) : TRADE_SIZES.index(_row.trade_size_to) + 1]
    _SPACINGS.setdefault(_row.type, {}).update(dict.fromkeys(_sizes, _row))


class SupportedConduit(Form):
    """A conduit with a table of support spacing, by type and trade size."""

    kind: Literal["listed"] = Field(description="Fixed text that says: by type and trade size.")
    type: SupportedConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    trade_size: TradeSize = Field(description="Trade size, as the trade writes it.", examples=["2"])


class Supporting(Form):
    """How a run is supported."""

    termination_count: Omissible[Annotated[int, Field(ge=1, le=2)]] = Field(
        default=None,
        description="Ends of the run at a box or other termination; with one, the run goes on.",
        examples=[2],
        json_schema_extra=TERMINATION_COUNT.stated,
    )
    end_distance: Omissible[Offset] = Field(
        default=None,
        description=f"Distance of the end straps from the terminations, at most {END_DISTANCE.value}.",
        examples=[{"value": 2, "unit": "ft"}],
        json_schema_extra=END_DISTANCE.stated,
    )


class SupportsRequest(Supporting):
    """A straight run above ground."""

    conduit: SupportedConduit = Field(description="The conduit.")
    length: RunLength = Field(
        description="Length of the run above ground, between boxes, fittings or other terminations.",
        examples=[{"value": 100, "unit": "ft"}],
    )
    code_edition: Edition = None


class SupportsResult(Struct, frozen=True, gc=False):
    """How far apart, how many and where."""

    support_spacing: Annotated[answers.Length, Meta(description="Most that supports may stand apart, as printed.")]
    support_count: Annotated[int, Meta(description="Straps of the run.")]
    positions: Annotated[list[answers.Length], Meta(description="Where they stand along the run.")]
    end_distance: Annotated[answers.Length, Meta(description="Distance of the first strap from its termination.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Distance between straps; none for a single one.")
    ] = UNSET


class SupportSpacing(NamedTuple):
    """The most that supports of a conduit may stand apart, as printed, its rule, and the sheet of the conduit."""

    most: Length
    rule: Backing
    place: Worksheet


class Supported(NamedTuple):
    """The straps of a straight run and where they stand along it [m]."""

    spacing: SupportSpacing
    termination_count: int
    end_distance: Length
    positions: list[float]


def spacing_of(conduit: SupportedConduit, sheet: Worksheet) -> SupportSpacing:
    """Give the printed spacing of a conduit; a size without a row is answered with the sizes there are."""
    table = _TABLE_OF[conduit.type]
    row = _SPACINGS[table].get(conduit.trade_size)
    if row is None:
        has = list(_SPACINGS[table])
        raise UnanswerableError(
            sheet.fault(
                "trade_size",
                "trade_size_not_listed",
                f"The table of {conduit.type} has no trade size {conduit.trade_size}. It has {listing(has)}.",
                has,
            )
        )
    sheet.cite(row.source)
    return SupportSpacing(Length.parse(row.maximum_spacing_ft, "ft"), sheet.rule(f"supports_{table}"), sheet)


def support(given: Supporting, spacing: SupportSpacing, run: StraightRun, sheet: Worksheet) -> Supported:
    """Count the straps of a run and say where they go."""
    terminations = sheet.settle("termination_count", given.termination_count, TERMINATION_COUNT)
    end = sheet.settle("end_distance", given.end_distance, END_DISTANCE)
    _judge_end(end, spacing.rule, sheet)
    length, most = run.length, spacing.most
    if length / most.si > MOST_SUPPORTS:
        raise UnanswerableError(
            run.place.fault(
                "value",
                "too_long_for_one_list",
                f"That is more than {MOST_SUPPORTS} straps: give the run in parts.",
                maximum=Length(most.value * MOST_SUPPORTS, most.unit),
            )
        )
    places = engineering.support_positions(length, most.si, end.si, terminations)
    if sheet.working is not None:
        sheet.show(
            "n",
            "(L - 2 end) / spacing, rounded up, + 1",
            f"({length:.6g} m - 2 x {end.si:.6g} m) / {most.si:.6g} m",
            len(places),
        )
    spacing.place.find(
        Severity.NOTE,
        "straps_let_it_slide",
        "Straps hold the conduit but let it slide along as it moves with temperature; only anchors clamp it.",
        spacing.rule,
        member="",
    )
    return Supported(spacing, terminations, end, places)


def _judge_end(end: Length, rule: Backing, sheet: Worksheet) -> None:
    """Hold the distance of the end straps against the most that it may be."""
    too_far = over(end.si, END_DISTANCE.value.si)
    sheet.judge(not too_far)
    if too_far:
        told, most = sheet.tell.given(end), sheet.tell.given(END_DISTANCE.value)
        sheet.find(
            Severity.VIOLATION,
            "end_support_too_far",
            f"The end straps stand {text_of(told)} from the terminations; {text_of(most)} is the most.",
            rule,
            told,
            most,
            member="end_distance",
        )


def assess(request: SupportsRequest, sheet: Worksheet) -> Supported:
    """Support the run of a request."""
    sheet.follow_edition(request.code_edition)
    run = StraightRun(request.length.si, sheet.within("length"))
    return support(request, spacing_of(request.conduit, sheet.within("conduit")), run, sheet)


def tell(supported: Supported, telling: Telling) -> SupportsResult:
    """Tell how far apart the straps stand, how many there are and where."""
    places = supported.positions
    return SupportsResult(
        support_spacing=telling.given(supported.spacing.most),
        support_count=len(places),
        positions=[telling.distance(place) for place in places],
        end_distance=telling.distance(places[0]),
        actual_spacing=telling.distance(places[1] - places[0]) if len(places) > 1 else UNSET,
    )


OPERATION = Operation(
    name="supports",
    operation_id="calculate_supports",
    summary="Supports above ground",
    description="Gives how far apart straps may stand for a type and trade size, how many a straight run needs and "
    f"where each goes, the end straps within {END_DISTANCE.value} of the terminations.",
    request=SupportsRequest,
    result=SupportsResult,
    assess=assess,
    tell=tell,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"},
        "length": {"value": 100, "unit": "ft"},
        "termination_count": 2,
        "end_distance": {"value": 3, "unit": "ft"},
        "code_edition": "2023",
    },
)
