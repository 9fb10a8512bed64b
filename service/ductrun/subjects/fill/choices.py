"""Closed sets of conduit fill."""

from __future__ import annotations

from ductrun.units import Code


class FillLimitRule(Code):
    """Which line of Chapter 9, Table 1 sets the limit: 53, 31 or 40 percent, or 60 for a nipple."""

    ONE_CONDUCTOR = "one_conductor"
    TWO_CONDUCTORS = "two_conductors"
    OVER_TWO_CONDUCTORS = "over_two_conductors"
    NIPPLE = "nipple"


class ConductorChange(Code):
    """A small change of one line of conductors."""

    ONE_MORE = "one_more"
    ONE_SIZE_LARGER = "one_size_larger"
