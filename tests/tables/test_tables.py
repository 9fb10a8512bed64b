"""The tables: what the loader lets in, and that a corrupt one stops the start with file and row."""

from __future__ import annotations

import shutil
import subprocess
import sys
from fractions import Fraction
from pathlib import Path

import pytest
from ductrun.tables import DATA, TABLES, CorruptTableError, load
from ductrun.tables.rows import STANDINGS
from fluids import nearest_pipe

CORRUPTIONS = {
    "a digit of a diameter": ("conduits.csv", "1.029", "1.092", "does not belong to diameter"),
    "a metric column": ("conduits.csv", "26.1", "21.6", "metric column"),
    "an area": ("conductors.csv", "0.0366", "0.0663", "area 0.0663 does not belong to diameter 0.216"),
    "a letter for a number": ("elbows.csv", "9.5", "9,5x", "cannot be read"),
    "a source nobody knows": ("friction_coefficients.csv", "mesc-103", "mesc-104", "not in sources.csv"),
    "a standing nobody knows": ("sidewall_limits.csv", ",read", ",heard", "standing 'heard'"),
    "a heading": ("support_spacing.csv", "trade_size_to", "size_to", "the heading must have"),
    "a unit nobody knows": ("sidewall_limits.csv", "lbf/ft", "lb/ft2", "unknown unit"),
    "low above high": ("friction_coefficients.csv", "0.3,0.4", "0.5,0.4", "above high"),
    "a negative number": ("expansion_coefficients.csv", "3.38e-5", "-3.38e-5", "out of range"),
    "an unknown trade size": ("conduits.csv", "pvc_schedule_40,1-1/4", "pvc_schedule_40,1-1/5", "unknown trade size"),
}


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    return Path(shutil.copytree(DATA, tmp_path / "data"))


@pytest.mark.parametrize("name", CORRUPTIONS)
def test_a_corrupt_table_is_refused_with_its_file_and_row(copied: Path, name: str) -> None:
    file, good, bad, fault = CORRUPTIONS[name]
    path = copied / file
    text = path.read_text(encoding="utf-8")
    assert good in text
    path.write_text(text.replace(good, bad, 1), encoding="utf-8")
    with pytest.raises(CorruptTableError, match=rf"corrupt table {file}, line \d+: .*{fault}"):
        load(copied)


def test_sizes_out_of_order_are_refused(copied: Path) -> None:
    path = copied / "conduits.csv"
    lines = path.read_text(encoding="utf-8").splitlines()
    lines[1], lines[2] = lines[2], lines[1]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    with pytest.raises(CorruptTableError, match="sizes must rise"):
        load(copied)


def test_a_missing_file_is_named(copied: Path) -> None:
    (copied / "elbows.csv").unlink()
    with pytest.raises(CorruptTableError, match=r"elbows\.csv"):
        load(copied)


def test_an_empty_table_is_refused(copied: Path) -> None:
    path = copied / "elbows.csv"
    path.write_text(path.read_text(encoding="utf-8").splitlines()[0] + "\n", encoding="utf-8")
    with pytest.raises(CorruptTableError, match="there are no rows"):
        load(copied)


def test_a_corrupt_table_stops_the_command_with_one_line(copied: Path) -> None:
    path = copied / "conduits.csv"
    path.write_text(path.read_text(encoding="utf-8").replace("1.029", "1.092", 1), encoding="utf-8")
    script = (
        "import pathlib, sys\n"
        "real = pathlib.Path.with_name\n"
        f"elsewhere = pathlib.Path({str(copied)!r})\n"
        "pathlib.Path.with_name = lambda path, name: elsewhere if name == 'data' else real(path, name)\n"
        "from ductrun.__main__ import main\n"
        "sys.exit(main(['contract']))\n"
    )
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 1
    assert done.stdout == ""
    assert done.stderr.startswith("ductrun: corrupt table conduits.csv, line ")
    assert done.stderr.count("\n") == 1


def test_every_row_says_where_it_stands() -> None:
    sources = {source.id for source in TABLES["sources"]}
    for name, rows in TABLES.files.items():
        for row in rows if name != "sources" else ():
            assert (row.source or row.wall_source) in sources
            assert (row.standing or row.wall_standing) in STANDINGS


@pytest.mark.parametrize(("kind", "schedule"), [("pvc_schedule_40", "40D1785"), ("pvc_schedule_80", "80D1785")])
def test_outside_diameter_and_wall_agree_with_the_fluids_library(kind: str, schedule: str) -> None:
    """ASTM D1785 as that library holds it; not its bore: OD less two minimum walls, too large for fill."""
    for row in TABLES["conduits"]:
        if row.type == kind:
            size = float(sum(Fraction(part) for part in row.trade_size.split("-")))
            _, inside, outside, wall = nearest_pipe(NPS=size, schedule=schedule)  # type: ignore[arg-type]
            assert outside / 0.0254 == pytest.approx(float(row.outside_diameter_in), abs=6e-4)
            assert wall / 0.0254 == pytest.approx(float(row.minimum_wall_in), abs=6e-4)
            assert inside / 0.0254 > float(row.inside_diameter_in)


def test_the_tables_cannot_be_changed() -> None:
    with pytest.raises(TypeError):
        TABLES.files["conduits"] = ()  # type: ignore[index]
    with pytest.raises(AttributeError):
        TABLES["conduits"][0].trade_size = "7"
