"""What the tables make of a wire: which rows its mass comes from, checked by hand."""

from __future__ import annotations

import math
from collections import Counter

import pytest
from ductrun.subjects.parts.cable_mass import METAL_AREAS, wire_mass
from ductrun.subjects.parts.choices import ConductorMaterial, Insulation
from ductrun.tables import TABLES
from ductrun.tables.rows import Conductor

COPPER, ALUMINUM = ConductorMaterial.COPPER, ConductorMaterial.ALUMINUM
SQUARE_INCH = 0.0254**2
CIRCULAR_MIL = math.pi / 4 * 2.54e-5**2
DENSITIES = {material: row.density_kg_per_m3 for row in TABLES["wire_densities"] for material in row.materials}


def row_of(table: str, insulation: str, size: str, stranding: str = "") -> Conductor:
    (row,) = (
        row
        for row in TABLES["conductors"]
        if (row.table, row.size, row.stranding) == (table, size, stranding) and insulation in row.insulations
    )
    assert isinstance(row, Conductor)
    return row


@pytest.mark.parametrize(
    ("size", "circular_mils"), [("14 AWG", 4110), ("4/0 AWG", 211600), ("250 kcmil", 250000), ("2000 kcmil", 2000000)]
)
def test_the_metal_of_a_size_is_its_circular_mils(size: str, circular_mils: int) -> None:
    assert METAL_AREAS[size] == pytest.approx(circular_mils * CIRCULAR_MIL)


def test_a_bare_conductor_is_its_metal_alone() -> None:
    bare = wire_mass(row_of("8", "bare", "500 kcmil", "stranded"), COPPER, None)
    assert bare == pytest.approx(500000 * CIRCULAR_MIL * 8890 * 1.02)


def test_solid_and_stranded_have_the_same_metal() -> None:
    solid, stranded = (wire_mass(row_of("8", "bare", "10 AWG", made), COPPER, None) for made in ("solid", "stranded"))
    assert solid == stranded


def test_a_listed_wire_is_covered_from_the_circle_of_table_8_outward() -> None:
    metal = 211600 * CIRCULAR_MIL * 8890 * 1.02
    covering = (0.3237 - 0.219) * SQUARE_INCH * DENSITIES["THWN-2"]
    assert wire_mass(row_of("5", "THWN-2", "4/0 AWG"), COPPER, "THWN-2") == pytest.approx(metal + covering)


def test_a_small_listed_wire_is_covered_from_the_stranded_circle_outward() -> None:
    metal = 4110 * CIRCULAR_MIL * 8890 * 1.02
    covering = (0.0139 - 0.004) * SQUARE_INCH * DENSITIES["XHHW-2"]
    assert wire_mass(row_of("5", "XHHW-2", "14 AWG"), COPPER, "XHHW-2") == pytest.approx(metal + covering)


def test_a_compact_wire_is_covered_from_a_smaller_circle_outward() -> None:
    metal = 500000 * CIRCULAR_MIL * DENSITIES["aluminum"] * 1.02
    covering = (0.6082 - 0.905**2 * 0.519) * SQUARE_INCH * DENSITIES["XHHW-2"]
    found = wire_mass(row_of("5A", "XHHW-2", "500 kcmil", "compact"), ALUMINUM, "XHHW-2")
    assert found == pytest.approx(metal + covering)


def test_the_metal_changes_nothing_about_the_covering() -> None:
    row, bare = row_of("5", "XHHW-2", "1/0 AWG"), row_of("8", "bare", "1/0 AWG", "stranded")
    coverings = [wire_mass(row, metal, "XHHW-2") - wire_mass(bare, metal, None) for metal in ConductorMaterial]
    assert coverings[0] == pytest.approx(coverings[1])


def test_every_metal_and_every_marking_has_one_density() -> None:
    told = Counter(material for row in TABLES["wire_densities"] for material in row.materials)
    assert told == Counter([*ConductorMaterial, *Insulation])


def test_an_insulation_is_lighter_than_any_metal() -> None:
    metals = {str(metal) for metal in ConductorMaterial}
    assert all(900 < DENSITIES[insulation] < min(map(DENSITIES.__getitem__, metals)) for insulation in Insulation)
