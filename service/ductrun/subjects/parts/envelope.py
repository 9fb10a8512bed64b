"""The concrete around a bank, and the one envelope that encasement, trench and reinforcing read."""

from __future__ import annotations

from typing import NamedTuple

from pydantic import Field

from ductrun.engineering import bank as engineering
from ductrun.engineering.bank import Bank, Concrete, Envelope
from ductrun.engineering.rounding import under
from ductrun.kit.backing import backing_of, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, choice, number, quantity
from ductrun.kit.forms import Clearance, Form, Omissible
from ductrun.kit.wording import apart, enough_text, text_of, without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.bank import DuctBank, conduits_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.tables import TABLES
from ductrun.units import Code, Length


class PourShape(Code):
    """Whether concrete fills the bounding rectangle or steps with the tiers."""

    BOUNDING_RECTANGLE = "bounding_rectangle"
    STEPPED = "stepped"


def _with_spread(default: Default[Length]) -> Default[Length]:
    """Tell the published spread with the default."""
    sides = [side for row in TABLES["encasement_cover"] for side in (row.top_in, row.bottom_in, row.side_in)]
    return default.noting(f"published from {min(sides):g} to {max(sides):g} in")


CONCRETE_COVER = _with_spread(quantity("encasement.cover", Length))
POUR_SHAPE = choice("encasement.pour_shape", PourShape)
SIDE_SLOPE = number("trench.side_slope")


class ConcreteCover(Form):
    """Concrete outside the ducts."""

    top: Omissible[Clearance] = Field(
        default=None,
        description="Above the top tier.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=CONCRETE_COVER.stated,
    )
    bottom: Omissible[Clearance] = Field(
        default=None,
        description="Below the bottom tier.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=CONCRETE_COVER.stated,
    )
    side: Omissible[Clearance] = Field(
        default=None,
        description="Beside the widest tier, each side.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=CONCRETE_COVER.stated,
    )


[_LEAST] = [row for row in TABLES["encasement_cover"] if row.kind == "least"]
LEAST_CONCRETE = {
    "top": Length.parse(_LEAST.top_in, "in"),
    "bottom": Length.parse(_LEAST.bottom_in, "in"),
    "side": Length.parse(_LEAST.side_in, "in"),
}
_LARGEST_LEAST = max(least.si for least in LEAST_CONCRETE.values())
_BURIED = {row.family: row for row in TABLES["permitted_uses"] if row.use == "direct_burial"}
_DB, _DB_BACKING = _BURIED["db"], backing_of(_BURIED["db"])
_DUCTS = {
    ConduitType.PVC_TYPE_A: "pvc_type_a",
    ConduitType.PVC_TYPE_EB: "eb",
    ConduitType.PVC_EB_20: "eb",
    ConduitType.PVC_EB_35: "eb",
}
ENCASED_ONLY = {kind for kind, family in _DUCTS.items() if _BURIED[family].verdict == "no"}
_IF_NOT_LISTED = {ConduitType.PVC_DB_60, ConduitType.PVC_DB_100, ConduitType.PVC_DB_120}
_NEVER_NEEDING = set(ConduitType) - ENCASED_ONLY - _IF_NOT_LISTED


class AskedPour(NamedTuple):
    """What is asked of the concrete around a bank, each with the sheet of the place where it was given."""

    bank: DuctBank
    bank_place: Worksheet
    cover: ConcreteCover | None
    cover_place: Worksheet
    shape: PourShape | None
    shape_place: Worksheet


class Need(NamedTuple):
    """Whether a duct is approved only when encased, None where that is not known, and the sheet of its conduit."""

    encased_only: bool | None
    place: Worksheet


def need_of(asked: AskedPour) -> Need:
    """Say whether any duct of a bank is approved only when encased.

    Of a duct by its diameters that is not known, nor of burial duct, which needs concrete unless it is listed.
    """
    bank = asked.bank
    if not bank.tier_ducts and bank.conduit.type in _NEVER_NEEDING:
        return Need(False, asked.bank_place)
    unknown = None
    for conduit, place in conduits_of(asked.bank, asked.bank_place):
        if conduit.type in ENCASED_ONLY:
            return Need(True, place)
        if unknown is None and (conduit.type is None or conduit.type in _IF_NOT_LISTED):
            unknown = Need(None, place)
    return unknown or Need(False, asked.bank_place)


def concrete_of(asked: AskedPour) -> Concrete:
    """Settle the concrete outside the ducts, and hold it against the least envelope of a duct that needs one."""
    given, sheet = asked.cover, asked.cover_place
    top = sheet.settle("top", None if given is None else given.top, CONCRETE_COVER)
    bottom = sheet.settle("bottom", None if given is None else given.bottom, CONCRETE_COVER)
    side = sheet.settle("side", None if given is None else given.side, CONCRETE_COVER)
    concrete = Concrete(top.si, bottom.si, side.si)
    need = need_of(asked).encased_only
    thin = under(min(concrete), _LARGEST_LEAST) and _find_thin(
        {"top": top, "bottom": bottom, "side": side}, need, sheet
    )
    if need or (thin and need is None):
        sheet.judge(None if need is None else not thin)
    return concrete


_THIN = {
    True: (Severity.VIOLATION, "This one is: make the concrete thicker."),
    None: (Severity.CAUTION, "Whether this one is was not judged: ask its maker, or make the concrete thicker."),
    False: (Severity.CAUTION, "This one is not: hold it against what the owner asks for."),
}


def _find_thin(covers: dict[str, Length], need: bool | None, sheet: Worksheet) -> bool:
    """Find every side on which the concrete is less than the least envelope; say whether there is any."""
    severity, words = _THIN[need]
    thin = False
    for side, cover in covers.items():
        if under(cover.si, LEAST_CONCRETE[side].si):
            thin = True
            told, least = sheet.tell.given(cover), sheet.tell.given(LEAST_CONCRETE[side])
            has, needs = apart(told, least)
            sheet.find(
                severity,
                "thin_envelope",
                f"The {side} cover of {has} is under the {needs} of concrete required around a "
                f"raceway that is approved only when encased. {words}",
                published(_LEAST.source),
                told,
                least,
                member=side,
            )
    return thin


def trench_width_of(given: Length, least: float, place: Worksheet) -> float:
    """Give the width of a trench [m] that holds an envelope of a least width [m]; refuse one that does not."""
    if under(given.si, least):
        minimum = Length(without_noise(given.unit.from_si(least)), given.unit)
        raise UnanswerableError(
            place.fault(
                "value",
                "narrower_than_the_bank",
                f"The bank with what lies beside it takes {enough_text(minimum)}: the trench cannot be narrower.",
                minimum=minimum,
            )
        )
    return given.si


def poured(bank: Bank, asked: AskedPour, concrete: Concrete) -> Envelope:
    """Give the envelope of a formed pour."""
    shape = asked.shape_place.settle("", asked.shape, POUR_SHAPE)
    return engineering.encased(bank, concrete, stepped=shape is PourShape.STEPPED)


def poured_in_trench(
    bank: Bank, asked: AskedPour, concrete: Concrete, width: float, side_slope: float = 0.0
) -> Envelope:
    """Give the envelope of a pour whose form is a trench; it cannot step with the tiers.

    `width` [m] is that of the trench where the concrete begins, `side_slope` of its sides horizontal to 1.
    """
    if asked.shape is PourShape.STEPPED:
        raise UnanswerableError(
            asked.shape_place.fault(
                "",
                "not_with_a_trench_form",
                "Where the trench is the form the pour fills its width: a stepped pour needs forms.",
                [PourShape.BOUNDING_RECTANGLE.value],
            )
        )
    return engineering.trench_formed(bank, concrete, width, side_slope)


def buried_directly(bank: Bank, asked: AskedPour) -> Envelope:
    """Give the envelope of ducts without concrete; refuse what only concrete can have, find ducts that need it."""
    faults = []
    if asked.cover is not None:
        faults.append(
            asked.cover_place.fault("", "contradiction", "Ducts that are buried directly have no concrete cover.")
        )
    if asked.shape is PourShape.STEPPED:
        faults.append(asked.shape_place.fault("", "contradiction", "Ducts that are buried directly have no pour."))
    if faults:
        raise UnanswerableError(*faults)
    need = need_of(asked)
    if need.encased_only:
        least = need.place.tell.given(LEAST_CONCRETE["top"])
        need.place.find(
            Severity.VIOLATION,
            "needs_concrete",
            f"This duct is approved only when encased: it needs a concrete envelope of at least {text_of(least)}. "
            "Encase it, or take a duct for direct burial.",
            published(_LEAST.source),
            limit=least,
            member="",
        )
    return engineering.bare(bank)


def caution_burial_duct(asked: AskedPour) -> None:
    """Caution that burial duct lies in earth under a condition, once for a bank; the rule says which."""
    for conduit, place in conduits_of(asked.bank, asked.bank_place):
        if conduit.type in _IF_NOT_LISTED:
            place.judge(None)
            place.find(
                Severity.CAUTION,
                "use_under_condition",
                f"DB duct is permitted buried directly, without concrete, under a condition: {_DB.note}. Whether that "
                "is met was not judged.",
                _DB_BACKING,
                member="",
            )
            return
