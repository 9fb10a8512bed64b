"""Masses of wire that makers print, against those that metal and covering of the tables make."""

from __future__ import annotations

import pytest
from ductrun.subjects.parts.cable_mass import wire_mass
from ductrun.subjects.parts.choices import ConductorMaterial
from ductrun.tables import TABLES
from ductrun.units import MassPerLengthUnit

from tests.asking import rows_of

PRINTED = rows_of("wire_masses.csv")
ROWS = {
    (row.table, insulation, row.size): row
    for row in TABLES["conductors"]
    if row.stranding != "solid"
    for insulation in row.insulations
}


@pytest.mark.parametrize("printed", PRINTED, ids=lambda row: f"{row['wire']} {row['material']} {row['size']}")
def test_a_derived_mass_is_within_six_percent_and_not_two_percent_low(printed: dict[str, str]) -> None:
    """Masses are printed to a pound for 1000 ft, so half a pound either way is the print's own."""
    row = ROWS[printed["table"], printed["insulation"], printed["size"]]
    insulation = None if printed["insulation"] == "bare" else printed["insulation"]
    found = (
        wire_mass(row, ConductorMaterial(printed["material"]), insulation) / MassPerLengthUnit.LB_PER_FT.scale * 1000
    )
    net = float(printed["net_lb_per_1000ft"])
    assert 0.98 * net - 0.5 <= found <= 1.06 * net + 0.5


def test_every_listed_wire_has_a_mass_above_that_of_its_metal() -> None:
    checked = 0
    for (_, insulation, size), row in ROWS.items():
        for material in ConductorMaterial:
            bare = wire_mass(ROWS["8", "bare", size], material, None)
            assert insulation == "bare" or wire_mass(row, material, insulation) > bare > 0
            checked += 1
    assert checked == len(ConductorMaterial) * len(ROWS) > 0
