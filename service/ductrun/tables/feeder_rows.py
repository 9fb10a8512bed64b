"""The rows of the tables about what a circuit carries and loses; see rows.py for what every row carries."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from ductrun.tables.rows import Row


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorResistance(Row):
    """Resistance of a conductor to direct current at 75 degC, Table 8: uncoated and coated copper, and aluminum."""

    size: str
    strands: int
    copper_ohm_per_kft: Decimal
    coated_copper_ohm_per_kft: Decimal
    aluminum_ohm_per_kft: Decimal
    copper_ohm_per_km: Decimal
    coated_copper_ohm_per_km: Decimal | None
    aluminum_ohm_per_km: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorImpedance(Row):
    """Reactance, and resistance by metal and conduit, of one conductor to neutral at 60 Hz and 75 degC, Table 9."""

    size: str
    reactance_nonmagnetic_ohm_per_kft: Decimal
    reactance_steel_ohm_per_kft: Decimal
    copper_in_pvc_ohm_per_kft: Decimal
    copper_in_aluminum_ohm_per_kft: Decimal
    copper_in_steel_ohm_per_kft: Decimal
    aluminum_in_pvc_ohm_per_kft: Decimal | None
    aluminum_in_aluminum_ohm_per_kft: Decimal | None
    aluminum_in_steel_ohm_per_kft: Decimal | None
    reactance_nonmagnetic_ohm_per_km: Decimal
    reactance_steel_ohm_per_km: Decimal
    copper_in_pvc_ohm_per_km: Decimal
    copper_in_aluminum_ohm_per_km: Decimal
    copper_in_steel_ohm_per_km: Decimal
    aluminum_in_pvc_ohm_per_km: Decimal | None
    aluminum_in_aluminum_ohm_per_km: Decimal | None
    aluminum_in_steel_ohm_per_km: Decimal | None


@dataclass(frozen=True, slots=True, kw_only=True)
class TableAmpacity(Row):
    """Ampacity of one size by metal and rated temperature: not more than three in a raceway, at 30 degC."""

    size: str
    copper_60_a: float | None
    copper_75_a: float | None
    copper_90_a: float | None
    aluminum_60_a: float | None
    aluminum_75_a: float | None
    aluminum_90_a: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class AmbientFactor(Row):
    """Factor on table ampacities up to an ambient temperature, by the temperature the conductor is rated for."""

    to_degc: float
    factor_60: float | None
    factor_75: float | None
    factor_90: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class AmpacityAdjustment(Row):
    """Percent of the table ampacity for so many conductors that carry current in one raceway."""

    count_from: int
    count_to: int | None
    percent: float


@dataclass(frozen=True, slots=True, kw_only=True)
class GroundingConductor(Row):
    """Least equipment grounding conductor behind an overcurrent device of so many amperes at most."""

    device_to_a: float
    copper: str
    aluminum: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OvercurrentDevice(Row):
    """A standard rating of overcurrent devices, to 800 A."""

    rating_a: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DuctAir(Row):
    """Constants of the resistance to heat between cables and the duct they lie in.

    A, B and C are those of Neher and McGrath (inches, thermal ohm-feet); U, V and Y those of IEC 60287-2-1.
    """

    duct: str
    a: float | None
    b: float | None
    c: float | None
    u: float
    v: float
    y: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermalMaterial(Row):
    """Thermal resistivity of a material of a `part`, a covering or a duct; of an insulation its dielectric figures too.

    `least_kv` is the voltage to ground from which IEC 60287-1-1 counts its dielectric loss.
    """

    part: str
    material: str
    resistivity_degc_cm_per_w: float
    permittivity: float | None
    loss_factor: float | None
    least_kv: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class InsulationTemperature(Row):
    """Highest temperature of the conductor by the marking of its insulation; none where a place is not allowed.

    `material` is the one of the thermal resistivities it is taken with.
    """

    marking: str
    wet_degc: float | None
    dry_degc: float
    material: str
