"""How hot the air may be around a conduit: each material has its limit, unless it is listed for more."""

from __future__ import annotations

from typing import Annotated

from ductrun.engineering.rounding import over
from ductrun.kit.backing import GIVEN, Backing, backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default
from ductrun.kit.forms import between
from ductrun.kit.telling import TELLINGS
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.movement.temperatures import SUN_ALLOWANCE, Seen
from ductrun.tables import TABLES
from ductrun.units import Temperature

ServiceTemperature = Annotated[Temperature, between(Temperature, 50, 400, "degF")]
_ROWS = {row.material: row for row in TABLES["service_temperatures"]}
_LIMITS = {
    material: Default(Temperature.parse(row.limit, row.unit), backing_of(row)) for material, row in _ROWS.items()
}
_HOT_AIR = {
    (material, system): "This conduit is permitted in air of at most "
    f"{text_of(telling.given(limit.value))}, unless it is listed for more."
    for material, limit in _LIMITS.items()
    for system, telling in TELLINGS.items()
}


def has_limit(material: str) -> bool:
    """Say whether air has a limit around a material."""
    return material in _LIMITS


def judge_heat(material: str | None, given: Temperature | None, seen: Seen, sheet: Worksheet) -> None:
    """Hold the highest temperature of the air against what the conduit is permitted in; `sheet` is that of `given`.

    Metal has no limit, and of a conduit given by its coefficient none is known: nothing is judged of those.
    """
    if given is None and material not in _LIMITS:
        return
    if given is not None:
        limit, rule = given, GIVEN
    else:
        limit = sheet.settle("service_temperature", None, _LIMITS[str(material)])
        rule = sheet.rule(_ROWS[str(material)].rule)
    within = _within(limit.si, seen)
    sheet.judge(within)
    if within is None:
        _report_open(limit, rule, seen)
    elif not within:
        _report_heat(limit, rule, seen)


def _within(limit: float, seen: Seen) -> bool | None:
    """Say whether the air is within the limit [K], None where that hangs on how much of the heat is the sun's."""
    if seen.highest is None:
        return None
    if not over(seen.highest.si, limit):
        return True
    if seen.is_air or over(seen.highest.si - SUN_ALLOWANCE.value.si, limit):
        return False
    return None


def _report_heat(limit: Temperature, rule: Backing, seen: Seen) -> None:
    tell = seen.place.tell
    assert seen.highest is not None  # noqa: S101  # a violation has a temperature
    told, most = tell.given(seen.highest), tell.given(limit)
    is_hot, bears = apart(told, most)
    reaches = "The air reaches" if seen.is_air else "The conduit reaches"
    why = "" if seen.is_air else ", which sun alone does not make of that"
    seen.place.find(
        Severity.VIOLATION,
        "over_service_temperature",
        f"{reaches} {is_hot}; air of {bears} is the most for this conduit{why}: take another material, "
        "or conduit listed for more and give its temperature.",
        rule,
        told,
        most,
        member="highest",
    )


def _report_open(limit: Temperature, rule: Backing, seen: Seen) -> None:
    tell = seen.place.tell
    most = tell.given(limit)
    if seen.highest is None:
        told, member = None, ""
        words = "A difference does not say how hot it gets. Give the lowest and the highest temperature."
    else:
        told, member = tell.given(seen.highest), "highest"
        words = (
            f"The conduit reaches {text_of(told)}, and how much of that is the sun's is not known. Give the highest "
            "temperature of the air, with direct_sun true."
        )
    seen.place.find(
        Severity.CAUTION,
        "service_temperature_not_judged",
        f"Air of {text_of(most)} is the most for this conduit unless it is listed for more. {words}",
        rule,
        told,
        most,
        member=member,
    )


def caution_heat(material: str, sheet: Worksheet) -> None:
    """Give the usual caution of a conduit that is not permitted in hot air."""
    if material in _LIMITS:
        sheet.caution("hot_air", _HOT_AIR[material, sheet.tell.system], sheet.rule(_ROWS[material].rule))
