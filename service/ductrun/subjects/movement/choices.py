"""Closed sets of expansion and supports."""

from __future__ import annotations

from ductrun.units import Code


class ConduitMaterial(Code):
    """Materials of conduit with a coefficient of expansion on file."""

    PVC = "pvc"
    RTRC = "rtrc"
    HDPE = "hdpe"
    STEEL = "steel"
    ALUMINUM = "aluminum"


class RunSetting(Code):
    """Where a run lies, which decides whether it is free to move."""

    ABOVE_GROUND = "above_ground"
    DIRECT_BURIED = "direct_buried"
    ENCASED = "encased"


class PistonConvention(Code):
    """How far to open an expansion fitting: by its full travel, or centered on the movement it takes."""

    FULL_TRAVEL = "full_travel"
    CENTERED = "centered"


class SupportedConduitType(Code):
    """Conduit with a rule of support spacing on file."""

    PVC_SCHEDULE_40 = "pvc_schedule_40"
    PVC_SCHEDULE_80 = "pvc_schedule_80"
    RTRC = "rtrc"
    RMC = "rmc"
    IMC = "imc"
    EMT = "emt"
    FMC = "fmc"
    LFMC = "lfmc"
    LFNC_A = "lfnc_a"
    LFNC_B = "lfnc_b"
    ENT = "ent"


class Coupling(Code):
    """How lengths of rigid or intermediate metal conduit are coupled."""

    THREADED = "threaded"
    THREADLESS = "threadless"
