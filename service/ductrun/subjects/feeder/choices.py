"""Closed sets of ampacity and voltage drop."""

from __future__ import annotations

from ductrun.units import Code


class AmpacityMethod(Code):
    """Methods of calculating ampacity; both asks for the one that allows less, with the other beside it."""

    NEHER_MCGRATH = "neher_mcgrath"
    IEC_60287 = "iec_60287"
    BOTH = "both"


class CircuitSystem(Code):
    """Kinds of circuit; of a single phase two wires carry the current."""

    THREE_PHASE = "three_phase"
    SINGLE_PHASE = "single_phase"
    DIRECT_CURRENT = "direct_current"


class BankSetting(Code):
    """Whether a bank is encased in concrete or its ducts are buried directly."""

    ENCASED = "encased"
    DIRECT_BURIED = "direct_buried"


class WallMaterial(Code):
    """What a duct is made of, for the heat that crosses it."""

    PVC = "pvc"
    HDPE = "hdpe"
    RTRC = "rtrc"
    FIBER = "fiber"
    ASBESTOS_CEMENT = "asbestos_cement"
    EARTHENWARE = "earthenware"
    ALUMINUM = "aluminum"
    STEEL = "steel"


class ShieldGrounding(Code):
    """Where shields are grounded."""

    BOTH_ENDS = "both_ends"
    SINGLE_POINT = "single_point"


class TerminalRating(Code):
    """Temperatures that terminals are marked for.

    Unmarked ones are taken for 60 degC to 100 A of the overcurrent device or, without one, of the current, and for
    75 degC above; where neither is given, for 60 degC to 1 AWG.
    """

    UNMARKED = "unmarked"
    DEGC_60 = "60_degc"
    DEGC_75 = "75_degc"
    DEGC_90 = "90_degc"


class AmpacityStudy(Code):
    """What may be asked beside the ampacity."""

    SENSITIVITY = "sensitivity"
    SMALLEST_SIZE = "smallest_size"
    LARGEST_EARTH_RESISTIVITY = "largest_earth_resistivity"
    SMALLEST_SEPARATION = "smallest_separation"


class CircuitConduit(Code):
    """Conduits that Table 9 tells apart."""

    PVC = "pvc"
    ALUMINUM = "aluminum"
    STEEL = "steel"
