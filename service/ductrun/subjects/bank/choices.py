"""Closed sets of a duct bank: spacers, concrete, flotation."""

from __future__ import annotations

from ductrun.units import Code


class SpacerPreset(Code):
    """Intervals of published specifications and of the trade, named after where they come from."""

    CEGS_4FT = "cegs_4ft"
    WSU_ENCASED_8FT = "wsu_encased_8ft"
    WSU_DIRECT_5FT = "wsu_direct_5ft"
    LAWA_DIRECT_4FT = "lawa_direct_4ft"
    TELECOM_DIRECT_10FT = "telecom_direct_10ft"
    MASTER_5_PER_20FT = "master_5_per_20ft"
    TRADE_TWO_PER_10FT = "trade_two_per_10ft"
    TRADE_6FT = "trade_6ft"


class PieceSystem(Code):
    """Whether pieces carry a few ducts, a whole tier, or the whole bank."""

    PIECES = "pieces"
    WHOLE_TIER = "whole_tier"
    WHOLE_BANK = "whole_bank"


class BarSize(Code):
    """Reinforcing bars."""

    NO_3 = "no_3"
    NO_4 = "no_4"
    NO_5 = "no_5"
    NO_6 = "no_6"
    NO_8 = "no_8"


class FlotationMedium(Code):
    """What ducts would float in."""

    CONCRETE = "concrete"
    SLURRY = "slurry"
    GROUNDWATER = "groundwater"


class DuctMaterial(Code):
    """What ducts are made of, as far as its density is on file."""

    PVC = "pvc"
    HDPE = "hdpe"
    RTRC = "rtrc"
    STEEL = "steel"
    ALUMINUM = "aluminum"


class DuctContents(Code):
    """Contents of ducts."""

    EMPTY = "empty"
    WATER = "water"
    CABLE = "cable"


class TopClosure(Code):
    """What closes a spacer stack above the top ducts."""

    NONE = "none"
    CAP = "cap"
    STRAP = "strap"
    INTERMEDIATE = "intermediate"
    BASE = "base"
