"""How far apart supports of a conduit may stand, by type, trade size, coupling and code edition."""

from __future__ import annotations

from typing import Literal, NamedTuple

from pydantic import Field

from ductrun.kit.backing import Backing, backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, choice
from ductrun.kit.forms import Form, Omissible
from ductrun.kit.wording import listing, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import Coupling, SupportedConduitType
from ductrun.subjects.parts.choices import TradeSize
from ductrun.tables import TABLES, TRADE_SIZES
from ductrun.tables.rows import Support
from ductrun.units import Length

COUPLING = choice("supports.coupling", Coupling)
_TABLE_OF = {kind: kind.value.split("_")[0] for kind in SupportedConduitType}  # schedules and kinds share a rule
_ROWS: dict[tuple[str, str], dict[str, Support]] = {}
for _row in TABLES["support_spacing"]:
    _sizes = TRADE_SIZES[TRADE_SIZES.index(_row.trade_size_from) : TRADE_SIZES.index(_row.trade_size_to) + 1]
    _ROWS.setdefault((_row.type, _row.coupling), {}).update(dict.fromkeys(_sizes, _row))
CLOSEST = min(Length.parse(row.maximum_spacing_ft, "ft").si for row in TABLES["support_spacing"])  # of any rule [m]
_COUPLED = frozenset(table for table, coupling in _ROWS if coupling)
_ENDS = {row: Default(Length.parse(row.securing_within_ft, "ft"), backing_of(row)) for row in TABLES["support_spacing"]}


class SupportedConduit(Form):
    """A conduit with a rule of support spacing, by type and trade size."""

    kind: Literal["listed"] = Field(description="Fixed text that says: by type and trade size.")
    type: SupportedConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    trade_size: TradeSize = Field(description="Trade size, as the trade writes it.", examples=["2"])
    coupling: Omissible[Coupling] = Field(
        default=None,
        description="How the lengths are coupled, of rmc and imc alone.",
        examples=["threaded"],
        json_schema_extra=COUPLING.stated,
    )


class SupportSpacing(NamedTuple):
    """The most that supports of a conduit may stand apart, as printed, its rule, and the sheet of the conduit.

    `end` is the most that the first and last may stand from a termination; `family` the kind its rule is written for.
    """

    most: Length
    end: Default[Length]
    rule: Backing
    family: str
    place: Worksheet


def spacing_of(conduit: SupportedConduit, sheet: Worksheet) -> SupportSpacing:
    """Give the printed spacing of a conduit; a size without a row is answered with the sizes there are."""
    family = _TABLE_OF[conduit.type]
    coupling = _coupling_of(conduit, family, sheet)
    rows = _ROWS[family, coupling or ""]
    row = rows.get(conduit.trade_size)
    if row is None or row.from_edition > sheet.edition:
        has = [size for size, one in rows.items() if one.from_edition <= sheet.edition]
        raise UnanswerableError(
            sheet.fault(
                "trade_size",
                "trade_size_not_listed",
                f"The support rule of {conduit.type} has no trade size {conduit.trade_size}. It has {listing(has)}.",
                has,
            )
        )
    sheet.cite(row.source)
    rule = sheet.rule(f"supports_{family}_{coupling}" if coupling else f"supports_{family}")
    spacing = SupportSpacing(Length.parse(row.maximum_spacing_ft, "ft"), _ENDS[row], rule, family, sheet)
    if coupling is Coupling.THREADED:
        _report_coupling(spacing, _ROWS[family, Coupling.THREADLESS][conduit.trade_size])
    return spacing


def _coupling_of(conduit: SupportedConduit, family: str, sheet: Worksheet) -> Coupling | None:
    """Settle the coupling of a conduit whose spacing hangs on it; of any other there is none to give."""
    if family in _COUPLED:
        return sheet.settle("coupling", conduit.coupling, COUPLING)
    if conduit.coupling is None:
        return None
    raise UnanswerableError(
        sheet.fault("coupling", "contradiction", "The spacing hangs on the coupling for rmc and imc alone.")
    )


def _report_coupling(spacing: SupportSpacing, otherwise: Support) -> None:
    """Say for which couplings a spacing holds, where others ask for less."""
    tell = spacing.place.tell
    most, less = tell.given(spacing.most), tell.given(Length.parse(otherwise.maximum_spacing_ft, "ft"))
    if otherwise.maximum_spacing_ft >= spacing.most.value:
        return
    spacing.place.find(
        Severity.CAUTION,
        "spacing_of_threaded_couplings",
        f"{text_of(most)} holds for straight runs with threaded couplings, whose supports keep strain from the ends; "
        f"with threadless couplings it is {text_of(less)}.",
        spacing.rule,
        most,
        less,
        member="",
    )
