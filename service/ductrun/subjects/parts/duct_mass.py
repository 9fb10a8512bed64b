"""Ducts whose mass is not known, for no wall of them is on file: how that is told."""

from __future__ import annotations

from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.worksheet import Worksheet
from ductrun.units import MassPerLength

_MEMBER = "duct_mass_per_length"
_NO_MASS = quantity("flotation.unknown_duct_mass", MassPerLength)


def settle_unknown_masses(unknown_count: int, count: int, sheet: Worksheet) -> None:
    """Say that the mass of so many of all ducts counts as none: given in its place, none would hold for the others too,
    so that it is assumed of all alone, and of some it is noted.
    """
    if unknown_count and unknown_count == count:
        sheet.settle(_MEMBER, None, _NO_MASS)
        return
    sheet.leave(_MEMBER)
    if unknown_count:
        sheet.find(
            Severity.NOTE,
            "duct_mass_left_out",
            "No wall of some ducts is on file, so that their mass is left out: they push up a little less than told. "
            "Give duct_mass_per_length.",
            WORKED_OUT,
            member=_MEMBER,
        )
