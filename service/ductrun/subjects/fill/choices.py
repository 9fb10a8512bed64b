"""Closed sets of conduit fill."""

from __future__ import annotations

from ductrun.units import Code


class FillLimitRule(Code):
    """Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit, or that of a nipple."""

    ONE_CONDUCTOR = "one_conductor"
    TWO_CONDUCTORS = "two_conductors"
    OVER_TWO_CONDUCTORS = "over_two_conductors"
    NIPPLE = "nipple"


class ConductorChange(Code):
    """A small change of one line of cables."""

    ONE_MORE = "one_more"
    ONE_SIZE_LARGER = "one_size_larger"
