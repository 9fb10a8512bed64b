"""The rows of the tables about earth and traffic on ducts; see rows.py for what every row carries."""

from __future__ import annotations

from dataclasses import dataclass

from ductrun.tables.rows import Row


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveLoadCover(Row):
    """The pressure of highway traffic on a pipe by its cover, impact included."""

    cover_ft: float
    pressure_psf: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ImpactFactor(Row):
    """The impact of highway traffic by cover; the last row is open upward."""

    up_to_ft: float | None
    factor: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BeddingConstant(Row):
    """The bedding constant of a duct that is supported over an angle."""

    angle_deg: float
    constant: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SoilReaction(Row):
    """The modulus of soil reaction of an embedment by its compaction."""

    embedment: str
    dumped_psi: float
    slight_psi: float
    moderate_psi: float
    high_psi: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ArchingSoil(Row):
    """The friction of a fill on the walls of its trench, as the product of pressure ratio and coefficient."""

    soil: str
    friction: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DuctStiffness(Row):
    """The least stiffness of a class of duct."""

    type: str
    stiffness_psi: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DuctMaterial(Row):
    """Moduli of a plastic for a moment and for the long term, the stress its wall bears, and its ratio of Poisson."""

    material: str
    modulus_psi: float
    long_term_modulus_psi: float
    allowable_stress_psi: float
    poisson_ratio: float
