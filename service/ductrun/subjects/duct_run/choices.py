"""Closed sets of a whole run."""

from __future__ import annotations

from ductrun.units import Code


class PlaceKind(Code):
    """What stands at an end of a run or at a pull point."""

    MANHOLE = "manhole"
    VAULT = "vault"
    HANDHOLE = "handhole"
    PULL_BOX = "pull_box"
    CONDUIT_BODY = "conduit_body"
    PAD = "pad"
    EQUIPMENT = "equipment"
    POLE_BASE = "pole_base"
    STUB_UP = "stub_up"
    CAPPED = "capped"
    EXISTING_DUCT = "existing_duct"


class SettingKind(Code):
    """How a stretch is laid."""

    ENCASED = "encased"
    DIRECT_BURIED = "direct_buried"
    ABOVE_GROUND = "above_ground"
    BORED = "bored"
    EXISTING = "existing"


class Turn(Code):
    """To which side a bend turns, looking from start to end."""

    LEFT = "left"
    RIGHT = "right"


class StraightLengths(Code):
    """Where the lengths of straights end: at the bends, or at the intersections of their tangents."""

    TANGENT = "tangent"
    TO_INTERSECTIONS = "to_intersections"


class ProfileReference(Code):
    """What the line of a profile is."""

    TOP_OF_ENVELOPE = "top_of_envelope"
    TOP_OF_DUCT = "top_of_duct"
    DUCT_INVERT = "duct_invert"


class PourPractice(Code):
    """Against what concrete is poured."""

    FORMED = "formed"
    TRENCH_FORMED = "trench_formed"


class Service(Code):
    """What a circuit carries."""

    POWER = "power"
    SIGNAL = "signal"


class SupportKind(Code):
    """What holds conduit above ground."""

    STRAP = "strap"
    HANGER = "hanger"
