"""What the code says of a circuit beside its heat: terminals, device, grounding, insulation, sets in parallel."""

from __future__ import annotations

from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.checks import WIRE_VOLTAGE, Checked, largest_device, over_wire_voltage
from ductrun.subjects.feeder.choices import WallMaterial
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.feeder.rating import Ampacity, Rated
from ductrun.subjects.feeder.table_ampacities import LEAST_IN_PARALLEL, too_small_in_parallel

_METAL = (WallMaterial.ALUMINUM, WallMaterial.STEEL)


def report_code(rated: Rated, found: Ampacity) -> None:
    """Tell what the code says of a circuit."""
    _check_terminals(rated)
    _check_load_on_device(rated)
    _check_device(rated, found)
    _check_grounding(rated, found)
    _check_voltage(rated)
    find_small_in_parallel(rated.load.sets, rated.load.cable.area, rated.load.cable.sheet)


def breaks_code(rated: Rated, found: Ampacity) -> bool:
    """Say whether a circuit breaks a rule of the code that is told here."""
    load, allowed = rated.load, rated.checked.terminal_ampacity
    return (
        (allowed is not None and over(load.current or 0.0, allowed))
        or _is_over_device(rated)
        or _unprotected(rated, found) is not None
        or _is_ungrounded(rated, found)
        or over_wire_voltage(load)
        or too_small_in_parallel(load.sets, load.cable.area)
    )


def _check_terminals(rated: Rated) -> None:
    """Hold a circuit against what its terminals allow."""
    checked, load, sheet = rated.checked, rated.load, rated.load.sheet
    allowed = checked.terminal_ampacity
    if allowed is None:
        return
    limit = sheet.tell.current(allowed)
    if load.current is not None:
        sheet.judge(not over(load.current, allowed))
        if over(load.current, allowed):
            actual = sheet.tell.current(load.current)
            carried, most = apart(actual, limit)
            sheet.find(
                Severity.VIOLATION,
                "over_terminal_rating",
                f"{carried} is over the {most} that {_who_allows(checked)} this conductor: take a larger one, or "
                f"{'insulation' if _wire_decides(checked) else 'terminals'} marked for more.",
                sheet.rule("terminations"),
                actual,
                limit,
                member="current",
            )
    elif rated.ampacity is not None and over(rated.ampacity, allowed):
        actual = sheet.tell.current(rated.ampacity)
        carried, most = apart(actual, limit)
        sheet.find(
            Severity.CAUTION,
            "terminals_decide",
            f"The bank would carry {carried}, but {_who_allows(checked)} this conductor {most}: that is the most.",
            sheet.rule("terminations"),
            actual,
            limit,
            member="",
        )


def _wire_decides(checked: Checked) -> bool:
    """Say whether the insulation leaves less of the table than the terminals."""
    return checked.terminals is not None and checked.insulation < checked.terminals


def _who_allows(checked: Checked) -> str:
    if _wire_decides(checked):
        return f"insulation for {checked.insulation} degC allows"
    return f"terminals for {checked.terminals} degC allow"


def _is_over_device(rated: Rated) -> bool:
    device = rated.load.given.overcurrent_device
    return device is not None and over(rated.load.current or 0.0, device.si)


def _check_load_on_device(rated: Rated) -> None:
    load, sheet, device = rated.load, rated.load.sheet, rated.load.given.overcurrent_device
    if device is None or load.current is None or not _is_over_device(rated):
        return
    actual, limit = sheet.tell.current(load.current), sheet.tell.given(device)
    carried, most = apart(actual, limit)
    sheet.find(
        Severity.VIOLATION,
        "load_over_device",
        f"The load of {carried} is over the overcurrent device of {most}: take a device and conductors for the load.",
        sheet.rule("feeder_device"),
        actual,
        limit,
        member="current",
    )


def _unprotected(rated: Rated, found: Ampacity) -> float | None:
    """Give the largest device that would protect the conductors of a circuit [A], where the one ahead is larger.

    What is calculated counts of the circuit that governs: the others may carry more than their share.
    """
    load, device = rated.load, rated.load.given.overcurrent_device
    governs = found.solved.governing[0] is load
    known = [rated.checked.terminal_ampacity, rated.ampacity if governs else None]
    allowed = [one for one in known if one is not None]
    if device is None or not allowed or rated.checked.terminals is None:
        return None
    most = largest_device(load, min(allowed))
    return most if over(device.si, most) else None


def _check_device(rated: Rated, found: Ampacity) -> None:
    most, device, sheet = _unprotected(rated, found), rated.load.given.overcurrent_device, rated.load.sheet
    if most is None or device is None:
        return
    actual, limit = sheet.tell.given(device), sheet.tell.current(most)
    given, largest = apart(actual, limit)
    sheet.find(
        Severity.VIOLATION,
        "device_over_ampacity",
        f"An overcurrent device of {given} does not protect these conductors: {largest} is the largest that does. Take "
        "a smaller device, or larger conductors.",
        sheet.rule("conductors_protected"),
        actual,
        limit,
        member="overcurrent_device",
    )


def in_metal(load: CircuitLoad, found: Ampacity) -> bool:
    """Say whether all ducts of a circuit are of metal."""
    walls = found.solved.question.section.walls
    return all(walls[duct].material in _METAL for duct in load.ducts)


def _is_ungrounded(rated: Rated, found: Ampacity) -> bool:
    """Say whether building wire in nonmetallic duct has no conductor that grounds its circuit."""
    return not rated.checked.is_grounded and rated.load.cable.marking is not None and not in_metal(rated.load, found)


def _check_grounding(rated: Rated, found: Ampacity) -> None:
    least, sheet = rated.checked.grounding, rated.load.cable.sheet
    if least is None or rated.checked.is_grounded:
        return
    violated = _is_ungrounded(rated, found)
    otherwise = "" if violated else ", unless the metal raceway or the metal of the cable serves"
    sheet.find(
        Severity.VIOLATION if violated else Severity.CAUTION,
        "no_grounding_conductor",
        f"No conductor beside those like the loaded ones is large enough to ground this circuit: every duct of it "
        f"takes {least.copper} of copper or {least.aluminum} of aluminum{otherwise}.",
        sheet.rule("equipment_grounding"),
        member="",
    )


def _check_voltage(rated: Rated) -> None:
    load, sheet = rated.load, rated.load.sheet
    if not over_wire_voltage(load):
        return
    actual, limit = sheet.tell.voltage(load.voltage), sheet.tell.given(WIRE_VOLTAGE.value)
    sheet.find(
        Severity.VIOLATION,
        "voltage_over_insulation",
        f"{load.cable.marking} is building wire for {text_of(limit)}, not for {text_of(actual)}: take cable that is "
        "made for this voltage, by its layers.",
        sheet.rule("insulation_temperature"),
        actual,
        limit,
        member="voltage",
    )


def find_small_in_parallel(sets: int, area: float, sheet: Worksheet) -> None:
    """Find conductors of an area [m2] that are too small to lie in so many sets in parallel, at their place."""
    if not too_small_in_parallel(sets, area):
        return
    sheet.find(
        Severity.VIOLATION,
        "too_small_in_parallel",
        f"{sets} sets in parallel of conductors smaller than {LEAST_IN_PARALLEL.value}: take fewer sets of larger "
        "ones, or give each set as a circuit of its own if it is one.",
        sheet.rule("parallel_conductors"),
        sets,
        1,
        member="",
    )
