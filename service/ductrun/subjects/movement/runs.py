"""A straight run of conduit, as expansion and supports are asked about it."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.kit.worksheet import Worksheet


class StraightRun(NamedTuple):
    """The length of a straight run [m] and the sheet of the place where it was given."""

    length: float
    place: Worksheet
