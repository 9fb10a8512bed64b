"""The least radii of bends: of the cable drawn through them, and of the conduit bent in the field."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering import pulling as engineering
from ductrun.operations.cable_set import CableSet
from ductrun.operations.choices import CableShielding, CableType, ConduitType, Severity
from ductrun.operations.conduits import ListedConduit, MeasuredConduit
from ductrun.operations.defaults import citation
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.tables import TABLES
from ductrun.units import Length

_MULTIPLES: dict[str, list[float]] = {}
for _row in TABLES["cable_bend_radii"]:
    _MULTIPLES.setdefault(_row.key, []).append(_row.multiple)
_ONE_SHOT = {row.trade_size: Length.parse(row.one_shot_in, "in") for row in TABLES["conduit_bend_radii"]}
_OTHER = {row.trade_size: Length.parse(row.other_bends_in, "in") for row in TABLES["conduit_bend_radii"]}
_HDPE = {row.trade_size: Length.parse(row.radius_in, "in") for row in TABLES["hdpe_bend_radii"]}
_FLEXIBLE = {ConduitType.FMC, ConduitType.LFMC, ConduitType.LFNC_A, ConduitType.LFNC_B, ConduitType.ENT}


def check_radii(
    route: Sequence[engineering.Section],
    cables: CableSet,
    conduit: ListedConduit | MeasuredConduit,
    bore: float,
    sheet: Worksheet,
) -> None:
    """Hold the tightest bend of a route against the cable's bending radius and the conduit's field-bend radius."""
    radii = [section.radius for section in route if not isinstance(section, engineering.Straight)]
    if not radii:
        return
    tightest = min(radii)
    _check_cable(tightest - bore / 2, cables, sheet)
    if conduit.kind == "listed":
        _check_conduit(tightest, conduit, sheet)


def _check_cable(inner: float, cables: CableSet, sheet: Worksheet) -> None:
    """Hold the radius [m] of the inner wall, where the cable lies, against the multiple of its diameter."""
    shielding = cables.shielding
    if shielding is None:
        medium_voltage = cables.cable_type is CableType.POWER_SHIELDED_5_TO_35_KV
        shielding = CableShielding.SHIELDED if medium_voltage else CableShielding.NONSHIELDED
        sheet.assume("#/cables/shielding", shielding, f"by the cable type, {citation('nfpa70-305-5')}", "nfpa70-305-5")
    multiples = _MULTIPLES[shielding]
    diameters = [cables.diameter.si]
    if shielding is CableShielding.INDIVIDUALLY_SHIELDED:
        if cables.shielded_conductor_diameter is None:
            raise UnanswerableError(
                Fault(
                    "#/cables/shielded_conductor_diameter",
                    "missing",
                    "The bending radius of an individually shielded cable follows from one conductor: give its "
                    "diameter.",
                )
            )
        diameters = [cables.shielded_conductor_diameter.si, cables.diameter.si]
    least = max(multiple * diameter for multiple, diameter in zip(multiples, diameters, strict=True))
    if inner < least * (1 - 1e-9):
        over_1000_v = cables.cable_type is CableType.POWER_SHIELDED_5_TO_35_KV
        told, limit = sheet.tell.size(max(inner, 0.0)), sheet.tell.size(least)
        sheet.cite("nfpa70-305-5")
        sheet.find(
            Severity.VIOLATION if over_1000_v else Severity.CAUTION,
            "cable_bent_too_tightly",
            f"The inner wall of the tightest bend has a radius of {text_of(told)}; a {shielding} cable of this size "
            f"needs {text_of(limit)}"
            + (". Widen the bend." if over_1000_v else " above 1000 V, and its maker's radius below. Widen the bend."),
            citation("nfpa70-305-5"),
            told,
            limit,
        )


def _check_conduit(tightest: float, conduit: ListedConduit, sheet: Worksheet) -> None:
    """Hold the centre-line radius [m] of the tightest bend against that of a field bend."""
    if conduit.type is ConduitType.HDPE_SCHEDULE_40:
        table, source = _HDPE, "nfpa70-354-24"
    else:
        table, source = (_OTHER if conduit.type in _FLEXIBLE else _ONE_SHOT), "nfpa70-ch9-t2"
    least = table.get(conduit.trade_size)
    if least is not None and tightest < least.si * (1 - 1e-9):
        told = sheet.tell.size(tightest)
        sheet.cite(source)
        sheet.find(
            Severity.CAUTION,
            "field_bend_too_tight",
            f"The tightest bend has a centre-line radius of {text_of(told)}; bent in the field, trade size "
            f"{conduit.trade_size} needs {least}.",
            citation(source),
            told,
            sheet.tell.given(least),
        )
