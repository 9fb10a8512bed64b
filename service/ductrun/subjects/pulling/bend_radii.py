"""The least radii of bends: of the cable drawn through them, and of the conduit as bought or bent in the field."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.backing import PRACTICE, Backing, published
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError
from ductrun.subjects.parts.cable_set import CableSet, Line
from ductrun.subjects.parts.choices import BendMade, CableShielding, CableType, ConduitType, TradeSize
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.parts.route import MADE, PlacedRoute, inside
from ductrun.tables import TABLES
from ductrun.units import Length

_CABLE_RADII = published("nfpa70-305-5")
_BY_TYPE = _CABLE_RADII.of("by the cable type")._replace(standing=Standing.DERIVED)
_STRICTER = _CABLE_RADII.of("the stricter, for no cable type is given")._replace(standing=Standing.DERIVED)
_RADIUS_GIVEN = Backing("the radius given", Standing.CALLER)
_MULTIPLES: dict[str, list[float]] = {}
for _row in TABLES["cable_bend_radii"]:
    _MULTIPLES.setdefault(_row.key, []).append(_row.multiple)
_ONE_SHOT = {row.trade_size: Length.parse(row.one_shot_in, "in") for row in TABLES["conduit_bend_radii"]}
_OTHER = {row.trade_size: Length.parse(row.other_bends_in, "in") for row in TABLES["conduit_bend_radii"]}
_HDPE = {row.trade_size: Length.parse(row.radius_in, "in") for row in TABLES["hdpe_bend_radii"]}
_ELBOWS = {
    row.trade_size: Length.parse(row.radius_in, "in") for row in TABLES["elbows"] if row.item == "standard_radius_elbow"
}
_METAL = {ConduitType.EMT, ConduitType.IMC, ConduitType.RMC}  # one-shot and full-shoe benders are made for these
_ABOVE_1000_V = {CableType.POWER_SHIELDED_5_TO_15_KV, CableType.POWER_SHIELDED_25_TO_46_KV}
_SHIELDED = {*_ABOVE_1000_V, CableType.CONTROL_SHIELDED_600_V}
_IN_WORDS = {
    CableShielding.SHIELDED: "a shielded",
    CableShielding.NONSHIELDED: "a nonshielded",
    CableShielding.INDIVIDUALLY_SHIELDED: "an individually shielded",
}
_BENDS = (engineering.HorizontalBend, engineering.VerticalBend)
_RULES = {
    ConduitType.RMC: "field_bend_rmc",
    ConduitType.IMC: "field_bend_imc",
    ConduitType.EMT: "field_bend_emt",
    ConduitType.RTRC: "field_bend_rtrc",
    ConduitType.FMC: "field_bend_fmc",
    ConduitType.LFMC: "field_bend_lfmc",
    ConduitType.LFNC_A: "field_bend_lfnc",
    ConduitType.LFNC_B: "field_bend_lfnc",
    ConduitType.ENT: "field_bend_ent",
}


class PlacedBend(NamedTuple):
    """A bend of the route: its section in the route, its radius [m], the bore [m] and the conduit it is made of."""

    section: int
    radius: float
    bore: float
    conduit: ListedConduit | MeasuredConduit
    made: BendMade | None


def _bends_of(route: PlacedRoute) -> list[PlacedBend]:
    """Give the bends of a route with what they are made of."""
    given, conduits, bores = route.given, route.conduits, route.bores
    return [
        PlacedBend(index, section.radius, bores[index], conduits[index], given[index].made)  # type: ignore[union-attr]
        for index, section in enumerate(route.sections)
        if section.__class__ in _BENDS
    ]


class BendVerdict(NamedTuple):
    """What the radii of a route say: the section of a bend that breaks a rule, if one does, and whether all were
    judged.
    """

    forbidden: int | None
    judged: bool


def check_radii(route: PlacedRoute, cables: CableSet) -> BendVerdict:
    """Hold every bend of a route against the cables' bending radius and the radius its conduit is made or bent to."""
    bends = _bends_of(route)
    if not bends:
        return BendVerdict(None, judged=True)
    tightest = min(bends, key=lambda bend: bend.radius - bend.bore / 2)
    kept = [_keeps_radius(tightest, line, route) for line in cables.lines]
    bent = _check_conduits(bends, route)
    return BendVerdict(tightest.section if False in kept else bent, None not in kept)


def _keeps_radius(tightest: PlacedBend, line: Line, route: PlacedRoute) -> bool | None:
    """Hold the radius [m] of the inner wall, where the cable lies, against the maker's or the code's for the cable.

    Says whether the cable keeps it; None where the code's is not kept and asked above 1000 V only, and the maker's,
    which decides below, is not known.
    """
    given, sheet = line.given, route.sheet
    inner = tightest.radius - tightest.bore / 2
    if given.bending_radius is not None:
        if not under(inner, given.bending_radius.si):
            return True
        _report_cable(tightest, inner, sheet.tell.given(given.bending_radius), "", _RADIUS_GIVEN, route)
        return False
    shielding, least = _least_of_cable(line)
    if not under(inner, least):
        return True
    sheet.cite(_CABLE_RADII.source_id)
    limit = sheet.tell.size(least)
    what = f"of {_IN_WORDS[shielding]} cable "
    if given.cable_type in _ABOVE_1000_V:
        _report_cable(tightest, inner, limit, what, _CABLE_RADII, route)
        return False
    _report_unknown(tightest, inner, limit, what, line, route)
    return None


def _least_of_cable(line: Line) -> tuple[CableShielding, float]:
    """Give the make-up of a cable and the least radius [m] of the code for it, the multiple of its diameter."""
    given = line.given
    shielding = given.shielding
    if shielding is None:
        unknown = given.cable_type is None and not line.is_wire
        stricter = unknown or given.cable_type in _SHIELDED
        shielding = CableShielding.SHIELDED if stricter else CableShielding.NONSHIELDED
        line.sheet.settle("shielding", None, Default(shielding, _STRICTER if unknown else _BY_TYPE))
    multiples = _MULTIPLES[shielding]
    diameters = [line.diameter]
    if shielding is CableShielding.INDIVIDUALLY_SHIELDED:
        if given.shielded_conductor_diameter is None:
            raise UnanswerableError(
                line.sheet.fault(
                    "shielded_conductor_diameter",
                    "missing",
                    "The bending radius of an individually shielded cable follows from one conductor: give its "
                    "diameter.",
                )
            )
        diameters = [given.shielded_conductor_diameter.si, line.diameter]
    return shielding, max(multiple * diameter for multiple, diameter in zip(multiples, diameters, strict=True))


def _report_cable(
    tightest: PlacedBend, inner: float, limit: answers.AnyQuantity, what: str, backing: Backing, route: PlacedRoute
) -> None:
    sheet = route.at(tightest.section)
    told = sheet.tell.size(max(inner, 0.0))
    sheet.find(
        Severity.VIOLATION,
        "cable_bent_too_tightly",
        f"{route.named(tightest.section)}: the inner wall of the bend has a radius of {text_of(told)}; the least "
        f"{what}is {text_of(limit)}. Widen the bend.",
        backing,
        told,
        limit,
        member="",
    )


def _report_unknown(
    tightest: PlacedBend, inner: float, limit: answers.AnyQuantity, what: str, line: Line, route: PlacedRoute
) -> None:
    told = route.sheet.tell.size(max(inner, 0.0))
    line.sheet.find(
        Severity.CAUTION,
        "bending_radius_not_judged",
        f"{route.named(tightest.section)}: the inner wall of the bend has a radius of {text_of(told)}; the least "
        f"{what}is {text_of(limit)} above 1000 V, and its maker's below, which is not known: the pull is not judged. "
        "Widen the bend, or give the maker's bending radius.",
        _CABLE_RADII,
        told,
        limit,
        member="bending_radius",
    )


def _check_conduits(bends: Sequence[PlacedBend], route: PlacedRoute) -> int | None:
    """Hold each bend against its own column, and name the tightest of each way of making; say what has no row.

    Gives the section of a field bend that breaks the rule, if one does.
    """
    worst: dict[BendMade, tuple[float, PlacedBend, Length]] = {}
    without: dict[tuple[str, str, str], PlacedBend] = {}
    for bend in bends:
        conduit = bend.conduit
        if conduit.type is None or conduit.trade_size is None:
            continue
        made = route.at(bend.section).settle("made", bend.made, MADE)
        least = _least_radius(made, conduit.type, conduit.trade_size)
        if least is None:
            without.setdefault((made, conduit.type, conduit.trade_size), bend)
            continue
        share = bend.radius / least.si
        if under(share, 1.0) and (made not in worst or share < worst[made][0]):
            worst[made] = (share, bend, least)
    for made, (_, bend, least) in worst.items():
        _report_tight(made, bend, least, route)
    for (way, kind, size), bend in without.items():
        what = "an elbow" if way == BendMade.FACTORY_ELBOW else "a field bend"
        route.at(bend.section).find(
            Severity.NOTE,
            "bend_radius_not_on_file",
            f"No least radius of {what} of {kind}, trade size {size}, is on file: the conduit "
            f"of {inside(route.named(bend.section))} was not held against one. Ask its maker.",
            PRACTICE,
            member="",
        )
    bent = worst.get(BendMade.FIELD_BEND)
    return None if bent is None else bent[1].section


def _least_radius(made: BendMade, kind: ConduitType, size: TradeSize) -> Length | None:
    if kind.startswith("pvc_") or kind in _METAL:
        if made is BendMade.FACTORY_ELBOW:
            return _ELBOWS.get(size)
        return (_ONE_SHOT if kind in _METAL else _OTHER).get(size)
    if made is BendMade.FACTORY_ELBOW:
        return None
    return (_HDPE if kind is ConduitType.HDPE_SCHEDULE_40 else _OTHER).get(size)


def _report_tight(made: BendMade, bend: PlacedBend, least: Length, route: PlacedRoute) -> None:
    sheet, kind = route.at(bend.section), bend.conduit.type
    told = sheet.tell.size(bend.radius)
    size = f"trade size {bend.conduit.trade_size}"
    start = f"{route.named(bend.section)}: the bend has a center-line radius of {text_of(told)}; "
    if made is BendMade.FACTORY_ELBOW:
        backing = published("ul-651-elbows")
        message = f"{start}the standard elbow of {size} has {least}. None is sold tighter: widen the bend."
    else:
        backing = sheet.rule(_bend_rule_of(kind))
        message = f"{start}bent in the field, {size} needs {least}. Widen the bend, or buy the elbow."
    sheet.find(
        Severity.CAUTION if made is BendMade.FACTORY_ELBOW else Severity.VIOLATION,
        "elbow_too_tight" if made is BendMade.FACTORY_ELBOW else "field_bend_too_tight",
        message,
        backing,
        told,
        sheet.tell.given(least),
        member="",
    )


def _bend_rule_of(kind: ConduitType | None) -> str:
    if kind is None:
        return "field_bend_other"
    if kind is ConduitType.HDPE_SCHEDULE_40:
        return "field_bend_hdpe"
    return "field_bend_pvc" if kind.startswith("pvc_") else _RULES.get(kind, "field_bend_other")
