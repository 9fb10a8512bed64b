"""Closed sets of what several subjects ask for: conduit, conductors, cables, bends, banks."""

from __future__ import annotations

from ductrun.units import Code


class ConduitType(Code):
    """Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on file."""

    PVC_SCHEDULE_40 = "pvc_schedule_40"
    PVC_SCHEDULE_80 = "pvc_schedule_80"
    PVC_TYPE_A = "pvc_type_a"
    PVC_TYPE_EB = "pvc_type_eb"
    PVC_DB_60 = "pvc_db_60"
    PVC_DB_100 = "pvc_db_100"
    PVC_DB_120 = "pvc_db_120"
    PVC_EB_20 = "pvc_eb_20"
    PVC_EB_35 = "pvc_eb_35"
    HDPE_SCHEDULE_40 = "hdpe_schedule_40"
    RTRC = "rtrc"
    EMT = "emt"
    IMC = "imc"
    RMC = "rmc"
    ENT = "ent"
    FMC = "fmc"
    LFMC = "lfmc"
    LFNC_A = "lfnc_a"
    LFNC_B = "lfnc_b"


class TradeSize(Code):
    """Trade sizes of conduit; a name, not a dimension."""

    SIZE_3_8 = "3/8"
    SIZE_1_2 = "1/2"
    SIZE_3_4 = "3/4"
    SIZE_1 = "1"
    SIZE_1_1_4 = "1-1/4"
    SIZE_1_1_2 = "1-1/2"
    SIZE_2 = "2"
    SIZE_2_1_2 = "2-1/2"
    SIZE_3 = "3"
    SIZE_3_1_2 = "3-1/2"
    SIZE_4 = "4"
    SIZE_5 = "5"
    SIZE_6 = "6"


class ConductorSize(Code):
    """Sizes of conductors."""

    AWG_18 = "18 AWG"
    AWG_16 = "16 AWG"
    AWG_14 = "14 AWG"
    AWG_12 = "12 AWG"
    AWG_10 = "10 AWG"
    AWG_8 = "8 AWG"
    AWG_6 = "6 AWG"
    AWG_4 = "4 AWG"
    AWG_3 = "3 AWG"
    AWG_2 = "2 AWG"
    AWG_1 = "1 AWG"
    AWG_1_0 = "1/0 AWG"
    AWG_2_0 = "2/0 AWG"
    AWG_3_0 = "3/0 AWG"
    AWG_4_0 = "4/0 AWG"
    KCMIL_250 = "250 kcmil"
    KCMIL_300 = "300 kcmil"
    KCMIL_350 = "350 kcmil"
    KCMIL_400 = "400 kcmil"
    KCMIL_500 = "500 kcmil"
    KCMIL_600 = "600 kcmil"
    KCMIL_700 = "700 kcmil"
    KCMIL_750 = "750 kcmil"
    KCMIL_800 = "800 kcmil"
    KCMIL_900 = "900 kcmil"
    KCMIL_1000 = "1000 kcmil"
    KCMIL_1250 = "1250 kcmil"
    KCMIL_1500 = "1500 kcmil"
    KCMIL_1750 = "1750 kcmil"
    KCMIL_2000 = "2000 kcmil"


class Insulation(Code):
    """Insulation as marked on the conductor; an asterisk, as in Table 5, means without an outer covering."""

    THHN = "THHN"
    THWN = "THWN"
    THWN_2 = "THWN-2"
    XHH = "XHH"
    XHHW = "XHHW"
    XHHW_2 = "XHHW-2"
    ZW = "ZW"
    TW = "TW"
    THW = "THW"
    THHW = "THHW"
    THW_2 = "THW-2"
    RHH = "RHH"
    RHW = "RHW"
    RHW_2 = "RHW-2"
    RHH_NO_COVERING = "RHH*"
    RHW_NO_COVERING = "RHW*"
    RHW_2_NO_COVERING = "RHW-2*"
    USE_2 = "USE-2"


class BareStranding(Code):
    """Make-up of a bare conductor."""

    SOLID = "solid"
    STRANDED = "stranded"


class ConductorMaterial(Code):
    """Metals of conductors."""

    COPPER = "copper"
    ALUMINUM = "aluminum"


class CableArrangement(Code):
    """How cables lie in the conduit; three cables lie triangular or cradled, triplexed if twisted at the factory.

    In the worst case each check takes the arrangement that asks most.
    """

    SINGLE = "single"
    TWO = "two"
    TRIANGULAR = "triangular"
    TRIPLEXED = "triplexed"
    CRADLED = "cradled"
    DIAMOND = "diamond"
    MANY = "many"
    WORST_CASE = "worst_case"


class ConductorTemper(Code):
    """Tempers and alloys of conductors with a published pulling stress."""

    SOFT = "soft"
    HALF_HARD = "half_hard"
    THREE_QUARTER_HARD = "three_quarter_hard"
    HARD = "hard"
    AA_8000 = "aa_8000"


class CableSheath(Code):
    """What a basket grip holds."""

    NONMETALLIC = "nonmetallic"
    COPPER_OR_ALUMINUM = "copper_or_aluminum"


class CableJacket(Code):
    """Jackets with a published friction in conduit."""

    PE = "pe"
    PVC = "pvc"
    NEOPRENE = "neoprene"


class CoveringMaterial(Code):
    """What insulation and jackets are made of, for the heat that crosses them."""

    RUBBER = "rubber"
    PVC = "pvc"
    PE = "pe"
    XLPE = "xlpe"
    EPR = "epr"
    PAPER = "paper"


class BendMade(Code):
    """How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on a wide curve."""

    FACTORY_ELBOW = "factory_elbow"
    FIELD_BEND = "field_bend"
    LAID_ON_CURVE = "laid_on_curve"


class CableType(Code):
    """Kinds of cable with a published sidewall pressure; general where it is not known."""

    GENERAL = "general"
    INSTRUMENTATION = "instrumentation"
    CONTROL_NONSHIELDED_600_V = "control_nonshielded_600_v"
    CONTROL_SHIELDED_600_V = "control_shielded_600_v"
    POWER_NONSHIELDED_600_V = "power_nonshielded_600_v"
    POWER_SHIELDED_5_TO_15_KV = "power_shielded_5_to_15_kv"
    POWER_SHIELDED_25_TO_46_KV = "power_shielded_25_to_46_kv"
    INTERLOCKED_ARMOR = "interlocked_armor"
    CORRUGATED_ARMOR = "corrugated_armor"


class CableShielding(Code):
    """Make-up of a cable that sets its least bending radius."""

    NONSHIELDED = "nonshielded"
    SHIELDED = "shielded"
    INDIVIDUALLY_SHIELDED = "individually_shielded"


class SeparationMeasure(Code):
    """How separations are measured."""

    CLEAR = "clear"
    CENTER_TO_CENTER = "center_to_center"


class BankAlignment(Code):
    """Alignments of tiers of different width."""

    CENTERED = "centered"
    LEFT = "left"
    RIGHT = "right"
