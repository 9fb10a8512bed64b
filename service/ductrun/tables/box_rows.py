"""The rows of the tables about boxes, manholes and handholes; see rows.py for what every row carries."""

from __future__ import annotations

from dataclasses import dataclass

from ductrun.tables.rows import Row


@dataclass(frozen=True, slots=True, kw_only=True)
class BoxMultiple(Row):
    """How many times a trade size, or the diameter of a cable, the room in a box must be.

    `straight` is the length of a straight pull, `angle` the distance to the opposite wall of every other pull, `apart`
    that of two entries of one conductor.
    """

    key: str
    straight: float
    angle: float
    apart: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BoxVoltageThreshold(Row):
    """The voltage over which a code edition sizes boxes by cables and not by raceways."""

    edition: str
    threshold_v: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BendingSpace(Row):
    """Room to bend conductors of some sizes at a terminal that takes one wire."""

    size_from: str
    size_to: str
    space_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BoxAllowance(Row):
    """Volume that one conductor of a size takes in a box."""

    size: str
    volume_in3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class StandardBox(Row):
    """A standard metal box and its volume."""

    size: str
    kind: str
    volume_in3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class StructureSize(Row):
    """A published least or greatest size of a manhole or handhole, and the least opening of its lid."""

    structure: str
    bound: str
    length_ft: float
    width_ft: float
    depth_ft: float
    opening_in: float | None
