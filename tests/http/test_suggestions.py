"""What is nearly a known value: which one was probably meant, and when nobody can say."""

from __future__ import annotations

import copy
import re
from collections.abc import Iterator
from enum import StrEnum
from typing import Any

import pytest
from ductrun.http.suggestions import probably_meant
from ductrun.kit.choices import CodeEdition
from ductrun.subjects import OPERATIONS
from ductrun.subjects.bank.choices import DuctMaterial
from ductrun.subjects.feeder.choices import WallMaterial
from ductrun.subjects.parts.choices import (
    ConductorMaterial,
    ConductorSize,
    ConduitType,
    Insulation,
    TradeSize,
)
from ductrun.subjects.spellings import DESIGNATORS, SPELLINGS
from ductrun.tables import TABLES
from ductrun.units import (
    UNIT_CODES,
    AreaUnit,
    Code,
    ConductorAreaUnit,
    DensityUnit,
    DurationUnit,
    ExpansionCoefficientUnit,
    ForcePerLengthUnit,
    ForceUnit,
    GradeUnit,
    LengthUnit,
    MassPerLengthUnit,
    MassUnit,
    PressureUnit,
    TemperatureDifferenceUnit,
    TemperatureUnit,
    VolumeUnit,
)
from ductrun.units.spellings import ways_to_write

from tests.asking import EXAMPLES, faults

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
    (TradeSize, 1.5, "1-1/2"),
    (TradeSize, "0.5", "1/2"),
    (TradeSize, ".75", "3/4"),
    (TradeSize, "2.50 in", "2-1/2"),
    (TradeSize, "4.00", "4"),
    (TradeSize, "metric designator 53", "2"),
    (TradeSize, 103, "4"),
    (TradeSize, "41 mm", "1-1/2"),
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
    (ConduitType, "Rigid Steel", "rmc"),
    (ConduitType, "EMT conduit", "emt"),
    (ConduitType, "thin-wall", "emt"),
    (ConduitType, "fiberglass", "rtrc"),
    (WallMaterial, "fiberglass", "rtrc"),
    (WallMaterial, "Polyethylene", "hdpe"),
    (DuctMaterial, "polyethylene", "hdpe"),
    (ConduitType, "Liquid-tight flexible metal conduit", "lfmc"),
    (ConduitType, "LFNC-B", "lfnc_b"),
    (ConduitType, "Sch 40 HDPE", "hdpe_schedule_40"),
    (ConductorSize, "500 MCM", "500 kcmil"),
    (ConductorSize, "500MCM", "500 kcmil"),
    (ConductorSize, 500, "500 kcmil"),
    (ConductorSize, "#12", "12 AWG"),
    (ConductorSize, "12", "12 AWG"),
    (ConductorSize, 12, "12 AWG"),
    (ConductorSize, "12awg", "12 AWG"),
    (ConductorSize, "1/0", "1/0 AWG"),
    (ConductorSize, "0000", "4/0 AWG"),
    (ConductorSize, "00 AWG", "2/0 AWG"),
    (ConductorSize, 0, "1/0 AWG"),
    (ConductorSize, "4 aught", "4/0 AWG"),
    (ConductorSize, "4/0 gauge", "4/0 AWG"),
    (ConductorSize, "No. 6", "6 AWG"),
    (ConductorSize, "AWG 6", "6 AWG"),
    (ConductorSize, "350kcm", "350 kcmil"),
    (ConductorSize, "1 million circular mils", "1000 kcmil"),
    (Insulation, "THWN2", "THWN-2"),
    (Insulation, "rhw-2", "RHW-2"),
    (Insulation, "RHW2*", "RHW-2*"),
    (Insulation, "Type THHN", "THHN"),
    (Insulation, "XHHW-2 wire", "XHHW-2"),
    (Insulation, "use 2", "USE-2"),
    (CodeEdition, 2020, "2020"),
    (CodeEdition, "NFPA 70-2023", "2023"),
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
    # units as pint's registry writes them
    (LengthUnit, "millimetre", "mm"),
    (LengthUnit, "international_feet", "ft"),
    (AreaUnit, "meter**2", "m2"),
    (AreaUnit, "square_inches", "in2"),
    (VolumeUnit, "US_liquid_gallon", "gal_us"),
    (VolumeUnit, "foot^3", "ft3"),
    (MassUnit, "kilograms", "kg"),
    (MassUnit, "avoirdupois_pound", "lb"),
    (ForceUnit, "pound_force", "lbf"),
    (ForceUnit, "kilonewtons", "kN"),
    (PressureUnit, "force_pound / inch ** 2", "psi"),
    (PressureUnit, "megapascals", "MPa"),
    (DensityUnit, "kg per cubic metre", "kg/m3"),
    (DensityUnit, "pound/foot**3", "lb/ft3"),
    (ForcePerLengthUnit, "newtons per meter", "N/m"),
    (MassPerLengthUnit, "kilogram/kilometer", "kg/km"),
    (TemperatureUnit, "degree_Fahrenheit", "degF"),
    (TemperatureDifferenceUnit, "delta_degree_Celsius", "delta_degC"),
    (ExpansionCoefficientUnit, "1/delta_degree_Fahrenheit", "1/degF"),
    (ExpansionCoefficientUnit, "per delta_degC", "1/degC"),
    (DurationUnit, "minutes", "min"),
]
UNKNOWN: list[tuple[type[StrEnum], Any]] = [
    *((codes, "banana") for codes in (TradeSize, ConduitType, ConductorSize, Insulation, LengthUnit)),
    *((codes, "") for codes in (TradeSize, ConduitType, LengthUnit)),
    *((TradeSize, given) for given in ("7", -4, "-4", 1.6, ".4", "1.50.5", 54, True, None, "4 AWG", "4 ft", "11/2")),
    *((ConduitType, given) for given in ("sch 60", "db 110", "schedule", "liquidtight", "lfnc")),
    *((ConductorSize, given) for given in ("4 kcmil", "500 AWG", "650 kcmil", "1100 kcmil", "4 mm2", "4 in", "5")),
    *((Insulation, given) for given in ("THWM", "XHHV", "THHN/THWN-2", "TH")),
    *((LengthUnit, given) for given in ("lb", "degF", "km", "mil", "ft2")),
    (MassUnit, "ton"),  # short or metric
    (MassUnit, "tons"),
    (TradeSize, "dimensionless"),
    (LengthUnit, "foot**2"),
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


def test_the_table_of_what_is_nearly_right_is_long_and_says_each_thing_once() -> None:
    assert len(MEANT) >= 100
    assert len({(codes, str(given)) for codes, given, _ in MEANT if not isinstance(given, float)}) >= 98


def test_every_spelling_that_pint_has_of_a_unit_means_that_unit_or_none() -> None:
    ways = ways_to_write()
    assert sum(map(len, ways.values())) > 1000
    for codes in UNIT_CODES.values():
        for code in codes:
            for way in ways.get(code.text, []):
                assert probably_meant(way, list(codes)) == code, (way, code)


def test_a_list_of_the_trades_designators_is_that_of_the_table() -> None:
    printed = {(row.trade_size, str(row.metric_designator)) for row in TABLES["conduits"] if row.metric_designator}
    assert printed <= set(DESIGNATORS)


def test_no_spelling_stands_for_a_value_that_is_not_there() -> None:
    values = {code.value for codes in _all_codes(Code) for code in codes} | _names_of_members()
    for pattern, ways in SPELLINGS:
        assert ways
        assert any(re.fullmatch(pattern, value) for value in values), pattern


def _names_of_members() -> set[str]:
    schemas = [one.request.model_json_schema() for one in OPERATIONS]
    objects = [node for schema in schemas for node in (schema, *schema["$defs"].values())]
    return {name for node in objects for name in node.get("properties", {})}


@pytest.mark.parametrize(
    ("operation", "where", "given", "meant"),
    [
        ("conduit-size", "", "conduit_type", "type"),
        ("permitted-use", "", "type", "conduit_type"),
        ("fill", "/conduit", "conduit_type", "type"),
        ("cover", "", "voltage", "voltage_class"),
        ("pull-tension", "", "cable_order", "ordering"),
        ("flotation", "", "earth_density", "saturated_soil_density"),
        ("flotation", "", "material", "duct_material"),
        ("earth-load", "", "material", "duct_material"),
        ("earth-load", "", "flotation_factor", "flotation_safety_factor"),
        ("ampacity", "/circuits/0", "conductor_temperature", "temperature_limit"),
        ("joints", "", "joints_per_quart", "cement_per_joint"),
        ("voltage-drop", "", "hours_per_year", "duration_per_year"),
        ("trench", "", "side_slope", "side_slope_ratio"),
        ("trench", "/stations/0", "position", "station"),
    ],
)
def test_a_member_by_another_word_of_the_trade_is_told_its_name(
    operation: str, where: str, given: str, meant: str
) -> None:
    request: Any = copy.deepcopy(EXAMPLES[operation]) | ({"stations": [{}]} if operation == "trench" else {})
    place = request
    for step in where.split("/")[1:]:
        place = place[int(step) if step.isdigit() else step]
    place[given] = 1
    [one] = [one for one in faults(operation, request) if one["code"] == "unknown_member"]
    assert (one["pointer"], one["suggestion"]) == (f"#{where}/{given}", meant)
