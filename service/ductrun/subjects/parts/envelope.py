"""The concrete around a bank, and the one envelope that encasement, trench and reinforcing read.

Its members (`concrete_cover`, `pour_shape`, the width of a trench that is the form) stand side by side in the form that
asks for them: the sheet is that form's own.
"""

from __future__ import annotations

from pydantic import Field

from ductrun.engineering import bank as engineering
from ductrun.engineering.bank import Bank, Concrete, Envelope
from ductrun.engineering.rounding import under
from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, choice, quantity
from ductrun.kit.forms import Clearance, Form, Omissible
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES
from ductrun.units import Code, Length


class PourShape(Code):
    """Whether concrete fills the bounding rectangle or steps with the tiers."""

    BOUNDING_RECTANGLE = "bounding_rectangle"
    STEPPED = "stepped"


class ConcreteCover(Form):
    """Concrete outside the ducts."""

    top: Omissible[Clearance] = Field(
        default=None, description="Above the top tier.", examples=[{"value": 3, "unit": "in"}]
    )
    bottom: Omissible[Clearance] = Field(
        default=None, description="Below the bottom tier.", examples=[{"value": 3, "unit": "in"}]
    )
    side: Omissible[Clearance] = Field(
        default=None, description="Beside the widest tier, each side.", examples=[{"value": 3, "unit": "in"}]
    )


def _with_spread(default: Default[Length]) -> Default[Length]:
    """Tell the published spread with the default."""
    sides = [side for row in TABLES["encasement_cover"] for side in (row.top_in, row.bottom_in, row.side_in)]
    return default.noting(f"published from {min(sides):g} to {max(sides):g} in")


CONCRETE_COVER = _with_spread(quantity("encasement.cover", Length))
POUR_SHAPE = choice("encasement.pour_shape", PourShape)
[_LEAST] = [row for row in TABLES["encasement_cover"] if row.kind == "least"]
LEAST_CONCRETE = {
    "top": Length.parse(_LEAST.top_in, "in"),
    "bottom": Length.parse(_LEAST.bottom_in, "in"),
    "side": Length.parse(_LEAST.side_in, "in"),
}
_LARGEST_LEAST = max(least.si for least in LEAST_CONCRETE.values())


def concrete_of(given: ConcreteCover | None, sheet: Worksheet) -> Concrete:
    """Settle the concrete outside the ducts; a cover thinner than the least published envelope is cautioned."""
    top = sheet.settle("concrete_cover/top", None if given is None else given.top, CONCRETE_COVER)
    bottom = sheet.settle("concrete_cover/bottom", None if given is None else given.bottom, CONCRETE_COVER)
    side = sheet.settle("concrete_cover/side", None if given is None else given.side, CONCRETE_COVER)
    concrete = Concrete(top.si, bottom.si, side.si)
    if under(min(concrete), _LARGEST_LEAST):
        _caution_thin({"top": top, "bottom": bottom, "side": side}, sheet)
    return concrete


def _caution_thin(covers: dict[str, Length], sheet: Worksheet) -> None:
    for side, cover in covers.items():
        least = LEAST_CONCRETE[side]
        if under(cover.si, least.si):
            sheet.find(
                Severity.CAUTION,
                "thin_envelope",
                f"The {side} cover of {text_of(sheet.tell.given(cover))} is under the {least} of concrete required "
                "around a raceway that is approved only when encased.",
                published(_LEAST.source),
                sheet.tell.given(cover),
                sheet.tell.given(least),
                member=f"concrete_cover/{side}",
            )


def trench_width_of(given: Length, least: float, member: str, code: str, sheet: Worksheet) -> float:
    """Give the width of a trench [m] that holds an envelope of a least width [m]; refuse one that does not."""
    if under(given.si, least):
        minimum = given.unit.from_si(least)
        raise UnanswerableError(
            sheet.fault(
                f"{member}/value",
                code,
                f"The bank with what lies beside it takes {minimum:.4g} {given.unit.value}: the trench cannot be "
                "narrower.",
                minimum=Length(minimum, given.unit),
            )
        )
    return given.si


def poured(bank: Bank, concrete: Concrete, shape: PourShape | None, sheet: Worksheet) -> Envelope:
    """Give the envelope of a formed pour."""
    settled = sheet.settle("pour_shape", shape, POUR_SHAPE)
    return engineering.encased(bank, concrete, stepped=settled is PourShape.STEPPED)


def poured_in_trench(
    bank: Bank, concrete: Concrete, width: float, shape: PourShape | None, sheet: Worksheet
) -> Envelope:
    """Give the envelope of a pour whose form is a trench of a width [m]; it cannot step with the tiers."""
    if shape is PourShape.STEPPED:
        raise UnanswerableError(
            sheet.fault(
                "pour_shape",
                "not_with_a_trench_form",
                "Where the trench is the form the pour fills its width: a stepped pour needs forms.",
                [PourShape.BOUNDING_RECTANGLE.value],
            )
        )
    return engineering.trench_formed(bank, concrete, width)


def buried_directly(
    bank: Bank, concrete_cover: ConcreteCover | None, shape: PourShape | None, sheet: Worksheet
) -> Envelope:
    """Give the envelope of ducts without concrete; refuse what only concrete can have."""
    faults = []
    if concrete_cover is not None:
        faults.append(
            sheet.fault("concrete_cover", "contradiction", "Ducts that are buried directly have no concrete cover.")
        )
    if shape is PourShape.STEPPED:
        faults.append(sheet.fault("pour_shape", "contradiction", "Ducts that are buried directly have no pour."))
    if faults:
        raise UnanswerableError(*faults)
    return engineering.bare(bank)
