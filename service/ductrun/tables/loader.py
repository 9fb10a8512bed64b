"""Read the CSV files into frozen rows, check them, and refuse to go on with a corrupt one.

The type of each column is the type of the field of its row; the checks of checks.py run on every load, so a service
that is up stands on tables that passed them.
"""

from __future__ import annotations

import csv
import hashlib
from collections.abc import Callable
from dataclasses import MISSING, dataclass, fields
from decimal import Decimal, InvalidOperation
from pathlib import Path
from types import MappingProxyType
from typing import Any, TypeVar

from ductrun.tables import box_rows, earth_rows, feeder_rows, ground_rows, rows
from ductrun.tables.checks import CorruptTableError, check

R = TypeVar("R")

FILES: dict[str, type[Any]] = {
    "sources": rows.Source,
    "conduits": rows.Conduit,
    "conductors": rows.Conductor,
    "wire_densities": rows.WireDensity,
    "friction_coefficients": rows.Friction,
    "sidewall_limits": rows.SidewallLimit,
    "basket_grip_limits": rows.GripLimit,
    "conductor_stress_limits": rows.ConductorStress,
    "conductor_counting": rows.ConductorCounting,
    "jam_ratio_bands": rows.JamBand,
    "conduit_bend_radii": rows.ConduitBend,
    "hdpe_bend_radii": rows.HdpeBend,
    "cable_bend_radii": rows.CableBend,
    "elbows": rows.Elbow,
    "vertical_support": rows.VerticalSupport,
    "support_spacing": rows.Support,
    "expansion_coefficients": rows.Expansion,
    "service_temperatures": rows.ServiceTemperature,
    "spacer_intervals": rows.SpacerInterval,
    "duct_separations": ground_rows.Separation,
    "encasement_cover": ground_rows.EncasementCover,
    "cover_to_1000_v": ground_rows.CoverTo1000V,
    "cover_above_1000_v": ground_rows.CoverAbove1000V,
    "cement_yields": ground_rows.CementYield,
    "set_times": ground_rows.SetTime,
    "soils": ground_rows.Soil,
    "side_slopes": ground_rows.SideSlope,
    "reinforcing_bars": ground_rows.ReinforcingBar,
    "tie_hooks": ground_rows.TieHook,
    "duct_densities": ground_rows.DuctDensity,
    "permitted_uses": ground_rows.PermittedUse,
    "ambient_limits": ground_rows.AmbientLimit,
    "fitting_travels": rows.FittingTravel,
    "conductor_resistances": feeder_rows.ConductorResistance,
    "conductor_impedances": feeder_rows.ConductorImpedance,
    "ampacities": feeder_rows.TableAmpacity,
    "ampacity_ambient_factors": feeder_rows.AmbientFactor,
    "ampacity_adjustments": feeder_rows.AmpacityAdjustment,
    "equipment_grounding": feeder_rows.GroundingConductor,
    "overcurrent_devices": feeder_rows.OvercurrentDevice,
    "duct_air_constants": feeder_rows.DuctAir,
    "insulation_temperatures": feeder_rows.InsulationTemperature,
    "thermal_resistivities": feeder_rows.ThermalMaterial,
    "live_load_covers": earth_rows.LiveLoadCover,
    "impact_factors": earth_rows.ImpactFactor,
    "bedding_constants": earth_rows.BeddingConstant,
    "soil_reactions": earth_rows.SoilReaction,
    "arching_soils": earth_rows.ArchingSoil,
    "duct_stiffnesses": earth_rows.DuctStiffness,
    "duct_materials": earth_rows.DuctMaterial,
    "box_multiples": box_rows.BoxMultiple,
    "box_voltage_thresholds": box_rows.BoxVoltageThreshold,
    "bending_spaces": box_rows.BendingSpace,
    "box_allowances": box_rows.BoxAllowance,
    "standard_boxes": box_rows.StandardBox,
    "structure_sizes": box_rows.StructureSize,
    "defaults": rows.Default,
    "code_sections": rows.CodeSection,
}

_READERS: dict[str, Callable[[str], Any]] = {
    "str": str,
    "int": int,
    "int | None": lambda text: int(text) if text else None,
    "float": float,
    "float | None": lambda text: float(text) if text else None,
    "Decimal": Decimal,
    "Decimal | None": lambda text: Decimal(text) if text else None,
    "tuple[str, ...]": lambda text: tuple(text.split()),
}


@dataclass(frozen=True, slots=True)
class Tables:
    """Every reference table, frozen, with a hash of the files they were read from."""

    files: MappingProxyType[str, tuple[Any, ...]]
    hash: str

    def __getitem__(self, name: str) -> tuple[Any, ...]:
        """Give the rows of one file, in the order of the file."""
        return self.files[name]


def read_file(path: Path, row: type[R]) -> tuple[R, ...]:
    """Read one CSV file into rows; a cell of the wrong type or a wrong heading raises CorruptTableError."""
    readers = {field.name: _READERS[str(field.type)] for field in fields(row)}  # type: ignore[arg-type]
    optional = {field.name for field in fields(row) if field.default is not MISSING}  # type: ignore[arg-type]
    found: list[R] = []
    with path.open(encoding="utf-8", newline="") as handle:
        reader = csv.DictReader(handle, strict=True)
        heading = set(reader.fieldnames or ())
        if not (set(readers) - optional <= heading <= set(readers)):
            wanted, has = sorted(readers), sorted(heading)
            raise CorruptTableError(path.name, 1, f"the heading must have {wanted}, but has {has}")
        for cells in reader:
            line = reader.line_num
            values: dict[str, Any] = {}
            for name, text in cells.items():
                try:
                    values[name] = readers[name](text)
                except (ValueError, InvalidOperation, KeyError, TypeError, AttributeError):
                    raise CorruptTableError(path.name, line, f"column {name!r} cannot be read: {text!r}") from None
            found.append(row(**values))
    return tuple(found)


def load(directory: Path) -> Tables:
    """Read, check and freeze every table of a folder; raises CorruptTableError, which names the file and the row."""
    digest = hashlib.sha256()
    files: dict[str, tuple[Any, ...]] = {}
    for name, row in FILES.items():
        path = directory / f"{name}.csv"
        try:
            digest.update(name.encode() + b"\0" + path.read_bytes())
        except OSError as error:
            raise CorruptTableError(path.name, 0, f"the file cannot be read ({error.strerror})") from None
        files[name] = read_file(path, row)
    check(files)
    return Tables(MappingProxyType(files), digest.hexdigest()[:16])
