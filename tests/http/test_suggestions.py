"""What is nearly a known value: which one was probably meant, and when nobody can say."""

from __future__ import annotations

import re
from collections.abc import Iterator
from enum import StrEnum
from typing import Any

import pytest
from ductrun.http.suggestions import probably_meant
from ductrun.subjects import OPERATIONS
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize, ConduitType, Insulation, TradeSize
from ductrun.subjects.spellings import SPELLINGS
from ductrun.units import (
    UNIT_CODES,
    AreaUnit,
    Code,
    ConductorAreaUnit,
    DensityUnit,
    DurationUnit,
    ForcePerLengthUnit,
    ForceUnit,
    GradeUnit,
    LengthUnit,
    MassPerLengthUnit,
    MassUnit,
    TemperatureDifferenceUnit,
    TemperatureUnit,
    VolumeUnit,
)

MEANT: list[tuple[type[StrEnum], Any, str]] = [
    (TradeSize, 4, "4"),
    (TradeSize, 4.0, "4"),
    (TradeSize, '4"', "4"),
    (TradeSize, "4 in", "4"),
    (TradeSize, "4-inch", "4"),
    (TradeSize, "4\u201d", "4"),
    (TradeSize, "1 1/2", "1-1/2"),
    (TradeSize, '2-1/2"', "2-1/2"),
    (TradeSize, "\u00bd", "1/2"),
    (ConduitType, "SCH40", "pvc_schedule_40"),
    (ConduitType, "Sch. 40", "pvc_schedule_40"),
    (ConduitType, "schedule 40", "pvc_schedule_40"),
    (ConduitType, "Schedule 80 PVC", "pvc_schedule_80"),
    (ConduitType, "schedul 40", "pvc_schedule_40"),
    (ConduitType, "DB-120", "pvc_db_120"),
    (ConduitType, "EB-35", "pvc_eb_35"),
    (ConduitType, "PVC", "pvc_schedule_40"),
    (ConduitType, "HDPE", "hdpe_schedule_40"),
    (ConduitType, "EMT", "emt"),
    (ConduitType, "Rigid", "rmc"),
    (ConductorSize, "500 MCM", "500 kcmil"),
    (ConductorSize, "500MCM", "500 kcmil"),
    (ConductorSize, 500, "500 kcmil"),
    (ConductorSize, "#12", "12 AWG"),
    (ConductorSize, "12", "12 AWG"),
    (ConductorSize, 12, "12 AWG"),
    (ConductorSize, "12awg", "12 AWG"),
    (ConductorSize, "1/0", "1/0 AWG"),
    (Insulation, "THWN2", "THWN-2"),
    (Insulation, "rhw-2", "RHW-2"),
    (Insulation, "RHW2*", "RHW-2*"),
    (ConductorMaterial, "Cu", "copper"),
    (ConductorMaterial, "aluminium", "aluminum"),
    (LengthUnit, "feet", "ft"),
    (LengthUnit, "ft.", "ft"),
    (LengthUnit, "FT", "ft"),
    (LengthUnit, "'", "ft"),
    (LengthUnit, '"', "in"),
    (LengthUnit, "inches", "in"),
    (LengthUnit, "metres", "m"),
    (AreaUnit, "sq ft", "ft2"),
    (AreaUnit, "mm\u00b2", "mm2"),
    (ConductorAreaUnit, "MCM", "kcmil"),
    (VolumeUnit, "cubic yards", "yd3"),
    (TemperatureUnit, "F", "degF"),
    (TemperatureUnit, "\u00b0F", "degF"),
    (TemperatureUnit, "C", "degC"),
    (TemperatureDifferenceUnit, "F", "delta_degF"),
    (MassUnit, "lbs", "lb"),
    (MassUnit, "pounds", "lb"),
    (ForceUnit, "pounds", "lbf"),
    (ForceUnit, "lbs", "lbf"),
    (MassPerLengthUnit, "lbs/ft", "lb/ft"),
    (ForcePerLengthUnit, "lb/ft", "lbf/ft"),
    (DensityUnit, "pcf", "lb/ft3"),
    (DurationUnit, "hours", "h"),
    (GradeUnit, "%", "percent"),
]
UNKNOWN: list[tuple[type[StrEnum], Any]] = [
    *((codes, "banana") for codes in (TradeSize, ConduitType, ConductorSize, Insulation, LengthUnit)),
    *((codes, "") for codes in (TradeSize, ConduitType, LengthUnit)),
    *((TradeSize, given) for given in ("7", -4, "-4", 1.5, True, None, "4 AWG", "4 ft", "11/2")),
    *((ConduitType, given) for given in ("sch 60", "db 110", "schedule", "liquidtight", "lfnc")),
    *((ConductorSize, given) for given in ("4 kcmil", "500 AWG", "650 kcmil", "1100 kcmil", "4 mm2", "4 in", "5")),
    *((Insulation, given) for given in ("THWM", "XHHV", "THHN/THWN-2", "TH")),
    *((LengthUnit, given) for given in ("lb", "degF", "km", "mil", "ft2")),
    (MassUnit, "ton"),  # short or metric
    (AreaUnit, "ft"),
    (TemperatureUnit, "R"),
]


@pytest.mark.parametrize(("codes", "given", "meant"), MEANT)
def test_a_spelling_of_the_trade_means_one_value(codes: type[StrEnum], given: Any, meant: str) -> None:
    assert probably_meant(given, list(codes)) == meant


@pytest.mark.parametrize(("codes", "given"), UNKNOWN)
def test_where_nothing_or_more_than_one_value_could_be_meant_none_is_told(codes: type[StrEnum], given: Any) -> None:
    assert probably_meant(given, list(codes)) is None


def test_a_number_that_nobody_writes_is_near_to_nothing() -> None:
    for number in (10**5000, -(10**5000), float("inf"), 1e300):
        assert probably_meant(number, list(TradeSize)) is None


def _all_codes(base: type[Code]) -> Iterator[type[Code]]:
    for codes in base.__subclasses__():
        yield codes
        yield from _all_codes(codes)


def test_every_value_means_itself_in_capitals_without_them_and_without_its_marks() -> None:
    assert OPERATIONS
    assert UNIT_CODES
    for codes in _all_codes(Code):
        for code in codes:
            for spelling in (code.upper(), code.lower(), code.replace("_", " "), f" {code} "):
                assert probably_meant(spelling, list(codes)) == code


def test_a_member_is_told_by_its_name_only_if_no_other_is_nearly_as_near() -> None:
    members = ["horizontal_separation", "vertical_separation", "length", "tiers", "tier_ducts"]
    assert probably_meant("lenght", members) == "length"
    assert probably_meant("tier", members) == "tiers"
    assert probably_meant("verticalSeparation", members) == "vertical_separation"
    assert probably_meant("separation", members) is None
    assert probably_meant("x" * 5000, members) is None


def test_no_spelling_stands_for_a_value_that_is_not_there() -> None:
    values = {code.value for codes in _all_codes(Code) for code in codes}
    for pattern, ways in SPELLINGS:
        assert ways
        assert any(re.fullmatch(pattern, value) for value in values), pattern
