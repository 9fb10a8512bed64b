"""Closed sets of a cable pull."""

from __future__ import annotations

from ductrun.units import Code


class ConductorCounting(Code):
    """Published rules for how many conductors share the pull: all of three, or two of three single conductors."""

    ALL_COUNTED = "all_counted"
    TWO_OF_THREE = "two_of_three"


class WeightCorrectionUse(Code):
    """Two readings of the weight correction: in the bend exponent as well, or on straights alone."""

    STRAIGHTS_AND_BENDS = "straights_and_bends"
    STRAIGHTS_ONLY = "straights_only"


class Attachment(Code):
    """Ways to hold the cable: by its conductors or by its jacket."""

    PULLING_EYE = "pulling_eye"
    BASKET_GRIP = "basket_grip"


class BoxPlacing(Code):
    """Where pull points stand if nothing is said of it."""

    BETWEEN_SECTIONS = "between_sections"


class PullDirection(Code):
    """From which end the cable is pulled."""

    FORWARD = "forward"
    REVERSED = "reversed"


class StopBasis(Code):
    """What a stop tension rests on: that no friction loads a bend unseen, or the friction assumed."""

    ANY_FRICTION = "any_friction"
    FRICTION_ASSUMED = "friction_assumed"
