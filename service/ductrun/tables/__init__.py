"""Reference data: CSV files with the source of every row, checked and frozen when this package is imported."""

from pathlib import Path

from ductrun.tables.checks import CONDUCTOR_SIZES, TRADE_SIZES, CorruptTableError
from ductrun.tables.loader import Tables, load

DATA = Path(__file__).with_name("data")
TABLES: Tables = load(DATA)

__all__ = ["CONDUCTOR_SIZES", "DATA", "TABLES", "TRADE_SIZES", "CorruptTableError", "Tables", "load"]
