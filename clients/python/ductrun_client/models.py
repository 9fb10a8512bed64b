"""The requests and answers of the contract, written by `make clients`: change the contract, not this file.

What may be left out is None. A set of texts is the type of plain texts (`"ft"`); all of them are in its `..._VALUES`.
Answers may grow: members and texts that this version does not know do not disturb it.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, ClassVar, Final, Literal, TypeAlias

from msgspec import Raw, Struct

from .quantities import Quantity

if TYPE_CHECKING:
    AmpacityMethod: TypeAlias = Literal["neher_mcgrath", "iec_60287", "both"]
else:
    AmpacityMethod = str
AMPACITY_METHOD_VALUES: Final[tuple[AmpacityMethod, ...]] = ("neher_mcgrath", "iec_60287", "both")
"""Methods of calculating ampacity; both asks for the one that allows less, with the other beside
it. Answers may bring others."""

if TYPE_CHECKING:
    AmpacityStudy: TypeAlias = Literal[
        "sensitivity", "smallest_size", "largest_earth_resistivity", "smallest_separation"
    ]
else:
    AmpacityStudy = str
AMPACITY_STUDY_VALUES: Final[tuple[AmpacityStudy, ...]] = (
    "sensitivity",
    "smallest_size",
    "largest_earth_resistivity",
    "smallest_separation",
)
"""What may be asked beside the ampacity."""

if TYPE_CHECKING:
    AngleUnit: TypeAlias = Literal["deg", "rad"]
else:
    AngleUnit = str
ANGLE_UNIT_VALUES: Final[tuple[AngleUnit, ...]] = ("deg", "rad")
"""Units of angle."""

if TYPE_CHECKING:
    ApparentPowerUnit: TypeAlias = Literal["kVA"]
else:
    ApparentPowerUnit = str
APPARENT_POWER_UNIT_VALUES: Final[tuple[ApparentPowerUnit, ...]] = ("kVA",)
"""Units of apparent power."""

if TYPE_CHECKING:
    ArchingSoil: TypeAlias = Literal["granular", "sand_and_gravel", "saturated_topsoil", "clay", "saturated_clay"]
else:
    ArchingSoil = str
ARCHING_SOIL_VALUES: Final[tuple[ArchingSoil, ...]] = (
    "granular",
    "sand_and_gravel",
    "saturated_topsoil",
    "clay",
    "saturated_clay",
)
"""Fills of a trench, by their friction on its walls."""

if TYPE_CHECKING:
    AreaUnit: TypeAlias = Literal["mm2", "cm2", "m2", "in2", "ft2"]
else:
    AreaUnit = str
AREA_UNIT_VALUES: Final[tuple[AreaUnit, ...]] = ("mm2", "cm2", "m2", "in2", "ft2")
"""Units of area."""

if TYPE_CHECKING:
    AssumptionPolicy: TypeAlias = Literal["state", "refuse"]
else:
    AssumptionPolicy = str
ASSUMPTION_POLICY_VALUES: Final[tuple[AssumptionPolicy, ...]] = ("state", "refuse")
"""What to do where a field was left out: state what was assumed, or refuse to assume."""

if TYPE_CHECKING:
    Attachment: TypeAlias = Literal["pulling_eye", "basket_grip"]
else:
    Attachment = str
ATTACHMENT_VALUES: Final[tuple[Attachment, ...]] = ("pulling_eye", "basket_grip")
"""Ways to hold the cable: by its conductors or by its jacket."""

if TYPE_CHECKING:
    BankAlignment: TypeAlias = Literal["centered", "left", "right"]
else:
    BankAlignment = str
BANK_ALIGNMENT_VALUES: Final[tuple[BankAlignment, ...]] = ("centered", "left", "right")
"""Alignments of tiers of different width."""

if TYPE_CHECKING:
    BankSetting: TypeAlias = Literal["encased", "direct_buried"]
else:
    BankSetting = str
BANK_SETTING_VALUES: Final[tuple[BankSetting, ...]] = ("encased", "direct_buried")
"""Whether a bank is encased in concrete or its ducts are buried directly."""

if TYPE_CHECKING:
    BarSize: TypeAlias = Literal["no_3", "no_4", "no_5", "no_6", "no_8"]
else:
    BarSize = str
BAR_SIZE_VALUES: Final[tuple[BarSize, ...]] = ("no_3", "no_4", "no_5", "no_6", "no_8")
"""Reinforcing bars. Answers may bring others."""

if TYPE_CHECKING:
    BareStranding: TypeAlias = Literal["solid", "stranded"]
else:
    BareStranding = str
BARE_STRANDING_VALUES: Final[tuple[BareStranding, ...]] = ("solid", "stranded")
"""Make-up of a bare conductor."""

if TYPE_CHECKING:
    BendMade: TypeAlias = Literal["factory_elbow", "field_bend", "laid_on_curve"]
else:
    BendMade = str
BEND_MADE_VALUES: Final[tuple[BendMade, ...]] = ("factory_elbow", "field_bend", "laid_on_curve")
"""How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on a wide
curve."""

if TYPE_CHECKING:
    BoxRule: TypeAlias = Literal[
        "straight_pull",
        "opposite_wall",
        "entries_apart",
        "bending_space",
        "bending_radius",
        "room_for_entries",
        "least_structure",
        "racking",
    ]
else:
    BoxRule = str
BOX_RULE_VALUES: Final[tuple[BoxRule, ...]] = (
    "straight_pull",
    "opposite_wall",
    "entries_apart",
    "bending_space",
    "bending_radius",
    "room_for_entries",
    "least_structure",
    "racking",
)
"""What sets the least of a dimension. Answers may bring others."""

if TYPE_CHECKING:
    BoxWall: TypeAlias = Literal["left", "right", "top", "bottom", "back", "front"]
else:
    BoxWall = str
BOX_WALL_VALUES: Final[tuple[BoxWall, ...]] = ("left", "right", "top", "bottom", "back", "front")
"""Walls of a box, looking at its front; of a manhole the front is its roof and the back its
floor."""

if TYPE_CHECKING:
    BurialLocation: TypeAlias = Literal[
        "not_otherwise_specified",
        "trench_below_2_in_concrete",
        "under_building",
        "under_4_in_exterior_slab_no_vehicles",
        "street_road_driveway_parking_lot",
        "dwelling_driveway",
        "airport_runway",
    ]
else:
    BurialLocation = str
BURIAL_LOCATION_VALUES: Final[tuple[BurialLocation, ...]] = (
    "not_otherwise_specified",
    "trench_below_2_in_concrete",
    "under_building",
    "under_4_in_exterior_slab_no_vehicles",
    "street_road_driveway_parking_lot",
    "dwelling_driveway",
    "airport_runway",
)
"""Where it is buried."""

if TYPE_CHECKING:
    CableArrangement: TypeAlias = Literal[
        "single", "two", "triangular", "triplexed", "cradled", "diamond", "many", "worst_case"
    ]
else:
    CableArrangement = str
CABLE_ARRANGEMENT_VALUES: Final[tuple[CableArrangement, ...]] = (
    "single",
    "two",
    "triangular",
    "triplexed",
    "cradled",
    "diamond",
    "many",
    "worst_case",
)
"""How cables lie in the conduit; three cables lie triangular or cradled, triplexed if twisted at
the factory. In the worst case each check takes the arrangement that asks most. Answers may bring
others."""

if TYPE_CHECKING:
    CableJacket: TypeAlias = Literal["pe", "pvc", "neoprene"]
else:
    CableJacket = str
CABLE_JACKET_VALUES: Final[tuple[CableJacket, ...]] = ("pe", "pvc", "neoprene")
"""Jackets with a published friction in conduit."""

if TYPE_CHECKING:
    CableSheath: TypeAlias = Literal["nonmetallic", "copper_or_aluminum"]
else:
    CableSheath = str
CABLE_SHEATH_VALUES: Final[tuple[CableSheath, ...]] = ("nonmetallic", "copper_or_aluminum")
"""What a basket grip holds."""

if TYPE_CHECKING:
    CableShielding: TypeAlias = Literal["nonshielded", "shielded", "individually_shielded"]
else:
    CableShielding = str
CABLE_SHIELDING_VALUES: Final[tuple[CableShielding, ...]] = ("nonshielded", "shielded", "individually_shielded")
"""Make-up of a cable that sets its least bending radius."""

if TYPE_CHECKING:
    CableType: TypeAlias = Literal[
        "general",
        "instrumentation",
        "control_nonshielded_600_v",
        "control_shielded_600_v",
        "power_nonshielded_600_v",
        "power_shielded_5_to_15_kv",
        "power_shielded_25_to_46_kv",
        "interlocked_armor",
        "corrugated_armor",
    ]
else:
    CableType = str
CABLE_TYPE_VALUES: Final[tuple[CableType, ...]] = (
    "general",
    "instrumentation",
    "control_nonshielded_600_v",
    "control_shielded_600_v",
    "power_nonshielded_600_v",
    "power_shielded_5_to_15_kv",
    "power_shielded_25_to_46_kv",
    "interlocked_armor",
    "corrugated_armor",
)
"""Kinds of cable with a published sidewall pressure; general where it is not known."""

if TYPE_CHECKING:
    ChangeKind: TypeAlias = Literal[
        "brake_limit",
        "end_distance",
        "pigment_percent",
        "lift_height",
        "compaction",
        "fitting_travel",
        "overcurrent_device",
        "temperature_limit",
        "insulation",
        "grounding_conductor",
        "radius",
        "box",
        "cover",
        "riser_conduit_type",
        "conduit_type",
        "concrete_cover",
        "separation",
        "encasement",
        "conductor_size",
        "parallel_sets",
        "trade_size",
        "pull_point",
    ]
else:
    ChangeKind = str
CHANGE_KIND_VALUES: Final[tuple[ChangeKind, ...]] = (
    "brake_limit",
    "end_distance",
    "pigment_percent",
    "lift_height",
    "compaction",
    "fitting_travel",
    "overcurrent_device",
    "temperature_limit",
    "insulation",
    "grounding_conductor",
    "radius",
    "box",
    "cover",
    "riser_conduit_type",
    "conduit_type",
    "concrete_cover",
    "separation",
    "encasement",
    "conductor_size",
    "parallel_sets",
    "trade_size",
    "pull_point",
)
"""What a remedy changes, the cheapest to build first. Answers may bring others."""

if TYPE_CHECKING:
    CircuitConduit: TypeAlias = Literal["pvc", "aluminum", "steel"]
else:
    CircuitConduit = str
CIRCUIT_CONDUIT_VALUES: Final[tuple[CircuitConduit, ...]] = ("pvc", "aluminum", "steel")
"""Conduits that Table 9 tells apart."""

if TYPE_CHECKING:
    CircuitSystem: TypeAlias = Literal["three_phase", "single_phase", "direct_current"]
else:
    CircuitSystem = str
CIRCUIT_SYSTEM_VALUES: Final[tuple[CircuitSystem, ...]] = ("three_phase", "single_phase", "direct_current")
"""Kinds of circuit; of a single phase two wires carry the current."""

if TYPE_CHECKING:
    CodeEdition: TypeAlias = Literal["2017", "2020", "2023"]
else:
    CodeEdition = str
CODE_EDITION_VALUES: Final[tuple[CodeEdition, ...]] = ("2017", "2020", "2023")
"""Editions of NFPA 70 whose numbers and rules an answer can follow."""

if TYPE_CHECKING:
    Compaction: TypeAlias = Literal["dumped", "slight", "moderate", "high"]
else:
    Compaction = str
COMPACTION_VALUES: Final[tuple[Compaction, ...]] = ("dumped", "slight", "moderate", "high")
"""How an embedment is compacted: under 85, 85 to 95, over 95 percent of the standard Proctor
density. Answers may bring others."""

if TYPE_CHECKING:
    ConductorAreaUnit: TypeAlias = Literal["mm2", "kcmil"]
else:
    ConductorAreaUnit = str
CONDUCTOR_AREA_UNIT_VALUES: Final[tuple[ConductorAreaUnit, ...]] = ("mm2", "kcmil")
"""Units of the metal area of a conductor."""

if TYPE_CHECKING:
    ConductorChange: TypeAlias = Literal["one_more", "one_size_larger"]
else:
    ConductorChange = str
CONDUCTOR_CHANGE_VALUES: Final[tuple[ConductorChange, ...]] = ("one_more", "one_size_larger")
"""A small change of one line of cables. Answers may bring others."""

if TYPE_CHECKING:
    ConductorCounting: TypeAlias = Literal["all_counted", "two_of_three"]
else:
    ConductorCounting = str
CONDUCTOR_COUNTING_VALUES: Final[tuple[ConductorCounting, ...]] = ("all_counted", "two_of_three")
"""Published rules for how many conductors share the pull: all of three, or two of three single
conductors."""

if TYPE_CHECKING:
    ConductorMarking: TypeAlias = Literal[
        "THHN",
        "THWN",
        "THWN-2",
        "XHH",
        "XHHW",
        "XHHW-2",
        "ZW",
        "TW",
        "THW",
        "THHW",
        "THW-2",
        "RHH",
        "RHW",
        "RHW-2",
        "RHH*",
        "RHW*",
        "RHW-2*",
        "USE-2",
        "bare",
    ]
else:
    ConductorMarking = str
CONDUCTOR_MARKING_VALUES: Final[tuple[ConductorMarking, ...]] = (
    "THHN",
    "THWN",
    "THWN-2",
    "XHH",
    "XHHW",
    "XHHW-2",
    "ZW",
    "TW",
    "THW",
    "THHW",
    "THW-2",
    "RHH",
    "RHW",
    "RHW-2",
    "RHH*",
    "RHW*",
    "RHW-2*",
    "USE-2",
    "bare",
)
"""What the rows of the conductor table go by: markings of insulation, and bare. Answers may bring
others."""

if TYPE_CHECKING:
    ConductorMaterial: TypeAlias = Literal["copper", "aluminum"]
else:
    ConductorMaterial = str
CONDUCTOR_MATERIAL_VALUES: Final[tuple[ConductorMaterial, ...]] = ("copper", "aluminum")
"""Metals of conductors."""

if TYPE_CHECKING:
    ConductorSize: TypeAlias = Literal[
        "18 AWG",
        "16 AWG",
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "300 kcmil",
        "350 kcmil",
        "400 kcmil",
        "500 kcmil",
        "600 kcmil",
        "700 kcmil",
        "750 kcmil",
        "800 kcmil",
        "900 kcmil",
        "1000 kcmil",
        "1250 kcmil",
        "1500 kcmil",
        "1750 kcmil",
        "2000 kcmil",
    ]
else:
    ConductorSize = str
CONDUCTOR_SIZE_VALUES: Final[tuple[ConductorSize, ...]] = (
    "18 AWG",
    "16 AWG",
    "14 AWG",
    "12 AWG",
    "10 AWG",
    "8 AWG",
    "6 AWG",
    "4 AWG",
    "3 AWG",
    "2 AWG",
    "1 AWG",
    "1/0 AWG",
    "2/0 AWG",
    "3/0 AWG",
    "4/0 AWG",
    "250 kcmil",
    "300 kcmil",
    "350 kcmil",
    "400 kcmil",
    "500 kcmil",
    "600 kcmil",
    "700 kcmil",
    "750 kcmil",
    "800 kcmil",
    "900 kcmil",
    "1000 kcmil",
    "1250 kcmil",
    "1500 kcmil",
    "1750 kcmil",
    "2000 kcmil",
)
"""Sizes of conductors. Answers may bring others."""

if TYPE_CHECKING:
    ConductorTemper: TypeAlias = Literal["soft", "half_hard", "three_quarter_hard", "hard", "aa_8000"]
else:
    ConductorTemper = str
CONDUCTOR_TEMPER_VALUES: Final[tuple[ConductorTemper, ...]] = (
    "soft",
    "half_hard",
    "three_quarter_hard",
    "hard",
    "aa_8000",
)
"""Tempers and alloys of conductors with a published pulling stress."""

if TYPE_CHECKING:
    ConduitMaterial: TypeAlias = Literal["pvc", "rtrc", "hdpe", "steel", "aluminum"]
else:
    ConduitMaterial = str
CONDUIT_MATERIAL_VALUES: Final[tuple[ConduitMaterial, ...]] = ("pvc", "rtrc", "hdpe", "steel", "aluminum")
"""Materials of conduit with a coefficient of expansion on file. Answers may bring others."""

if TYPE_CHECKING:
    ConduitType: TypeAlias = Literal[
        "pvc_schedule_40",
        "pvc_schedule_80",
        "pvc_type_a",
        "pvc_type_eb",
        "pvc_db_60",
        "pvc_db_100",
        "pvc_db_120",
        "pvc_eb_20",
        "pvc_eb_35",
        "hdpe_schedule_40",
        "rtrc",
        "emt",
        "imc",
        "rmc",
        "ent",
        "fmc",
        "lfmc",
        "lfnc_a",
        "lfnc_b",
    ]
else:
    ConduitType = str
CONDUIT_TYPE_VALUES: Final[tuple[ConduitType, ...]] = (
    "pvc_schedule_40",
    "pvc_schedule_80",
    "pvc_type_a",
    "pvc_type_eb",
    "pvc_db_60",
    "pvc_db_100",
    "pvc_db_120",
    "pvc_eb_20",
    "pvc_eb_35",
    "hdpe_schedule_40",
    "rtrc",
    "emt",
    "imc",
    "rmc",
    "ent",
    "fmc",
    "lfmc",
    "lfnc_a",
    "lfnc_b",
)
"""Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on file.
Answers may bring others."""

if TYPE_CHECKING:
    ConduitUse: TypeAlias = Literal[
        "above_ground",
        "sunlight",
        "physical_damage",
        "direct_burial",
        "concrete_encasement",
        "directional_bore",
        "under_building",
        "hazardous_location",
        "emerging_from_grade",
        "within_building",
        "wet_location",
        "corrosive_influence",
        "cinder_fill",
        "plenum",
        "severe_physical_damage",
    ]
else:
    ConduitUse = str
CONDUIT_USE_VALUES: Final[tuple[ConduitUse, ...]] = (
    "above_ground",
    "sunlight",
    "physical_damage",
    "direct_burial",
    "concrete_encasement",
    "directional_bore",
    "under_building",
    "hazardous_location",
    "emerging_from_grade",
    "within_building",
    "wet_location",
    "corrosive_influence",
    "cinder_fill",
    "plenum",
    "severe_physical_damage",
)
"""Places and ways conduit is used. Answers may bring others."""

if TYPE_CHECKING:
    Coupling: TypeAlias = Literal["threaded", "threadless"]
else:
    Coupling = str
COUPLING_VALUES: Final[tuple[Coupling, ...]] = ("threaded", "threadless")
"""How lengths of rigid or intermediate metal conduit are coupled."""

if TYPE_CHECKING:
    CoveringMaterial: TypeAlias = Literal["rubber", "pvc", "pe", "xlpe", "epr", "paper"]
else:
    CoveringMaterial = str
COVERING_MATERIAL_VALUES: Final[tuple[CoveringMaterial, ...]] = ("rubber", "pvc", "pe", "xlpe", "epr", "paper")
"""What insulation and jackets are made of, for the heat that crosses them."""

if TYPE_CHECKING:
    CurrentUnit: TypeAlias = Literal["A", "kA"]
else:
    CurrentUnit = str
CURRENT_UNIT_VALUES: Final[tuple[CurrentUnit, ...]] = ("A", "kA")
"""Units of electric current."""

if TYPE_CHECKING:
    DensityUnit: TypeAlias = Literal["kg/m3", "lb/ft3", "lb/yd3"]
else:
    DensityUnit = str
DENSITY_UNIT_VALUES: Final[tuple[DensityUnit, ...]] = ("kg/m3", "lb/ft3", "lb/yd3")
"""Units of mass per volume."""

if TYPE_CHECKING:
    DrainsTo: TypeAlias = Literal["end", "both_ends"]
else:
    DrainsTo = str
DRAINS_TO_VALUES: Final[tuple[DrainsTo, ...]] = ("end", "both_ends")
"""Where ducts that fall drain to."""

if TYPE_CHECKING:
    DuctContents: TypeAlias = Literal["empty", "water", "cable"]
else:
    DuctContents = str
DUCT_CONTENTS_VALUES: Final[tuple[DuctContents, ...]] = ("empty", "water", "cable")
"""Contents of ducts."""

if TYPE_CHECKING:
    DuctEnds: TypeAlias = Literal["belled", "plain"]
else:
    DuctEnds = str
DUCT_ENDS_VALUES: Final[tuple[DuctEnds, ...]] = ("belled", "plain")
"""Whether sticks have a bell or two plain ends."""

if TYPE_CHECKING:
    DuctMaterial: TypeAlias = Literal["pvc", "hdpe", "rtrc", "steel", "aluminum"]
else:
    DuctMaterial = str
DUCT_MATERIAL_VALUES: Final[tuple[DuctMaterial, ...]] = ("pvc", "hdpe", "rtrc", "steel", "aluminum")
"""What ducts are made of, as far as its density is on file."""

if TYPE_CHECKING:
    DurationUnit: TypeAlias = Literal["s", "min", "h"]
else:
    DurationUnit = str
DURATION_UNIT_VALUES: Final[tuple[DurationUnit, ...]] = ("s", "min", "h")
"""Units of time."""

if TYPE_CHECKING:
    EarthLoadMethod: TypeAlias = Literal["prism", "trench"]
else:
    EarthLoadMethod = str
EARTH_LOAD_METHOD_VALUES: Final[tuple[EarthLoadMethod, ...]] = ("prism", "trench")
"""How earth loads a duct: by the prism above it, or arching on the walls of its trench. Answers may
bring others."""

if TYPE_CHECKING:
    Embedment: TypeAlias = Literal[
        "fine_grained_high_plasticity", "fine_grained", "mixed_grained", "coarse_grained", "crushed_rock"
    ]
else:
    Embedment = str
EMBEDMENT_VALUES: Final[tuple[Embedment, ...]] = (
    "fine_grained_high_plasticity",
    "fine_grained",
    "mixed_grained",
    "coarse_grained",
    "crushed_rock",
)
"""Soils around a duct, by how they support it."""

if TYPE_CHECKING:
    EnergyUnit: TypeAlias = Literal["kWh"]
else:
    EnergyUnit = str
ENERGY_UNIT_VALUES: Final[tuple[EnergyUnit, ...]] = ("kWh",)
"""Units of energy."""

if TYPE_CHECKING:
    ExcavationSoilType: TypeAlias = Literal["stable_rock", "type_a", "type_b", "type_c", "unclassified"]
else:
    ExcavationSoilType = str
EXCAVATION_SOIL_TYPE_VALUES: Final[tuple[ExcavationSoilType, ...]] = (
    "stable_rock",
    "type_a",
    "type_b",
    "type_c",
    "unclassified",
)
"""Soil types of 29 CFR 1926 Subpart P."""

if TYPE_CHECKING:
    ExpansionCoefficientUnit: TypeAlias = Literal["1/degC", "1/degF"]
else:
    ExpansionCoefficientUnit = str
EXPANSION_COEFFICIENT_UNIT_VALUES: Final[tuple[ExpansionCoefficientUnit, ...]] = ("1/degC", "1/degF")
"""Units of a coefficient of thermal expansion."""

if TYPE_CHECKING:
    FillLimitRule: TypeAlias = Literal["one_conductor", "two_conductors", "over_two_conductors", "nipple"]
else:
    FillLimitRule = str
FILL_LIMIT_RULE_VALUES: Final[tuple[FillLimitRule, ...]] = (
    "one_conductor",
    "two_conductors",
    "over_two_conductors",
    "nipple",
)
"""Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit, or that of a
nipple. Answers may bring others."""

if TYPE_CHECKING:
    FlotationMedium: TypeAlias = Literal["concrete", "slurry", "groundwater"]
else:
    FlotationMedium = str
FLOTATION_MEDIUM_VALUES: Final[tuple[FlotationMedium, ...]] = ("concrete", "slurry", "groundwater")
"""What ducts would float in."""

if TYPE_CHECKING:
    ForcePerLengthUnit: TypeAlias = Literal["N/m", "kN/m", "lbf/ft"]
else:
    ForcePerLengthUnit = str
FORCE_PER_LENGTH_UNIT_VALUES: Final[tuple[ForcePerLengthUnit, ...]] = ("N/m", "kN/m", "lbf/ft")
"""Units of force per length."""

if TYPE_CHECKING:
    ForceUnit: TypeAlias = Literal["N", "kN", "lbf", "kgf"]
else:
    ForceUnit = str
FORCE_UNIT_VALUES: Final[tuple[ForceUnit, ...]] = ("N", "kN", "lbf", "kgf")
"""Units of force."""

if TYPE_CHECKING:
    FrequencyUnit: TypeAlias = Literal["Hz"]
else:
    FrequencyUnit = str
FREQUENCY_UNIT_VALUES: Final[tuple[FrequencyUnit, ...]] = ("Hz",)
"""Units of frequency."""

if TYPE_CHECKING:
    GradeUnit: TypeAlias = Literal["deg", "percent"]
else:
    GradeUnit = str
GRADE_UNIT_VALUES: Final[tuple[GradeUnit, ...]] = ("deg", "percent")
"""Units of a grade: an angle from level, or the rise in percent of the level distance."""

if TYPE_CHECKING:
    Insulation: TypeAlias = Literal[
        "THHN",
        "THWN",
        "THWN-2",
        "XHH",
        "XHHW",
        "XHHW-2",
        "ZW",
        "TW",
        "THW",
        "THHW",
        "THW-2",
        "RHH",
        "RHW",
        "RHW-2",
        "RHH*",
        "RHW*",
        "RHW-2*",
        "USE-2",
    ]
else:
    Insulation = str
INSULATION_VALUES: Final[tuple[Insulation, ...]] = (
    "THHN",
    "THWN",
    "THWN-2",
    "XHH",
    "XHHW",
    "XHHW-2",
    "ZW",
    "TW",
    "THW",
    "THHW",
    "THW-2",
    "RHH",
    "RHW",
    "RHW-2",
    "RHH*",
    "RHW*",
    "RHW-2*",
    "USE-2",
)
"""Insulation as marked on the conductor; an asterisk, as in Table 5, means without an outer
covering."""

if TYPE_CHECKING:
    JoiningMethod: TypeAlias = Literal["cemented", "fused", "threaded", "coupled"]
else:
    JoiningMethod = str
JOINING_METHOD_VALUES: Final[tuple[JoiningMethod, ...]] = ("cemented", "fused", "threaded", "coupled")
"""How lengths of a conduit are joined: by solvent cement, fused, threaded, or by couplings set on.
Answers may bring others."""

if TYPE_CHECKING:
    LengthUnit: TypeAlias = Literal["mm", "cm", "m", "in", "ft", "yd"]
else:
    LengthUnit = str
LENGTH_UNIT_VALUES: Final[tuple[LengthUnit, ...]] = ("mm", "cm", "m", "in", "ft", "yd")
"""Units of length."""

if TYPE_CHECKING:
    LiveLoadMethod: TypeAlias = Literal["governing", "handbook_table", "aashto_spread", "boussinesq"]
else:
    LiveLoadMethod = str
LIVE_LOAD_METHOD_VALUES: Final[tuple[LiveLoadMethod, ...]] = (
    "governing",
    "handbook_table",
    "aashto_spread",
    "boussinesq",
)
"""How the load of a wheel is found at a depth; the governing one is the largest of those that go so
shallow. Answers may bring others."""

if TYPE_CHECKING:
    MassPerLengthUnit: TypeAlias = Literal["kg/m", "kg/km", "lb/ft", "lb/1000ft"]
else:
    MassPerLengthUnit = str
MASS_PER_LENGTH_UNIT_VALUES: Final[tuple[MassPerLengthUnit, ...]] = ("kg/m", "kg/km", "lb/ft", "lb/1000ft")
"""Units of mass per length."""

if TYPE_CHECKING:
    MassUnit: TypeAlias = Literal["kg", "t", "lb", "short_ton"]
else:
    MassUnit = str
MASS_UNIT_VALUES: Final[tuple[MassUnit, ...]] = ("kg", "t", "lb", "short_ton")
"""Units of mass."""

if TYPE_CHECKING:
    OperationName: TypeAlias = Literal[
        "duct_run",
        "duct_run_compare",
        "permitted_use",
        "conduit_size",
        "fill",
        "conductor_count",
        "cover",
        "trench",
        "spacers",
        "encasement",
        "flotation",
        "earth_load",
        "joints",
        "expansion",
        "supports",
        "pull_box",
        "pull_plan",
        "pull_tension",
        "ampacity",
        "voltage_drop",
    ]
else:
    OperationName = str
OPERATION_NAME_VALUES: Final[tuple[OperationName, ...]] = (
    "duct_run",
    "duct_run_compare",
    "permitted_use",
    "conduit_size",
    "fill",
    "conductor_count",
    "cover",
    "trench",
    "spacers",
    "encasement",
    "flotation",
    "earth_load",
    "joints",
    "expansion",
    "supports",
    "pull_box",
    "pull_plan",
    "pull_tension",
    "ampacity",
    "voltage_drop",
)
"""The calculations an item may ask for. Answers may bring others."""

if TYPE_CHECKING:
    Page: TypeAlias = Literal["sheet", "takeoff", "crew"]
else:
    Page = str
PAGE_VALUES: Final[tuple[Page, ...]] = ("sheet", "takeoff", "crew")
"""Pages on which an answer may be read: the calculation sheet, the takeoff, and what the crew
needs."""

if TYPE_CHECKING:
    PavementKind: TypeAlias = Literal["asphalt", "concrete", "pavers"]
else:
    PavementKind = str
PAVEMENT_KIND_VALUES: Final[tuple[PavementKind, ...]] = ("asphalt", "concrete", "pavers")
"""What a pavement is made of. Answers may bring others."""

if TYPE_CHECKING:
    PieceSystem: TypeAlias = Literal["pieces", "whole_tier", "whole_bank"]
else:
    PieceSystem = str
PIECE_SYSTEM_VALUES: Final[tuple[PieceSystem, ...]] = ("pieces", "whole_tier", "whole_bank")
"""Whether pieces carry a few ducts, a whole tier, or the whole bank."""

if TYPE_CHECKING:
    PistonConvention: TypeAlias = Literal["full_travel", "centered"]
else:
    PistonConvention = str
PISTON_CONVENTION_VALUES: Final[tuple[PistonConvention, ...]] = ("full_travel", "centered")
"""How far to open an expansion fitting: by its full travel, or centered on the movement it
takes."""

if TYPE_CHECKING:
    PlaceKind: TypeAlias = Literal[
        "manhole",
        "vault",
        "handhole",
        "pull_box",
        "conduit_body",
        "pad",
        "equipment",
        "pole_base",
        "stub_up",
        "capped",
        "existing_duct",
    ]
else:
    PlaceKind = str
PLACE_KIND_VALUES: Final[tuple[PlaceKind, ...]] = (
    "manhole",
    "vault",
    "handhole",
    "pull_box",
    "conduit_body",
    "pad",
    "equipment",
    "pole_base",
    "stub_up",
    "capped",
    "existing_duct",
)
"""What stands at an end of a run or at a pull point. Answers may bring others."""

if TYPE_CHECKING:
    PlasticMaterial: TypeAlias = Literal["pvc", "hdpe"]
else:
    PlasticMaterial = str
PLASTIC_MATERIAL_VALUES: Final[tuple[PlasticMaterial, ...]] = ("pvc", "hdpe")
"""What a duct by its diameters is made of."""

if TYPE_CHECKING:
    PourPractice: TypeAlias = Literal["formed", "trench_formed"]
else:
    PourPractice = str
POUR_PRACTICE_VALUES: Final[tuple[PourPractice, ...]] = ("formed", "trench_formed")
"""Against what concrete is poured."""

if TYPE_CHECKING:
    PourShape: TypeAlias = Literal["bounding_rectangle", "stepped"]
else:
    PourShape = str
POUR_SHAPE_VALUES: Final[tuple[PourShape, ...]] = ("bounding_rectangle", "stepped")
"""Whether concrete fills the bounding rectangle or steps with the tiers."""

if TYPE_CHECKING:
    PowerPerLengthUnit: TypeAlias = Literal["W/m", "W/ft"]
else:
    PowerPerLengthUnit = str
POWER_PER_LENGTH_UNIT_VALUES: Final[tuple[PowerPerLengthUnit, ...]] = ("W/m", "W/ft")
"""Units of power per length."""

if TYPE_CHECKING:
    PowerUnit: TypeAlias = Literal["W", "kW"]
else:
    PowerUnit = str
POWER_UNIT_VALUES: Final[tuple[PowerUnit, ...]] = ("W", "kW")
"""Units of power."""

if TYPE_CHECKING:
    PressureUnit: TypeAlias = Literal["kPa", "MPa", "psi", "psf"]
else:
    PressureUnit = str
PRESSURE_UNIT_VALUES: Final[tuple[PressureUnit, ...]] = ("kPa", "MPa", "psi", "psf")
"""Units of pressure and stress."""

if TYPE_CHECKING:
    ProfileReference: TypeAlias = Literal["top_of_envelope", "top_of_duct", "duct_invert"]
else:
    ProfileReference = str
PROFILE_REFERENCE_VALUES: Final[tuple[ProfileReference, ...]] = ("top_of_envelope", "top_of_duct", "duct_invert")
"""What the line of a profile is."""

if TYPE_CHECKING:
    PullDirection: TypeAlias = Literal["forward", "reversed"]
else:
    PullDirection = str
PULL_DIRECTION_VALUES: Final[tuple[PullDirection, ...]] = ("forward", "reversed")
"""From which end the cable is pulled. Answers may bring others."""

if TYPE_CHECKING:
    PullKind: TypeAlias = Literal["straight", "angle", "u_pull"]
else:
    PullKind = str
PULL_KIND_VALUES: Final[tuple[PullKind, ...]] = ("straight", "angle", "u_pull")
"""How conductors go through a box: to the wall opposite, to a wall beside it, or back out of the
same wall. Answers may bring others."""

if TYPE_CHECKING:
    RankMeasure: TypeAlias = Literal[
        "price",
        "labor_hours",
        "pull_count",
        "highest_utilization",
        "pavement_sawcut",
        "pavement_removal",
        "excavation",
        "shoring",
        "bore",
        "bore_pit",
        "conduit",
        "elbow",
        "field_bend",
        "coupling",
        "expansion_fitting",
        "terminal_adapter",
        "conduit_body",
        "end_bell",
        "duct_plug",
        "cap",
        "wall_penetration",
        "joint",
        "fusion_joint",
        "solvent_cement",
        "primer",
        "base_spacer",
        "intermediate_spacer",
        "top_spacer",
        "tie_down",
        "reinforcing_bar",
        "tie_bar",
        "form",
        "concrete",
        "bank_ground",
        "bedding",
        "select_fill",
        "import",
        "native_backfill",
        "warning_tape",
        "spoil",
        "haul_load",
        "pavement_restoration",
        "strap",
        "hanger",
        "mandrel_pass",
        "pull_cord",
        "lubricant",
        "cable",
        "cable_reel",
        "pulling_eye",
        "cable_support",
    ]
else:
    RankMeasure = str
RANK_MEASURE_VALUES: Final[tuple[RankMeasure, ...]] = (
    "price",
    "labor_hours",
    "pull_count",
    "highest_utilization",
    "pavement_sawcut",
    "pavement_removal",
    "excavation",
    "shoring",
    "bore",
    "bore_pit",
    "conduit",
    "elbow",
    "field_bend",
    "coupling",
    "expansion_fitting",
    "terminal_adapter",
    "conduit_body",
    "end_bell",
    "duct_plug",
    "cap",
    "wall_penetration",
    "joint",
    "fusion_joint",
    "solvent_cement",
    "primer",
    "base_spacer",
    "intermediate_spacer",
    "top_spacer",
    "tie_down",
    "reinforcing_bar",
    "tie_bar",
    "form",
    "concrete",
    "bank_ground",
    "bedding",
    "select_fill",
    "import",
    "native_backfill",
    "warning_tape",
    "spoil",
    "haul_load",
    "pavement_restoration",
    "strap",
    "hanger",
    "mandrel_pass",
    "pull_cord",
    "lubricant",
    "cable",
    "cable_reel",
    "pulling_eye",
    "cable_support",
)
"""What runs are ranked by, least first: a figure of the whole run, or an item of its takeoff.
Answers may bring others."""

if TYPE_CHECKING:
    RequestBack: TypeAlias = Literal["completed"]
else:
    RequestBack = str
REQUEST_BACK_VALUES: Final[tuple[RequestBack, ...]] = ("completed",)
"""How the request comes back with the answer, if asked for: with every default filled in."""

if TYPE_CHECKING:
    ResistancePerLengthUnit: TypeAlias = Literal["ohm/km", "ohm/1000ft"]
else:
    ResistancePerLengthUnit = str
RESISTANCE_PER_LENGTH_UNIT_VALUES: Final[tuple[ResistancePerLengthUnit, ...]] = ("ohm/km", "ohm/1000ft")
"""Units of electric resistance per length."""

if TYPE_CHECKING:
    RunEnd: TypeAlias = Literal["end_bell", "coupling", "adapter", "elbow", "conduit_body", "none"]
else:
    RunEnd = str
RUN_END_VALUES: Final[tuple[RunEnd, ...]] = ("end_bell", "coupling", "adapter", "elbow", "conduit_body", "none")
"""How ducts finish at an end of a run: what is ordered and joined there."""

if TYPE_CHECKING:
    RunSetting: TypeAlias = Literal["above_ground", "direct_buried", "encased"]
else:
    RunSetting = str
RUN_SETTING_VALUES: Final[tuple[RunSetting, ...]] = ("above_ground", "direct_buried", "encased")
"""Where a run lies, which decides whether it is free to move."""

if TYPE_CHECKING:
    SeparationMeasure: TypeAlias = Literal["clear", "center_to_center"]
else:
    SeparationMeasure = str
SEPARATION_MEASURE_VALUES: Final[tuple[SeparationMeasure, ...]] = ("clear", "center_to_center")
"""How separations are measured."""

if TYPE_CHECKING:
    Service: TypeAlias = Literal["power", "signal"]
else:
    Service = str
SERVICE_VALUES: Final[tuple[Service, ...]] = ("power", "signal")
"""What a circuit carries. Answers may bring others."""

if TYPE_CHECKING:
    SettingKind: TypeAlias = Literal["encased", "direct_buried", "above_ground", "bored", "existing"]
else:
    SettingKind = str
SETTING_KIND_VALUES: Final[tuple[SettingKind, ...]] = ("encased", "direct_buried", "above_ground", "bored", "existing")
"""How a stretch is laid. Answers may bring others."""

if TYPE_CHECKING:
    Severity: TypeAlias = Literal["violation", "caution", "note"]
else:
    Severity = str
SEVERITY_VALUES: Final[tuple[Severity, ...]] = ("violation", "caution", "note")
"""Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note. Answers
may bring others."""

if TYPE_CHECKING:
    ShieldGrounding: TypeAlias = Literal["both_ends", "single_point"]
else:
    ShieldGrounding = str
SHIELD_GROUNDING_VALUES: Final[tuple[ShieldGrounding, ...]] = ("both_ends", "single_point")
"""Where shields are grounded."""

if TYPE_CHECKING:
    SoilKind: TypeAlias = Literal["sand", "loam", "clay", "blasted_rock", "dense_clay", "sand_and_gravel"]
else:
    SoilKind = str
SOIL_KIND_VALUES: Final[tuple[SoilKind, ...]] = (
    "sand",
    "loam",
    "clay",
    "blasted_rock",
    "dense_clay",
    "sand_and_gravel",
)
"""Soils with factors from bank to loose and compacted."""

if TYPE_CHECKING:
    SpacerPreset: TypeAlias = Literal[
        "cegs_4ft",
        "wsu_encased_8ft",
        "wsu_direct_5ft",
        "lawa_direct_4ft",
        "telecom_direct_10ft",
        "master_5_per_20ft",
        "trade_two_per_10ft",
        "trade_6ft",
    ]
else:
    SpacerPreset = str
SPACER_PRESET_VALUES: Final[tuple[SpacerPreset, ...]] = (
    "cegs_4ft",
    "wsu_encased_8ft",
    "wsu_direct_5ft",
    "lawa_direct_4ft",
    "telecom_direct_10ft",
    "master_5_per_20ft",
    "trade_two_per_10ft",
    "trade_6ft",
)
"""Intervals of published specifications and of the trade, named after where they come from."""

if TYPE_CHECKING:
    StandardBoxKind: TypeAlias = Literal[
        "round", "square", "device", "masonry", "fs_single", "fd_single", "fs_multiple", "fd_multiple"
    ]
else:
    StandardBoxKind = str
STANDARD_BOX_KIND_VALUES: Final[tuple[StandardBoxKind, ...]] = (
    "round",
    "square",
    "device",
    "masonry",
    "fs_single",
    "fd_single",
    "fs_multiple",
    "fd_multiple",
)
"""Kinds of standard metal boxes; the volume of some is per gang. Answers may bring others."""

if TYPE_CHECKING:
    Standing: TypeAlias = Literal["published", "practice", "memory", "derived", "caller"]
else:
    Standing = str
STANDING_VALUES: Final[tuple[Standing, ...]] = ("published", "practice", "memory", "derived", "caller")
"""What backs a figure: a published source, practice, memory of a source, a derivation, or the
caller. Answers may bring others."""

if TYPE_CHECKING:
    StopBasis: TypeAlias = Literal["any_friction", "friction_assumed"]
else:
    StopBasis = str
STOP_BASIS_VALUES: Final[tuple[StopBasis, ...]] = ("any_friction", "friction_assumed")
"""What a stop tension rests on: that no friction loads a bend unseen, or the friction assumed.
Answers may bring others."""

if TYPE_CHECKING:
    StraightLengths: TypeAlias = Literal["tangent", "to_intersections"]
else:
    StraightLengths = str
STRAIGHT_LENGTHS_VALUES: Final[tuple[StraightLengths, ...]] = ("tangent", "to_intersections")
"""Where the lengths of straights end: at the bends, or at the intersections of their tangents."""

if TYPE_CHECKING:
    Structure: TypeAlias = Literal["pull_box", "handhole", "manhole"]
else:
    Structure = str
STRUCTURE_VALUES: Final[tuple[Structure, ...]] = ("pull_box", "handhole", "manhole")
"""What conductors are pulled through. Answers may bring others."""

if TYPE_CHECKING:
    SupportKind: TypeAlias = Literal["strap", "hanger"]
else:
    SupportKind = str
SUPPORT_KIND_VALUES: Final[tuple[SupportKind, ...]] = ("strap", "hanger")
"""What holds conduit above ground."""

if TYPE_CHECKING:
    SupportedConduitType: TypeAlias = Literal[
        "pvc_schedule_40", "pvc_schedule_80", "rtrc", "rmc", "imc", "emt", "fmc", "lfmc", "lfnc_a", "lfnc_b", "ent"
    ]
else:
    SupportedConduitType = str
SUPPORTED_CONDUIT_TYPE_VALUES: Final[tuple[SupportedConduitType, ...]] = (
    "pvc_schedule_40",
    "pvc_schedule_80",
    "rtrc",
    "rmc",
    "imc",
    "emt",
    "fmc",
    "lfmc",
    "lfnc_a",
    "lfnc_b",
    "ent",
)
"""Conduit with a rule of support spacing on file."""

if TYPE_CHECKING:
    TakeoffGroup: TypeAlias = Literal["site_work", "duct", "bank", "backfill", "supports", "cable"]
else:
    TakeoffGroup = str
TAKEOFF_GROUP_VALUES: Final[tuple[TakeoffGroup, ...]] = ("site_work", "duct", "bank", "backfill", "supports", "cable")
"""Groups of a takeoff, in the order of building. Answers may bring others."""

if TYPE_CHECKING:
    TakeoffItem: TypeAlias = Literal[
        "pavement_sawcut",
        "pavement_removal",
        "excavation",
        "shoring",
        "bore",
        "bore_pit",
        "conduit",
        "elbow",
        "field_bend",
        "coupling",
        "expansion_fitting",
        "terminal_adapter",
        "conduit_body",
        "end_bell",
        "duct_plug",
        "cap",
        "wall_penetration",
        "joint",
        "fusion_joint",
        "solvent_cement",
        "primer",
        "base_spacer",
        "intermediate_spacer",
        "top_spacer",
        "tie_down",
        "reinforcing_bar",
        "tie_bar",
        "form",
        "concrete",
        "bank_ground",
        "bedding",
        "select_fill",
        "import",
        "native_backfill",
        "warning_tape",
        "spoil",
        "haul_load",
        "pavement_restoration",
        "strap",
        "hanger",
        "mandrel_pass",
        "pull_cord",
        "lubricant",
        "cable",
        "cable_reel",
        "pulling_eye",
        "cable_support",
    ]
else:
    TakeoffItem = str
TAKEOFF_ITEM_VALUES: Final[tuple[TakeoffItem, ...]] = (
    "pavement_sawcut",
    "pavement_removal",
    "excavation",
    "shoring",
    "bore",
    "bore_pit",
    "conduit",
    "elbow",
    "field_bend",
    "coupling",
    "expansion_fitting",
    "terminal_adapter",
    "conduit_body",
    "end_bell",
    "duct_plug",
    "cap",
    "wall_penetration",
    "joint",
    "fusion_joint",
    "solvent_cement",
    "primer",
    "base_spacer",
    "intermediate_spacer",
    "top_spacer",
    "tie_down",
    "reinforcing_bar",
    "tie_bar",
    "form",
    "concrete",
    "bank_ground",
    "bedding",
    "select_fill",
    "import",
    "native_backfill",
    "warning_tape",
    "spoil",
    "haul_load",
    "pavement_restoration",
    "strap",
    "hanger",
    "mandrel_pass",
    "pull_cord",
    "lubricant",
    "cable",
    "cable_reel",
    "pulling_eye",
    "cable_support",
)
"""What a line of a takeoff is of, in the order of its group. Answers may bring others."""

if TYPE_CHECKING:
    TakeoffUnit: TypeAlias = Literal["each", "ft", "m", "ft2", "m2", "yd3", "m3", "gal_us", "qt_us", "L", "lb", "kg"]
else:
    TakeoffUnit = str
TAKEOFF_UNIT_VALUES: Final[tuple[TakeoffUnit, ...]] = (
    "each",
    "ft",
    "m",
    "ft2",
    "m2",
    "yd3",
    "m3",
    "gal_us",
    "qt_us",
    "L",
    "lb",
    "kg",
)
"""Units of a takeoff: of counts each, of all else as they are sold or paid. Answers may bring
others."""

if TYPE_CHECKING:
    TemperatureDifferenceUnit: TypeAlias = Literal["delta_degC", "delta_degF"]
else:
    TemperatureDifferenceUnit = str
TEMPERATURE_DIFFERENCE_UNIT_VALUES: Final[tuple[TemperatureDifferenceUnit, ...]] = ("delta_degC", "delta_degF")
"""Units of a difference between two temperatures."""

if TYPE_CHECKING:
    TemperatureUnit: TypeAlias = Literal["degC", "degF", "K"]
else:
    TemperatureUnit = str
TEMPERATURE_UNIT_VALUES: Final[tuple[TemperatureUnit, ...]] = ("degC", "degF", "K")
"""Units of temperature, each with its own zero."""

if TYPE_CHECKING:
    TerminalRating: TypeAlias = Literal["unmarked", "60_degc", "75_degc", "90_degc"]
else:
    TerminalRating = str
TERMINAL_RATING_VALUES: Final[tuple[TerminalRating, ...]] = ("unmarked", "60_degc", "75_degc", "90_degc")
"""Temperatures that terminals are marked for. Unmarked ones are taken for 60 degC to 100 A of the
overcurrent device or, without one, of the current, and for 75 degC above; where neither is given,
for 60 degC to 1 AWG."""

if TYPE_CHECKING:
    ThermalResistanceUnit: TypeAlias = Literal["K.m/W", "degC.ft/W"]
else:
    ThermalResistanceUnit = str
THERMAL_RESISTANCE_UNIT_VALUES: Final[tuple[ThermalResistanceUnit, ...]] = ("K.m/W", "degC.ft/W")
"""Units of thermal resistance of a length; the trade in the US says it in thermal ohm-feet."""

if TYPE_CHECKING:
    ThermalResistivityUnit: TypeAlias = Literal["K.m/W", "degC.cm/W"]
else:
    ThermalResistivityUnit = str
THERMAL_RESISTIVITY_UNIT_VALUES: Final[tuple[ThermalResistivityUnit, ...]] = ("K.m/W", "degC.cm/W")
"""Units of thermal resistivity; the trade in the US says its rho in degC.cm/W."""

if TYPE_CHECKING:
    TopClosure: TypeAlias = Literal["none", "cap", "strap", "intermediate", "base"]
else:
    TopClosure = str
TOP_CLOSURE_VALUES: Final[tuple[TopClosure, ...]] = ("none", "cap", "strap", "intermediate", "base")
"""What closes a spacer stack above the top ducts."""

if TYPE_CHECKING:
    TradeSize: TypeAlias = Literal[
        "3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"
    ]
else:
    TradeSize = str
TRADE_SIZE_VALUES: Final[tuple[TradeSize, ...]] = (
    "3/8",
    "1/2",
    "3/4",
    "1",
    "1-1/4",
    "1-1/2",
    "2",
    "2-1/2",
    "3",
    "3-1/2",
    "4",
    "5",
    "6",
)
"""Trade sizes of conduit; a name, not a dimension. Answers may bring others."""

if TYPE_CHECKING:
    Traffic: TypeAlias = Literal["none", "h_20"]
else:
    Traffic = str
TRAFFIC_VALUES: Final[tuple[Traffic, ...]] = ("none", "h_20")
"""What passes over a duct."""

if TYPE_CHECKING:
    TrenchPractice: TypeAlias = Literal["formed", "trench_formed", "direct_buried"]
else:
    TrenchPractice = str
TRENCH_PRACTICE_VALUES: Final[tuple[TrenchPractice, ...]] = ("formed", "trench_formed", "direct_buried")
"""Practices of laying a bank in its trench."""

if TYPE_CHECKING:
    Turn: TypeAlias = Literal["left", "right"]
else:
    Turn = str
TURN_VALUES: Final[tuple[Turn, ...]] = ("left", "right")
"""To which side a bend turns, looking from start to end."""

if TYPE_CHECKING:
    UnitSystem: TypeAlias = Literal["us", "metric"]
else:
    UnitSystem = str
UNIT_SYSTEM_VALUES: Final[tuple[UnitSystem, ...]] = ("us", "metric")
"""Units of the answer: US customary or metric."""

if TYPE_CHECKING:
    Verdict: TypeAlias = Literal["complies", "violates", "not_judged"]
else:
    Verdict = str
VERDICT_VALUES: Final[tuple[Verdict, ...]] = ("complies", "violates", "not_judged")
"""What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
something. Answers may bring others."""

if TYPE_CHECKING:
    VoltageClass: TypeAlias = Literal["up_to_1000_v", "over_1_kv_to_22_kv", "over_22_kv_to_40_kv", "over_40_kv"]
else:
    VoltageClass = str
VOLTAGE_CLASS_VALUES: Final[tuple[VoltageClass, ...]] = (
    "up_to_1000_v",
    "over_1_kv_to_22_kv",
    "over_22_kv_to_40_kv",
    "over_40_kv",
)
"""Classes of voltage."""

if TYPE_CHECKING:
    VoltageUnit: TypeAlias = Literal["V", "kV"]
else:
    VoltageUnit = str
VOLTAGE_UNIT_VALUES: Final[tuple[VoltageUnit, ...]] = ("V", "kV")
"""Units of voltage."""

if TYPE_CHECKING:
    VolumeMeasure: TypeAlias = Literal["bank", "loose", "compacted"]
else:
    VolumeMeasure = str
VOLUME_MEASURE_VALUES: Final[tuple[VolumeMeasure, ...]] = ("bank", "loose", "compacted")
"""How a volume of earth is measured: in the bank, loose, or compacted; never mixed in one line.
Answers may bring others."""

if TYPE_CHECKING:
    VolumeUnit: TypeAlias = Literal["L", "m3", "in3", "ft3", "yd3", "qt_us", "gal_us"]
else:
    VolumeUnit = str
VOLUME_UNIT_VALUES: Final[tuple[VolumeUnit, ...]] = ("L", "m3", "in3", "ft3", "yd3", "qt_us", "gal_us")
"""Units of volume."""

if TYPE_CHECKING:
    WallMaterial: TypeAlias = Literal[
        "pvc", "hdpe", "rtrc", "fiber", "asbestos_cement", "earthenware", "aluminum", "steel"
    ]
else:
    WallMaterial = str
WALL_MATERIAL_VALUES: Final[tuple[WallMaterial, ...]] = (
    "pvc",
    "hdpe",
    "rtrc",
    "fiber",
    "asbestos_cement",
    "earthenware",
    "aluminum",
    "steel",
)
"""What a duct is made of, for the heat that crosses it."""

if TYPE_CHECKING:
    WeightCorrectionUse: TypeAlias = Literal["straights_and_bends", "straights_only"]
else:
    WeightCorrectionUse = str
WEIGHT_CORRECTION_USE_VALUES: Final[tuple[WeightCorrectionUse, ...]] = ("straights_and_bends", "straights_only")
"""Two readings of the weight correction: in the bend exponent as well, or on straights alone."""

if TYPE_CHECKING:
    WiringMethod: TypeAlias = Literal[
        "direct_buried_cable", "rmc_imc", "nonmetallic_raceway", "gfci_residential", "low_voltage_control"
    ]
else:
    WiringMethod = str
WIRING_METHOD_VALUES: Final[tuple[WiringMethod, ...]] = (
    "direct_buried_cable",
    "rmc_imc",
    "nonmetallic_raceway",
    "gfci_residential",
    "low_voltage_control",
)
"""What is buried, for its cover."""


class AboveGroundSetting(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="above_ground"
):
    """Above ground, on supports."""

    kind: ClassVar[Literal["above_ground"]] = "above_ground"

    fitting_travel: Length | None = None
    """Travel of one expansion fitting. From 0.25 in to 60 in."""

    structure_coefficient: ExpansionCoefficient | None = None
    """How the structure itself moves with temperature: only the difference moves the conduit. From
    1e-07 1/degF to 0.001 1/degF."""

    structure_joints: list[StructureJoint] | None = None
    """Joints of a structure that moves, such as a bridge."""

    support_spacing: Length | None = None
    """Most that supports may stand apart; where the rule of the conduit allows less, that holds.
    From 0.25 ft to 1000 ft."""

    supports: SupportKind | None = None
    """What holds it."""

    uses: list[ConduitUse] | None = None
    """What it meets there beside being above ground."""


class Alive(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The process answers."""

    status: str
    """The word `alive`."""


class AmpacityAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of ampacity with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: AmpacityResult
    """What was calculated."""

    request: AmpacityRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class AmpacityItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="ampacity"
):
    """A question of ampacity."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["ampacity"]] = "ampacity"

    request: AmpacityRequest
    """The body of `POST /v1/ampacity`."""


class AmpacityItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="ampacity"
):
    """An answer of ampacity."""

    answer: AmpacityAnswer
    """The answer of `POST /v1/ampacity`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["ampacity"]] = "ampacity"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class AmpacityRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A bank in the earth, and the circuits in its ducts."""

    bank: DuctBank
    """The duct bank; ducts without a circuit are empty."""

    circuits: list[LoadedCircuit]
    """The circuits. One without a current is looked for: all of them carry alike in every
    conductor."""

    setting: BankSetting
    """Encased in concrete, or ducts buried directly."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    concrete_cover: ConcreteCover | None = None
    """Concrete outside the ducts, where they are encased."""

    concrete_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W."""

    cover: Length | None = None
    """Earth over the envelope, or over the ducts if there is none; this or depth. From 0 in to 1200
    in."""

    depth: Length | None = None
    """From grade to the center of the envelope, or of the ducts if there is none; this or cover.
    From 0 in to 1200 in."""

    duct_air_temperature: Temperature | None = None
    """Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to
    150 degC."""

    duct_material: WallMaterial | None = None
    """What ducts without a type are made of, for their heat; of the others their type tells."""

    duct_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W."""

    earth_temperature: Temperature | None = None
    """Temperature of the earth at that depth, away from the cables. From -20 degC to 70 degC."""

    earth_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the earth and the backfill. From 20 degC.cm/W to 1000 degC.cm/W."""

    frequency: Frequency | None = None
    """Frequency of the alternating current. From 10 Hz to 400 Hz."""

    method: AmpacityMethod | None = None
    """Method; both gives the one that allows less, with the other beside it."""

    studies: list[AmpacityStudy] | None = None
    """What is asked beside the ampacity."""


class AmpacityResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What the bank may carry, and how warm it becomes."""

    ampacity: Current
    """The least of the circuits, each with all its sets."""

    center_depth: Length
    """From grade to the center of the envelope."""

    circuits: list[CircuitAmpacity]
    """The circuits, as in the request."""

    ducts: list[DuctHeat]
    """Loaded ducts, circuit by circuit."""

    envelope_height: Length
    """Height of the concrete, or of the bare ducts."""

    envelope_width: Length
    """Width of the concrete, or of the bare ducts."""

    governing_duct: str
    """The duct whose conductor is nearest to its limit."""

    governing_temperature: Temperature
    """Temperature of the conductor of governing_duct."""

    method: AmpacityMethod
    """The method of the figures; of both the one that allows less."""

    single_duct_ampacity: Current
    """Ampacity of the circuit that governs, all its sets, were each duct loaded alone."""

    single_duct_ratio: float
    """What the circuit that governs may carry here, over single_duct_ampacity."""

    current_factor: float | None = None
    """By which all currents may be multiplied, where all are given."""

    largest_earth_resistivity: ThermalResistivity | None = None
    """Largest resistivity of the earth in which the currents are still carried; if asked."""

    other_method: OtherMethod | None = None
    """Where both were asked."""

    sensitivities: list[AmpacitySensitivity] | None = None
    """What each figure of the earth does to the ampacity, if asked."""

    smallest_separation: Length | None = None
    """Smallest clear separation of all ducts at which the currents are still carried; if asked."""

    smallest_size: ConductorSize | None = None
    """Smallest size that carries the currents, taken by all circuits alike; if asked."""


class AmpacitySensitivity(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What a member of the request, greater by a step, makes of the ampacity."""

    ampacity: Current
    """The ampacity then."""

    ampacity_change_percent: float
    """Change of the ampacity in percent; negative where it falls."""

    member: str
    """Name of the member that is greater, such as cover."""

    step_percent: float
    """By how much the member is greater."""


class AmpacityStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="ampacity"
):
    """An answer of ampacity."""

    answer: AmpacityAnswer
    """The answer of `POST /v1/ampacity`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["ampacity"]] = "ampacity"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Angle(Quantity, frozen=True):
    """An angle with its unit."""

    unit: AngleUnit

    PINT: ClassVar[Mapping[str, str]] = {"deg": "degree", "rad": "radian"}
    CLOSED: ClassVar[bool] = True


class AnyQuantity(Quantity, frozen=True):
    """A value with its unit, of whatever dimension the text beside it says."""

    unit: str

    PINT: ClassVar[Mapping[str, str]] = {
        "A": "ampere",
        "kA": "kiloampere",
        "V": "volt",
        "kV": "kilovolt",
        "W": "watt",
        "kW": "kilowatt",
        "kVA": "kilovolt * ampere",
        "kWh": "kilowatt * hour",
        "ohm/km": "ohm / kilometer",
        "ohm/1000ft": "ohm / (kilofoot)",
        "Hz": "hertz",
        "1": "dimensionless",
        "percent": "percent",
        "mm": "millimeter",
        "cm": "centimeter",
        "m": "meter",
        "in": "inch",
        "ft": "foot",
        "yd": "yard",
        "mm2": "millimeter**2",
        "cm2": "centimeter**2",
        "m2": "meter**2",
        "in2": "inch**2",
        "ft2": "foot**2",
        "kcmil": "kilocircular_mil",
        "L": "liter",
        "m3": "meter**3",
        "in3": "inch**3",
        "ft3": "foot**3",
        "yd3": "yard**3",
        "qt_us": "quart",
        "gal_us": "gallon",
        "deg": "degree",
        "rad": "radian",
        "degC": "degree_Celsius",
        "degF": "degree_Fahrenheit",
        "K": "kelvin",
        "delta_degC": "delta_degree_Celsius",
        "delta_degF": "delta_degree_Fahrenheit",
        "1/degC": "1 / delta_degree_Celsius",
        "1/degF": "1 / delta_degree_Fahrenheit",
        "K.m/W": "kelvin * meter / watt",
        "degC.cm/W": "delta_degree_Celsius * centimeter / watt",
        "degC.ft/W": "delta_degree_Celsius * foot / watt",
        "W/m": "watt / meter",
        "W/ft": "watt / foot",
        "kg": "kilogram",
        "t": "metric_ton",
        "lb": "pound",
        "short_ton": "short_ton",
        "kg/m": "kilogram / meter",
        "kg/km": "kilogram / kilometer",
        "lb/ft": "pound / foot",
        "lb/1000ft": "pound / (kilofoot)",
        "N": "newton",
        "kN": "kilonewton",
        "lbf": "force_pound",
        "kgf": "force_kilogram",
        "N/m": "newton / meter",
        "kN/m": "kilonewton / meter",
        "lbf/ft": "force_pound / foot",
        "kPa": "kilopascal",
        "MPa": "megapascal",
        "psi": "force_pound / inch**2",
        "psf": "force_pound / foot**2",
        "kg/m3": "kilogram / meter**3",
        "lb/ft3": "pound / foot**3",
        "lb/yd3": "pound / yard**3",
        "s": "second",
        "min": "minute",
        "h": "hour",
        "each": "dimensionless",
    }
    CLOSED: ClassVar[bool] = False


class Anywhere(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="anywhere"):
    """Pull points may stand anywhere on a straight, at places no more than a spacing apart."""

    kind: ClassVar[Literal["anywhere"]] = "anywhere"

    spacing: Length
    """Greatest distance between places. From 0.25 ft to 1000 ft."""


class ApparentPower(Quantity, frozen=True):
    """An apparent power with its unit."""

    unit: ApparentPowerUnit

    PINT: ClassVar[Mapping[str, str]] = {"kVA": "kilovolt * ampere"}
    CLOSED: ClassVar[bool] = True


class Area(Quantity, frozen=True):
    """An area with its unit."""

    unit: AreaUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "mm2": "millimeter**2",
        "cm2": "centimeter**2",
        "m2": "meter**2",
        "in2": "inch**2",
        "ft2": "foot**2",
    }
    CLOSED: ClassVar[bool] = True


class Assumption(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A value taken for want of one, with every member it stands in for; a quantity too, where it
    is a figure."""

    citation: str
    """Where it comes from, or that it is practice."""

    pointers: list[str]
    """JSON pointers of the members that were left out."""

    standing: Standing
    """With what right it is taken."""

    text: str
    """The value as a text."""

    quantity: AnyQuantity | None = None
    """The value, where it is a figure."""

    source_id: str | None = None
    """Id of the source in the table of sources."""


class BankGround(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Bare conductors in the envelope."""

    size: ConductorSize
    """Size of the conductor."""

    conductor_count: int | None = None
    """Conductors beside each other."""

    end_length: Length | None = None
    """What each conductor needs beyond each end of the bank. From 0 ft to 1000 ft."""

    waste_percent: float | None = None
    """Waste on the length, in percent."""


class BankGroundTakeoff(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The conductors of the ground."""

    conductor_length: Length
    """All conductors with both their ends."""

    order_length: Length
    """All conductors with both their ends, with waste."""

    size: ConductorSize
    """Size of the conductors."""


class BareCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="bare"):
    """A bare conductor by size, from Chapter 9, Table 8; the circle around all strands counts."""

    kind: ClassVar[Literal["bare"]] = "bare"

    size: ConductorSize
    """Conductor size."""

    allowable_stress: Pressure | None = None
    """Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to
    1000 MPa."""

    bending_radius: Length | None = None
    """Least bending radius of the cable's maker, to the inner wall, in place of the code's. From
    0.5 in to 120000 in."""

    cable_type: CableType | None = None
    """Kind of cable, for its sidewall pressure."""

    jacket: CableJacket | None = None
    """What slides on the conduit, for its published friction."""

    mass_per_length: MassPerLength | None = None
    """Mass per length of one cable; of building wire it is derived from metal and insulation. From
    0.0001 lb/ft to 1000 lb/ft."""

    material: ConductorMaterial | None = None
    """Metal of the conductor, for its mass and for what it bears."""

    sheath: CableSheath | None = None
    """What a basket grip would hold."""

    shielded_conductor_diameter: Length | None = None
    """Outside diameter of one shielded conductor within an individually shielded cable. From 0.01
    in to 60 in."""

    shielding: CableShielding | None = None
    """Make-up of the cable, for its bending radius."""

    stranding: BareStranding | None = None
    """Solid or stranded, where Table 8 has both."""

    temper: ConductorTemper | None = None
    """Temper or alloy of the metal."""


class Basis(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What the answer rests on."""

    service_version: str
    """Version of the service."""

    source_ids: list[str]
    """Ids of the sources that the answer rests on."""

    tables_version: str
    """Hash of all reference tables."""

    code_edition: str | None = None
    """Code and edition followed; absent where a calculation follows none."""


class BatchAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What became of each question, in order."""

    failed_count: int
    """How many of the questions ended in a problem."""

    item_count: int
    """How many questions the batch had."""

    items: list[BatchItemAnswer]
    """What became of each, in the order asked."""


class BatchRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Questions to answer in one go."""

    items: list[BatchItem]
    """The questions, of any calculations in any order."""


class BetweenSections(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="between_sections"
):
    """Pull points may stand at either end of every straight."""

    kind: ClassVar[Literal["between_sections"]] = "between_sections"


class BoredSetting(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="bored"):
    """In a bore; how the ducts are drawn into it is not judged."""

    kind: ClassVar[Literal["bored"]] = "bored"

    bore_diameter: Length | None = None
    """Diameter to which it is reamed. From 0.01 in to 60 in."""

    bundle_diameter: Length | None = None
    """Circle around the ducts drawn in together. From 0.01 in to 60 in."""

    cover: Length | None = None
    """Least earth over the ducts along the bore. From 0 in to 1200 in."""

    drilling_fluid_density: Density | None = None
    """Density of the fluid in the bore: gives how hard the ducts float in it. From 20 lb/ft3 to 300
    lb/ft3."""

    duct_contents: DuctContents | None = None
    """What is in the ducts while they are drawn in."""

    location: BurialLocation | None = None
    """What lies above, for the least cover."""


class BoxCandidate(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A box that can be had."""

    depth: Length
    """From back to front."""

    length: Length
    """From left to right, as listed."""

    pointer: str
    """JSON pointer of its size."""

    turned: bool
    """Whether it holds the entries with length and width exchanged."""

    verdict: Verdict
    """Whether it holds the entries, so far apart as they must lie."""

    width: Length
    """From bottom to top, as listed."""


class BoxCircuit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Conductors that enter a box together and leave it together."""

    name: str
    """Its name, by which the entries speak of it."""

    cables: list[CableLine] | None = None
    """Its cables, all of those in one raceway; needed over the threshold voltage."""

    spliced: bool | None = None
    """Whether it is spliced or tapped in the box."""


class BoxEntry(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A raceway that enters a box, or above the threshold voltage a cable."""

    circuits: list[str]
    """Names of the circuits in it."""

    wall: BoxWall
    """Wall it enters through."""

    conduit: Conduit | None = None
    """Its raceway; needed to the threshold voltage, over which the cables alone decide."""

    offset: Length | None = None
    """Its center across the row, from the back of the box; in the back itself from the bottom. From
    0 in to 1200 in."""

    position: Length | None = None
    """Its center along the row, from the left or from the bottom of the wall. From 0 in to 1200
    in."""

    row: int | None = None
    """Row of its wall, from 1 at the back; of the back itself from the bottom."""


class BoxSize(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of the
    raceways."""

    depth: Length
    """From back to front. From 0.1 in to 1200 in."""

    length: Length
    """From left to right. From 0.1 in to 1200 in."""

    width: Length
    """From bottom to top. From 0.1 in to 1200 in."""


class BrakingCase(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pull at the low friction, at which the cable runs away most, from its own least brake."""

    friction_coefficient: float
    """The low coefficient."""

    highest_tension: Force
    """Highest tension anywhere along the pull."""

    tension: Force
    """Tension at the pulling end."""

    brake_tension: Force | None = None
    """Force with which the reel must hold back, if it must."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest sidewall pressure, if there is a bend."""


class CableConductor(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The conductors within one cable, which a pulling eye holds and which carry the current."""

    count: int
    """Conductors of this size in one cable, shields and grounds not counted."""

    material: ConductorMaterial
    """Metal of the conductor."""

    allowable_stress: Pressure | None = None
    """Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to
    1000 MPa."""

    area: ConductorArea | None = None
    """Metal area of one conductor; give this or the size. From 0.1 kcmil to 10000 kcmil."""

    size: ConductorSize | None = None
    """Conductor size; give this or the area."""

    temper: ConductorTemper | None = None
    """Temper or alloy of the metal."""


class CableInsulation(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The insulation of one conductor, with the screens on both sides of it."""

    material: CoveringMaterial
    """What it is made of."""

    thermal_resistivity: ThermalResistivity | None = None
    """Its thermal resistivity. From 0.01 K.m/W to 50 K.m/W."""

    thickness: Length | None = None
    """Its wall; of several conductors in one jacket this is what tells how they lie. What is left
    up to the jacket is taken for insulation, unless a shield lies there. From 0.001 in to 10 in."""


class CableJacketLayer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The jacket around the cable."""

    material: CoveringMaterial
    """What it is made of."""

    thickness: Length
    """Its wall. From 0.001 in to 10 in."""

    thermal_resistivity: ThermalResistivity | None = None
    """Its thermal resistivity. From 0.01 K.m/W to 50 K.m/W."""


class CableLayers(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What lies between the conductor of a cable and its surface."""

    insulation: CableInsulation
    """Insulation of one conductor."""

    conductor_diameter: Length | None = None
    """Diameter of one conductor. From 0.01 in to 60 in."""

    conductor_resistance: ResistancePerLength | None = None
    """Resistance of one conductor to direct current at 20 degC, in place of that of its metal area.
    From 0.0001 ohm/1000ft to 1000 ohm/1000ft."""

    jacket: CableJacketLayer | None = None
    """Jacket of the cable, if it has one."""

    shield: CableShield | None = None
    """Metal shield of one conductor, if it has one."""


class CableLine(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """So many of one cable."""

    cable: Cable
    """The cable."""

    count: int
    """How many, grounding and bonding conductors included."""


class CableOrder(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What is added to the route at each of its two ends, and how the cable comes."""

    racking_length: Length | None = None
    """Cable around the walls of a manhole or vault, at each end. From 0 ft to 1000 ft."""

    reel_length: Length | None = None
    """Cable on one reel. From 1 ft to 100000 ft."""

    splice: Length | None = None
    """Cable cut away at a splice, at each end. From 0 ft to 1000 ft."""

    tail: Length | None = None
    """Cable beyond the conduit at each end, for grip, pull-through and termination. From 0 ft to
    1000 ft."""

    waste_percent: float | None = None
    """Waste added to the length."""


class CableShield(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The metal shield over the insulation of one conductor."""

    mean_diameter: Length | None = None
    """Its mean diameter. From 0.01 in to 60 in."""

    metal_area: ConductorArea | None = None
    """Area of its copper; this or the resistance. From 0.1 kcmil to 10000 kcmil."""

    resistance: ResistancePerLength | None = None
    """Its resistance at 20 degC; this or the area of its copper. From 0.0001 ohm/1000ft to 1000
    ohm/1000ft."""


class Caution(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A usual caution of the work at hand, whatever the figures."""

    citation: str
    """Where it stands, or that it is practice."""

    code: str
    """Which caution, in one stable word for programs: all are listed in docs/findings.md of the
    service."""

    message: str
    """The sentence for people."""


class Circuit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Alike cables in one or several ducts."""

    cables: list[CableLine] | None = None
    """The cables in each of its ducts; these or same_as."""

    duct_count: int | None = None
    """In place of ducts: how many, the first that are free from the bottom left."""

    ducts: list[str] | None = None
    """The ducts it lies in, tier-position: tier 1 is the bottom one, position 1 the left one,
    looking from start to end."""

    end: str | None = None
    """Name of the end or pull point where it ends."""

    load: RunLoad | None = None
    """Its load: the voltage it loses on its way and what the ducts around it may carry are then
    told. That of same_as, if left out."""

    name: str | None = None
    """Its name."""

    pulling: PullPractice | None = None
    """What differs for it from the pulling of the run."""

    same_as: str | None = None
    """Name of the circuit whose cables it has."""

    service: Service | None = None
    """What it carries."""

    start: str | None = None
    """Name of the end or pull point where it begins."""

    voltage: Voltage | None = None
    """Between conductors; without it the cover over power is not judged. That of same_as, if left
    out. From 1 V to 1e+06 V."""


class CircuitAmpacity(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One circuit, all its sets together."""

    conductor_current: Current
    """Current in each loaded conductor."""

    conductor_temperature: Temperature
    """Temperature of the hottest conductor."""

    current: Current
    """Current of the circuit, as given or as found that it may be."""

    ducts: list[str]
    """Its ducts."""

    parallel_count: int
    """Sets in parallel."""

    temperature_limit: Temperature
    """Most that its conductors may reach."""

    adjusted_table_ampacity: Current | None = None
    """table_ampacity, corrected for the earth and the count in a duct."""

    ampacity: Current | None = None
    """What it may carry: where currents are looked for, with the same in every conductor, so that a
    cooler circuit could carry more; where all are given, with all of them raised alike."""

    grounding_conductor: GroundingSize | None = None
    """Least grounding conductor, where the overcurrent device is given."""

    name: str | None = None
    """What the request calls it."""

    table_ampacity: Current | None = None
    """Ampacity of the circuit by the table of the code, to 2000 V."""

    terminal_ampacity: Current | None = None
    """Current that terminals and insulation allow the circuit."""

    terminal_temperature: Temperature | None = None
    """Temperature that the terminals are taken for."""

    verdict: Verdict | None = None
    """Where its current was given."""


class CircuitFill(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A circuit in one conduit of its way."""

    fill: FillResult
    """The fill of the conduit."""

    places: list[str]
    """The stretches and risers where it lies in such conduit."""

    conduit_type: ConduitType | None = None
    """Its type, where it is given."""

    trade_size: TradeSize | None = None
    """Trade size, where it is given."""


class CircuitPulls(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One pull of a circuit between two stops."""

    cables_to_order: list[OrderedCable]
    """For one duct."""

    direction: PullDirection
    """The better direction: forward pulls toward the end."""

    ducts: list[str]
    """Names of the ducts pulled alike, as tier-position."""

    end: str
    """Stop nearer the end of the run."""

    feed_from: str
    """Stop where the reel stands."""

    length: Length
    """Along the center line."""

    pull: PullTensionResult
    """The pull both ways; its sections from the start of the run."""

    pull_to: str
    """Stop where the rope is pulled."""

    start: str
    """Stop nearer the start of the run."""

    verdict: Verdict
    """Of the pull in its better direction."""

    plan: PullPlanResult | None = None
    """Where pull points would help, if it does not comply."""

    stop_basis: StopBasis | None = None
    """any_friction: with less no bend is beyond its limit, whatever the friction, none too.
    friction_assumed: that would stop the pull below what it is expected to need, so the limits are
    carried on at the friction it is pulled with. Absent without a stop tension."""

    stop_tension: Force | None = None
    """At the pulling end: stop there. What cable, grip and device bear, or less, where a bend has
    its sidewall limit before, as stop_basis says. Absent where what the cable bears, or a bend, is
    not known."""

    tension_safe_at_any_friction: Force | None = None
    """At the pulling end: with less no bend is beyond its limit, whatever the friction, none too.
    Absent without a stop tension."""


class CompactCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="compact"):
    """Insulated building wire of compact stranding by marking and size, from Chapter 9, Table
    5A."""

    insulation: Insulation
    """Insulation as marked."""

    kind: ClassVar[Literal["compact"]] = "compact"

    size: ConductorSize
    """Conductor size."""

    allowable_stress: Pressure | None = None
    """Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to
    1000 MPa."""

    bending_radius: Length | None = None
    """Least bending radius of the cable's maker, to the inner wall, in place of the code's. From
    0.5 in to 120000 in."""

    cable_type: CableType | None = None
    """Kind of cable, for its sidewall pressure."""

    jacket: CableJacket | None = None
    """What slides on the conduit, for its published friction."""

    mass_per_length: MassPerLength | None = None
    """Mass per length of one cable; of building wire it is derived from metal and insulation. From
    0.0001 lb/ft to 1000 lb/ft."""

    material: ConductorMaterial | None = None
    """Metal of the conductor, for its mass and for what it bears."""

    sheath: CableSheath | None = None
    """What a basket grip would hold."""

    shielded_conductor_diameter: Length | None = None
    """Outside diameter of one shielded conductor within an individually shielded cable. From 0.01
    in to 60 in."""

    shielding: CableShielding | None = None
    """Make-up of the cable, for its bending radius."""

    temper: ConductorTemper | None = None
    """Temper or alloy of the metal."""


class ComparedCount(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A count of a run beside that of the base."""

    value: int
    """The count of this run."""

    difference: int | None = None
    """Less that of the base, where it differs."""

    difference_percent: float | None = None
    """The difference in percent of the base."""


class ComparedFinding(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A finding that one of two runs has, by its pointer in that run."""

    code: str
    """What was found, in one stable word for programs."""

    message: str
    """The sentence for people."""

    severity: Severity
    """Violation, caution or note."""

    pointer: str | None = None
    """JSON pointer of the member it is about."""


class ComparedLength(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A length of a run beside that of the base."""

    length: Length
    """The length of this run."""

    difference: Length | None = None
    """Less that of the base, where it differs."""

    difference_percent: float | None = None
    """The difference in percent of the base."""


class ComparedLine(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One line of the takeoffs that is not the same in all runs."""

    description: str
    """The item in words."""

    group: TakeoffGroup
    """The part of the work it belongs to."""

    item: TakeoffItem
    """What it is a line of."""

    runs: list[LineOfRun]
    """Every run in order, the base first."""

    angle: Angle | None = None
    """Angle of an elbow or a field bend."""

    conduit_type: ConduitType | None = None
    """Type of the conduit."""

    measure: VolumeMeasure | None = None
    """How a volume of earth is measured."""

    radius: Length | None = None
    """Radius of an elbow or a field bend."""

    size: str | None = None
    """Trade size, conductor size or bar size."""


class ComparedNumber(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A figure of a run beside that of the base."""

    value: float
    """The number of this run."""

    difference: float | None = None
    """Less that of the base, where it differs."""

    difference_percent: float | None = None
    """The difference in percent of the base."""


class ComparedQuantity(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A quantity of a takeoff beside that of the base."""

    quantity: TakeoffQuantity
    """The quantity of this run."""

    difference: TakeoffQuantity | None = None
    """Less that of the base, where it differs."""

    difference_percent: float | None = None
    """The difference in percent of the base."""


class ComparedRun(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One run: what it says of its limits, its place, its figures beside those of the base, its
    findings."""

    findings_gained: list[ComparedFinding]
    """Findings that the base has not."""

    findings_lost: list[ComparedFinding]
    """Findings that the base alone has."""

    length: ComparedLength
    """Length of a duct from end to end along its center line."""

    name: str
    """Name of the run, as given."""

    plan_length: ComparedLength
    """Length in plan."""

    pull_count: ComparedCount
    """Pulls, one a duct of a circuit from stop to stop."""

    unjudged_pull_count: int
    """How many of the pulls were not judged."""

    violation_count: int
    """How many limits it breaks."""

    highest_utilization_percent: ComparedNumber | None = None
    """The most that a pull uses of its limits from its better end, in percent; no difference where
    a pull was not judged."""

    item_quantity: ComparedQuantity | None = None
    """What it takes of the item it is ranked by."""

    labor_hours: ComparedNumber | None = None
    """By the rates of the run; no difference where one has gaps."""

    labor_hours_gap: str | None = None
    """What the labor hours leave out, if rates are given."""

    not_ranked_because: str | None = None
    """Why it has no place: what gap its measure has."""

    price: ComparedNumber | None = None
    """By the rates of the run; no difference where one has gaps."""

    price_gap: str | None = None
    """What the price leaves out, if rates are given."""

    rank: int | None = None
    """Its place from 1, if ranked: those that comply first, those that do not last, least first;
    alike figures share a place."""

    verdict: Verdict | None = None
    """What this run says of its limits."""


class ConcreteCover(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Concrete outside the ducts."""

    bottom: Length | None = None
    """Below the bottom tier. From 0 in to 240 in."""

    side: Length | None = None
    """Beside the widest tier, each side. From 0 in to 240 in."""

    top: Length | None = None
    """Above the top tier. From 0 in to 240 in."""


class ConductorArea(Quantity, frozen=True):
    """The metal area of a conductor with its unit."""

    unit: ConductorAreaUnit

    PINT: ClassVar[Mapping[str, str]] = {"mm2": "millimeter**2", "kcmil": "kilocircular_mil"}
    CLOSED: ClassVar[bool] = True


class ConductorCountAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of conductor-count with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: ConductorCountResult
    """What was calculated."""

    request: ConductorCountRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class ConductorCountItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conductor_count"
):
    """A question of conductor_count."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["conductor_count"]] = "conductor_count"

    request: ConductorCountRequest
    """The body of `POST /v1/conductor-count`."""


class ConductorCountItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conductor_count"
):
    """An answer of conductor_count."""

    answer: ConductorCountAnswer
    """The answer of `POST /v1/conductor-count`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["conductor_count"]] = "conductor_count"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class ConductorCountRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One cable, and the conduit to be filled with it."""

    cable: Cable
    """The conductor or cable, all of one kind."""

    conduit: Conduit
    """The conduit."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    nipple_length: Length | None = None
    """Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent.
    From 0 ft to 1000 ft."""

    single_cable_rounding: bool | None = None
    """Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence
    speaks of a conductor, and a jacketed cable over 53 percent is often refused in the field. A
    single conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C are."""


class ConductorCountResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How many may be in the conduit, and what decided."""

    conductor_area: Area
    """Area of one conductor."""

    conduit_area: Area
    """Inside area of the conduit, as printed if listed."""

    exact_count: float
    """Percentage of the unrounded conduit area over one conductor's."""

    fill_percent: float
    """What maximum_count conductors fill, in percent of conduit area."""

    limit_percent: float
    """Percentage of the line of Table 1 that decided."""

    limit_reason: str
    """What the line of Table 1 that decided says, in a sentence."""

    limit_rule: FillLimitRule
    """Which line of Table 1 decided."""

    maximum_count: int
    """Most conductors that comply; 0 if not even one does."""

    rounding_decided: bool
    """Whether the count was rounded up, from 0.8 (Note 7)."""


class ConductorCountStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conductor_count"
):
    """An answer of conductor_count."""

    answer: ConductorCountAnswer
    """The answer of `POST /v1/conductor-count`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["conductor_count"]] = "conductor_count"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class ConductorRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One size of one conductor of Chapter 9, Table 5, 5A or 8."""

    area: Area
    """Area over the insulation; of a bare conductor, its overall circle."""

    diameter: Length
    """Diameter over the insulation; of a bare conductor, its own."""

    insulations: list[ConductorMarking]
    """Markings the row serves; an asterisk: without covering."""

    size: ConductorSize
    """Size of the conductor."""

    source_id: str
    """Id of the source; see /v1/tables/sources."""

    standing: Standing
    """With what right it is given."""

    table: str
    """Table of Chapter 9."""

    note: str | None = None
    """Remark on the row."""

    stranding: str | None = None
    """Make-up, where the table tells."""


class ConductorTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Conductor dimensions, with the hash of all tables."""

    rows: list[ConductorRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class ConduitRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One trade size of one conduit type; utility duct has no inside diameter here."""

    metric_designator: int
    """Metric designator; a label, not a dimension."""

    source_id: str
    """Id of the source; see /v1/tables/sources."""

    standing: Standing
    """With what right it is given."""

    trade_size: TradeSize
    """Trade size."""

    type: ConduitType
    """Type of the conduit."""

    area: Area | None = None
    """Area of the bore."""

    inside_diameter: Length | None = None
    """Diameter of the bore."""

    minimum_wall: Length | None = None
    """Least thickness of the wall."""

    note: str | None = None
    """Remark on the row."""

    outside_diameter: Length | None = None
    """Outside diameter, as printed."""

    wall_source_id: str | None = None
    """Source of outside diameter and wall."""

    wall_standing: Standing | None = None
    """Standing of outside diameter and wall."""


class ConduitSizeAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of conduit-size with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: ConduitSizeResult
    """What was calculated."""

    request: ConduitSizeRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class ConduitSizeItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conduit_size"
):
    """A question of conduit_size."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["conduit_size"]] = "conduit_size"

    request: ConduitSizeRequest
    """The body of `POST /v1/conduit-size`."""


class ConduitSizeItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conduit_size"
):
    """An answer of conduit_size."""

    answer: ConduitSizeAnswer
    """The answer of `POST /v1/conduit-size`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["conduit_size"]] = "conduit_size"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class ConduitSizeRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What goes into a conduit whose size is asked for."""

    cables: list[CableLine]
    """Everything in the conduit, grounding and bonding conductors included."""

    type: ConduitType
    """Type of conduit."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    nipple_length: Length | None = None
    """Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent.
    From 0 ft to 1000 ft."""

    single_cable_rounding: bool | None = None
    """Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence
    speaks of a conductor, and a jacketed cable over 53 percent is often refused in the field. A
    single conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C are."""

    spare_percent: float | None = None
    """Share of the permitted area to leave free, in percent."""


class ConduitSizeResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The smallest size that complies, its neighbors, and what small changes would do."""

    candidates: list[SizeCandidate]
    """Every trade size of the type, smallest first."""

    changes: list[SizeChange]
    """For every line: one conductor more, and one conductor size larger."""

    conductor_area: Area
    """Their area together."""

    conductor_count: int
    """Conductors and cables counted."""

    limit_percent: float
    """Percentage of Table 1 that applies."""

    limit_reason: str
    """Why that line applies, in a sentence."""

    limit_rule: FillLimitRule
    """Which line of Table 1 applies."""

    next_trade_size: TradeSize | None = None
    """The next size up, if the type has one."""

    trade_size: TradeSize | None = None
    """Smallest trade size that complies; absent if none does."""


class ConduitSizeStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="conduit_size"
):
    """An answer of conduit_size."""

    answer: ConduitSizeAnswer
    """The answer of `POST /v1/conduit-size`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["conduit_size"]] = "conduit_size"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class ConduitTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Conduit and duct dimensions, with the hash of all tables."""

    rows: list[ConduitRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class CoverAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of cover with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: CoverResult
    """What was calculated."""

    request: CoverRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class CoverItem(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="cover"):
    """A question of cover."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["cover"]] = "cover"

    request: CoverRequest
    """The body of `POST /v1/cover`."""


class CoverItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="cover"
):
    """An answer of cover."""

    answer: CoverAnswer
    """The answer of `POST /v1/cover`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["cover"]] = "cover"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class CoverRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What is buried, and where."""

    location: BurialLocation
    """Where."""

    voltage_class: VoltageClass
    """Voltage between conductors."""

    wiring_method: WiringMethod
    """What is buried."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    concrete_above: Length | None = None
    """Concrete of the envelope above the raceway, where it is encased: the rules measure through
    it. From 0 in to 240 in."""

    concrete_around: Length | None = None
    """Least concrete of the envelope beside and below the raceway, where it is encased: one that is
    not listed for direct burial needs it all round. From 0 in to 240 in."""

    cover: Length | None = None
    """Cover as built or planned, held against the least: earth over the top of what is buried, the
    shortest way to grade; that is its concrete where it is encased. From 0 in to 1200 in."""

    encased: bool | None = None
    """Whether it is encased in concrete."""

    listed_for_direct_burial: bool | None = None
    """Whether a raceway is listed for direct burial without encasement."""


class CoverResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The least cover and how it is measured."""

    concrete_required: Length
    """Concrete needed beside the cover; 0 for none."""

    measured_from: str
    """What the cover is measured between."""

    minimum_cover: Length
    """Least cover, as printed."""

    rule: str
    """Where the figure stands."""

    cover_over_raceway: Length | None = None
    """As judged: the cover given, and the concrete between it and the raceway."""

    margin: Length | None = None
    """By how much it exceeds the least; below 0 if it is too shallow."""


class CoverStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="cover"
):
    """An answer of cover."""

    answer: CoverAnswer
    """The answer of `POST /v1/cover`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["cover"]] = "cover"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Current(Quantity, frozen=True):
    """An electric current with its unit."""

    unit: CurrentUnit

    PINT: ClassVar[Mapping[str, str]] = {"A": "ampere", "kA": "kiloampere"}
    CLOSED: ClassVar[bool] = True


class Density(Quantity, frozen=True):
    """A mass per volume with its unit."""

    unit: DensityUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "kg/m3": "kilogram / meter**3",
        "lb/ft3": "pound / foot**3",
        "lb/yd3": "pound / yard**3",
    }
    CLOSED: ClassVar[bool] = True


class Digging(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How a trench is dug and filled."""

    bedding: Length | None = None
    """Bedding under the bank. From 0 in to 1200 in."""

    bucket_widths: list[Length] | None = None
    """Widths of the buckets at hand: the floor is as wide as the narrowest that digs the width
    wanted."""

    compacted_volume_factor: float | None = None
    """Compacted volume of one in the bank, in place of the soil's."""

    haul_capacity: Volume | None = None
    """What one truck hauls, loose. From 0.1 yd3 to 100 yd3."""

    least_width: Length | None = None
    """Least width of the bottom where ducts are buried directly and width is left out. From 1 in to
    1200 in."""

    loose_volume_factor: float | None = None
    """Loose volume of one in the bank, in place of the soil's."""

    nearest_utility: Length | None = None
    """Clear distance to the nearest other utility. From 0 in to 1200 in."""

    pavement: Pavement | None = None
    """The pavement over the trench, if there is any."""

    select_fill: Length | None = None
    """Select fill over the bank, before native backfill. From 0 in to 1200 in."""

    side_slope_ratio: float | None = None
    """Side of the trench, horizontal for one vertical."""

    soil: SoilKind | None = None
    """What is dug, for its volumes."""

    soil_type: ExcavationSoilType | None = None
    """Soil type of the excavation rules, by the competent person."""

    tape_overlap_percent: float | None = None
    """Extra warning tape."""

    warning_tape_depth: Length | None = None
    """Warning tape below grade; under a pavement that is thicker it lies right under that. From 0
    in to 1200 in."""

    width: Length | None = None
    """Width of the bottom, in place of practice. From 1 in to 1200 in."""

    working_space: Length | None = None
    """Room beside the bank on each side, where width is left out and the trench is not the form.
    From 0 in to 240 in."""


class DirectBuriedSetting(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="direct_buried"
):
    """In earth, without concrete."""

    kind: ClassVar[Literal["direct_buried"]] = "direct_buried"

    cover: Length | None = None
    """Earth over the top of what is buried, its concrete where it is encased, the shortest way to
    grade; needed without a profile. From 0 in to 1200 in."""

    location: BurialLocation | None = None
    """What lies above, for the least cover."""

    on_spacers: bool | None = None
    """Whether spacers hold its ducts apart, where there are several; in concrete they always do."""


class DistanceInterval(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="distance"
):
    """Stations no more than a distance apart, ends included."""

    distance: Length
    """Greatest distance between stations. From 0.25 ft to 1000 ft."""

    kind: ClassVar[Literal["distance"]] = "distance"


class DuctBank(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ducts in tiers: of one kind (tiers), or of several (tier_ducts)."""

    conduit: Conduit
    """The duct; every one, but those of tier_ducts that have their own."""

    alignment: BankAlignment | None = None
    """How tiers of different width stand on each other."""

    horizontal_separation: Length | None = None
    """Distance between ducts of a tier. From 0 in to 240 in."""

    power_signal_separation: Length | None = None
    """Distance between a power and a signal duct. From 0 in to 240 in."""

    separation_measure: SeparationMeasure | None = None
    """Whether the distances are clear or between centers."""

    signal_ducts: list[int] | None = None
    """How many ducts of each tier, the last ones, carry signals beside power."""

    tier_ducts: list[list[DuctsBeside]] | None = None
    """In place of tiers, where ducts differ: those of each tier from left to right, the bottom tier
    first. The ducts of a tier stand on one level."""

    tiers: list[int] | None = None
    """Ducts in each tier, the bottom tier first."""

    vertical_separation: Length | None = None
    """Distance between tiers. From 0 in to 240 in."""


class DuctElbow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Elbows or sweeps of one kind in each duct."""

    angle: Angle
    """Angle. From 0.1 deg to 360 deg."""

    count: int
    """How many in each duct."""

    radius: Length | None = None
    """Radius to the center line; of PVC and metal that of the standard elbow of its size, if left
    out. From 0.5 in to 120000 in."""

    tangent: Length | None = None
    """Straight part at either end. From 0 in to 240 in."""


class DuctHeat(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One loaded duct: where it lies, how warm it is, and what its heat has to cross."""

    air_resistance: ThermalResistance
    """From cables to duct, for all their heat."""

    air_temperature: Temperature
    """Mean of cable and duct."""

    cable_temperature: Temperature
    """At the surface of the cables."""

    conductor_current: Current
    """Current in each of its loaded conductors."""

    conductor_loss: PowerPerLength
    """Heat of one conductor."""

    conductor_resistance: ResistancePerLength
    """Resistance of one conductor to the current, at its temperature."""

    conductor_temperature: Temperature
    """Temperature of its conductors."""

    depth: Length
    """Depth of its center below grade."""

    dielectric_loss: PowerPerLength
    """Heat in one conductor's insulation."""

    duct: str
    """Its name, as tier-position."""

    duct_temperature: Temperature
    """At the outside of the duct."""

    earth_resistance: ThermalResistance
    """Of what surrounds the duct, for the heat of this duct as its load goes."""

    heat: PowerPerLength
    """Heat of all cables in the duct."""

    insulation_resistance: ThermalResistance
    """For the heat of one conductor."""

    jacket_resistance: ThermalResistance
    """For the heat of one cable."""

    mutual_heating_factor: float
    """Product over the other loaded ducts of image distance over distance; 1 of a single one."""

    mutual_rise: TemperatureDifference
    """What the other loaded ducts add."""

    pointer: str
    """What its circuit carries, in the request."""

    shield_loss: PowerPerLength
    """Heat in one conductor's shield."""

    temperature_limit: Temperature
    """Most that its conductors may reach."""

    tier: int
    """Tier, from 1 at the bottom."""

    wall_resistance: ThermalResistance
    """Of the wall of the duct, for all heat."""

    x: Length
    """Distance of its center to the right of the left edge of the ducts."""


class DuctRunAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of duct-run with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: DuctRunResult
    """What was calculated."""

    remedies: Remedies | None = None
    """What would keep the limits it breaks, each tried, if asked for."""

    request: DuctRunRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class DuctRunComparisonAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of duct-run/compare with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: DuctRunComparisonResult
    """What was calculated."""

    request: DuctRunComparisonRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class DuctRunComparisonItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run_compare"
):
    """A question of duct_run_compare."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["duct_run_compare"]] = "duct_run_compare"

    request: DuctRunComparisonRequest
    """The body of `POST /v1/duct-run/compare`."""


class DuctRunComparisonItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run_compare"
):
    """An answer of duct_run_compare."""

    answer: DuctRunComparisonAnswer
    """The answer of `POST /v1/duct-run/compare`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["duct_run_compare"]] = "duct_run_compare"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class DuctRunComparisonRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Whole runs to compare with the first of them."""

    runs: list[NamedRun]
    """The runs; the first is the base that the others are held against."""

    rank_by: RankMeasure | None = None
    """What they are ranked by, least first; of an item what is ordered of it, else what is done."""


class DuctRunComparisonResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Runs side by side; the first is the base."""

    alike_line_count: int
    """Lines that are the same in all runs, and not shown."""

    lines: list[ComparedLine]
    """Lines of the takeoffs in which a run differs."""

    runs: list[ComparedRun]
    """The runs as they were given."""

    rank_by: RankMeasure | None = None
    """What they are ranked by, as asked."""


class DuctRunComparisonStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run_compare"
):
    """An answer of duct_run_compare."""

    answer: DuctRunComparisonAnswer
    """The answer of `POST /v1/duct-run/compare`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["duct_run_compare"]] = "duct_run_compare"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class DuctRunItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run"
):
    """A question of duct_run."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["duct_run"]] = "duct_run"

    request: DuctRunRequest
    """The body of `POST /v1/duct-run`."""


class DuctRunItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run"
):
    """An answer of duct_run."""

    answer: DuctRunAnswer
    """The answer of `POST /v1/duct-run`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["duct_run"]] = "duct_run"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class DuctRunRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A run from end to end."""

    end: RunPlace
    """What stands at the end."""

    start: RunPlace
    """What stands at the start."""

    stretches: list[Stretch]
    """The stretches in order."""

    bank: DuctBank | None = None
    """The duct bank; needed unless every stretch has its own."""

    circuits: list[Circuit] | None = None
    """The circuits; ducts left over are spares."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    concrete: Encasing | None = None
    """How concrete is mixed and bought."""

    digging: Digging | None = None
    """How the trench is dug and filled."""

    earth_load: EarthLoading | None = None
    """Earth and traffic on all that is buried; without it they are not asked."""

    flotation: Floating | None = None
    """What ducts float in and how they are held down while concrete is poured; its lifts are those
    that press on the ducts under earth_load too, where that has none."""

    joining: RunJoining | None = None
    """How ducts are joined."""

    movement: RunMoving | None = None
    """How what lies above ground moves and is held."""

    name: str | None = None
    """Its name."""

    note: str | None = None
    """A remark, told back as it is."""

    ordering: CableOrder | None = None
    """How cable is ordered."""

    profile: Profile | None = None
    """Elevations of ground and line: they give every grade and cover, none is given then."""

    pulling: PullPractice | None = None
    """How cables are pulled."""

    rates: list[Rate] | None = None
    """The caller's rates for what is taken off."""

    rating: RatingPractice | None = None
    """How circuits with a load are rated in the ground, and the one frequency of the run: their
    voltage drop is reckoned at it too."""

    site: Site | None = None
    """The place."""

    spacing: Spacing | None = None
    """How ducts are held apart."""

    straight_lengths: StraightLengths | None = None
    """Where the lengths of straights end: at the bends, or, as dimensioned on a plan, at the
    intersections of their tangents."""


class DuctRunResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The run from end to end."""

    circuits: list[RunCircuit]
    """In the order given."""

    duct_count: int
    """Ducts side by side and above each other."""

    ducts: list[RunDuct]
    """The ducts of the first stretch."""

    length: Length
    """Length of a duct from end to end along its center line."""

    plan_length: Length
    """Length in plan."""

    spare_count: int
    """Ducts in which no circuit lies."""

    stops: list[RunStop]
    """Ends and pull points in order."""

    stretches: list[RunStretch]
    """In order."""

    takeoff: Takeoff
    """What is ordered, dug and done."""

    mandrel_diameter: Length | None = None
    """One mandrel for the whole run, if all its ducts take the same."""

    name: str | None = None
    """What the request calls the run."""

    note: str | None = None
    """The remark of the request."""


class DuctRunStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="duct_run"
):
    """An answer of duct_run."""

    answer: DuctRunAnswer
    """The answer of `POST /v1/duct-run`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["duct_run"]] = "duct_run"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class DuctsBeside(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Like ducts beside each other in a tier."""

    count: int
    """How many ducts."""

    conduit: Conduit | None = None
    """The duct."""


class Duration(Quantity, frozen=True):
    """A time with its unit."""

    unit: DurationUnit

    PINT: ClassVar[Mapping[str, str]] = {"s": "second", "min": "minute", "h": "hour"}
    CLOSED: ClassVar[bool] = True


class EarthLoadAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of earth-load with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: EarthLoadResult
    """What was calculated."""

    request: EarthLoadRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class EarthLoadItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="earth_load"
):
    """A question of earth_load."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["earth_load"]] = "earth_load"

    request: EarthLoadRequest
    """The body of `POST /v1/earth-load`."""


class EarthLoadItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="earth_load"
):
    """An answer of earth_load."""

    answer: EarthLoadAnswer
    """The answer of `POST /v1/earth-load`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["earth_load"]] = "earth_load"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class EarthLoadRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ducts in the ground, and what lies and passes over them."""

    cover: Length
    """Earth over the top of what is buried, which is its concrete where it is encased. From 0 in to
    1200 in."""

    traffic: Traffic
    """What passes over them: nothing, or the axle of H-20 and HS-20."""

    allowable_wall_stress: Pressure | None = None
    """Compression that the wall of a duct bears for the long term. From 10 psi to 100000 psi."""

    arching_soil: ArchingSoil | None = None
    """Fill that arches on the walls of the trench, where its width is given."""

    bank: DuctBank | None = None
    """The duct bank; give this or a conduit."""

    bedding_angle: Angle | None = None
    """Angle over which the bedding supports a duct. From 0 deg to 180 deg."""

    bedding_constant_ratio: float | None = None
    """Bedding constant of the deflection formula, in place of that of the angle."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    compaction: Compaction | None = None
    """How it is compacted."""

    concrete_cover: ConcreteCover | None = None
    """Concrete outside the ducts, where they are encased."""

    concrete_density: Density | None = None
    """Density of the concrete, where the ducts are encased. From 20 lb/ft3 to 300 lb/ft3."""

    conduit: Conduit | None = None
    """The duct, if it is one alone; give this or a bank."""

    deflection_limit_percent: float | None = None
    """Most deflection of the vertical diameter."""

    duct_density: Density | None = None
    """Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3
    to 300 lb/ft3."""

    duct_mass_per_length: MassPerLength | None = None
    """Mass of an empty duct, for flotation. From 0 lb/ft to 1000 lb/ft."""

    duct_material: PlasticMaterial | None = None
    """What ducts by their diameters and of no type are made of."""

    earth_load_method: EarthLoadMethod | None = None
    """How earth loads the ducts: the prism above them, or arching on the walls of the trench."""

    embedment: Embedment | None = None
    """Soil around the ducts, in place of which its modulus may be given."""

    encased: bool | None = None
    """Whether it is encased in concrete."""

    flotation_safety_factor: float | None = None
    """What holds the ducts down, over the uplift of groundwater, at least."""

    groundwater_depth: Length | None = None
    """Groundwater below grade, at its highest. From 0 in to 1200 in."""

    lag_factor: float | None = None
    """By how much the deflection under the earth grows in the long term."""

    lift_height: Length | None = None
    """Depth of concrete that is liquid at once, where they are encased; the whole pour if left out.
    From 0.25 ft to 1000 ft."""

    live_load_method: LiveLoadMethod | None = None
    """How the load of a wheel is found at the depth of the ducts; the governing one is the
    largest."""

    load_spread_ratio: float | None = None
    """By how much the load of a tire print widens with the depth, for the AASHTO spread."""

    long_term_modulus: Pressure | None = None
    """Modulus of elasticity of the ducts for the long term, for buckling. From 1000 psi to 1e+08
    psi."""

    modulus: Pressure | None = None
    """Modulus of elasticity of the ducts for a moment. From 1000 psi to 1e+08 psi."""

    pipe_stiffness: Pressure | None = None
    """Stiffness of the ducts at 5 percent deflection. From 1 psi to 1e+06 psi."""

    saturated_soil_density: Density | None = None
    """Mass per volume of the earth below groundwater, for flotation. From 50 lb/ft3 to 200
    lb/ft3."""

    soil_density: Density | None = None
    """Mass of the earth over the ducts per volume. From 50 lb/ft3 to 200 lb/ft3."""

    soil_modulus: Pressure | None = None
    """Modulus of soil reaction, in place of that of embedment and compaction. From 0 psi to 20000
    psi."""

    trench_width: Length | None = None
    """Width of the trench at the top of the ducts, for arching. From 1 in to 1200 in."""

    wheel_load: Force | None = None
    """Load of one wheel of the axle, under traffic. From 1 lbf to 500000 lbf."""


class EarthLoadResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ducts under earth and traffic; without tiers where no load was put on them."""

    tiers: list[TierUnderLoad]
    """Ducts in earth by tier, the bottom first, each kind of a tier."""

    tiers_in_pour: list[TierInPour]
    """Encased ducts in wet concrete by tier, the bottom first, each kind of a tier."""

    deflection_percent: float | None = None
    """The largest deflection of all tiers."""

    earth_load_method: EarthLoadMethod | None = None
    """How earth was taken to load."""

    highest_deflection_percent: float | None = None
    """The high end of what the formula stands for there."""

    in_service: InService | None = None
    """Whether the empty ducts stay down in groundwater."""

    lowest_deflection_percent: float | None = None
    """The low end of what the formula stands for there."""

    soil_modulus: Pressure | None = None
    """Modulus of soil reaction that was taken."""

    would_comply: WouldComply | None = None
    """What would comply, of ducts in earth."""


class EarthLoadStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="earth_load"
):
    """An answer of earth_load."""

    answer: EarthLoadAnswer
    """The answer of `POST /v1/earth-load`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["earth_load"]] = "earth_load"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class EarthLoading(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What lies and passes over ducts, how they are bedded, and the limits they are held
    against."""

    traffic: Traffic
    """What passes over them: nothing, or the axle of H-20 and HS-20."""

    allowable_wall_stress: Pressure | None = None
    """Compression that the wall of a duct bears for the long term. From 10 psi to 100000 psi."""

    arching_soil: ArchingSoil | None = None
    """Fill that arches on the walls of the trench, where its width is given."""

    bedding_angle: Angle | None = None
    """Angle over which the bedding supports a duct. From 0 deg to 180 deg."""

    bedding_constant_ratio: float | None = None
    """Bedding constant of the deflection formula, in place of that of the angle."""

    compaction: Compaction | None = None
    """How it is compacted."""

    concrete_density: Density | None = None
    """Density of the concrete, where the ducts are encased. From 20 lb/ft3 to 300 lb/ft3."""

    deflection_limit_percent: float | None = None
    """Most deflection of the vertical diameter."""

    duct_density: Density | None = None
    """Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3
    to 300 lb/ft3."""

    duct_mass_per_length: MassPerLength | None = None
    """Mass of an empty duct, for flotation. From 0 lb/ft to 1000 lb/ft."""

    duct_material: PlasticMaterial | None = None
    """What ducts by their diameters and of no type are made of."""

    earth_load_method: EarthLoadMethod | None = None
    """How earth loads the ducts: the prism above them, or arching on the walls of the trench."""

    embedment: Embedment | None = None
    """Soil around the ducts, in place of which its modulus may be given."""

    flotation_safety_factor: float | None = None
    """What holds the ducts down, over the uplift of groundwater, at least."""

    lag_factor: float | None = None
    """By how much the deflection under the earth grows in the long term."""

    lift_height: Length | None = None
    """Depth of concrete that is liquid at once, where they are encased; the whole pour if left out.
    From 0.25 ft to 1000 ft."""

    live_load_method: LiveLoadMethod | None = None
    """How the load of a wheel is found at the depth of the ducts; the governing one is the
    largest."""

    load_spread_ratio: float | None = None
    """By how much the load of a tire print widens with the depth, for the AASHTO spread."""

    long_term_modulus: Pressure | None = None
    """Modulus of elasticity of the ducts for the long term, for buckling. From 1000 psi to 1e+08
    psi."""

    modulus: Pressure | None = None
    """Modulus of elasticity of the ducts for a moment. From 1000 psi to 1e+08 psi."""

    pipe_stiffness: Pressure | None = None
    """Stiffness of the ducts at 5 percent deflection. From 1 psi to 1e+06 psi."""

    saturated_soil_density: Density | None = None
    """Mass per volume of the earth below groundwater, for flotation. From 50 lb/ft3 to 200
    lb/ft3."""

    soil_density: Density | None = None
    """Mass of the earth over the ducts per volume. From 50 lb/ft3 to 200 lb/ft3."""

    soil_modulus: Pressure | None = None
    """Modulus of soil reaction, in place of that of embedment and compaction. From 0 psi to 20000
    psi."""

    trench_width: Length | None = None
    """Width of the trench at the top of the ducts, for arching. From 1 in to 1200 in."""

    wheel_load: Force | None = None
    """Load of one wheel of the axle, under traffic. From 1 lbf to 500000 lbf."""


class EarthRating(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The earth a bank lies in, and the method it is rated by."""

    concrete_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W."""

    duct_air_temperature: Temperature | None = None
    """Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to
    150 degC."""

    duct_material: WallMaterial | None = None
    """What ducts without a type are made of, for their heat; of the others their type tells."""

    duct_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W."""

    earth_temperature: Temperature | None = None
    """Temperature of the earth at that depth, away from the cables. From -20 degC to 70 degC."""

    earth_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the earth and the backfill. From 20 degC.cm/W to 1000 degC.cm/W."""

    method: AmpacityMethod | None = None
    """Method; both gives the one that allows less, with the other beside it."""


class ElevationPoint(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ground and line at one station."""

    ground: Length
    """Elevation of finished grade. From -100000 ft to 100000 ft."""

    line: Length
    """Elevation of the line. From -100000 ft to 100000 ft."""

    station: Length
    """Distance in plan from the start of the run. From 0 ft to 1e+07 ft."""


class EncasedSetting(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="encased"
):
    """In concrete, in a trench."""

    kind: ClassVar[Literal["encased"]] = "encased"

    concrete_cover: ConcreteCover | None = None
    """Concrete on every side of the ducts."""

    cover: Length | None = None
    """Earth over the top of what is buried, its concrete where it is encased, the shortest way to
    grade; needed without a profile. From 0 in to 1200 in."""

    location: BurialLocation | None = None
    """What lies above, for the least cover."""

    pour: PourPractice | None = None
    """Whether the concrete is poured against forms or against the trench."""

    pour_shape: PourShape | None = None
    """Whether a formed pour fills the bounding rectangle or steps with the tiers."""


class EncasementAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of encasement with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: EncasementResult
    """What was calculated."""

    request: EncasementRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class EncasementItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="encasement"
):
    """A question of encasement."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["encasement"]] = "encasement"

    request: EncasementRequest
    """The body of `POST /v1/encasement`."""


class EncasementItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="encasement"
):
    """An answer of encasement."""

    answer: EncasementAnswer
    """The answer of `POST /v1/encasement`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["encasement"]] = "encasement"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class EncasementRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A length of duct bank in concrete."""

    bank: DuctBank
    """The duct bank."""

    length: Length
    """Length of the pour, to the outside face of each manhole. From 0.01 ft to 100000 ft."""

    bag_mass: Mass | None = None
    """Mass of one bag of pre-mix, for small pours. From 1 lb to 5000 lb."""

    bank_ground: BankGround | None = None
    """Bare conductors in the envelope, if any."""

    cement_content: Density | None = None
    """Cement in the mix. From 1 lb/ft3 to 100 lb/ft3."""

    concrete_cover: ConcreteCover | None = None
    """Concrete above, below and beside the ducts."""

    concrete_density: Density | None = None
    """Density of fresh concrete. From 50 lb/ft3 to 300 lb/ft3."""

    maximum_aggregate_size: Length | None = None
    """Largest aggregate of the mix. From 0 in to 240 in."""

    order_increment: Volume | None = None
    """Step in which the plant sells. From 0.001 yd3 to 100 yd3."""

    pigment_percent: float | None = None
    """Color in percent of the mass of cement, for a marked mix."""

    pour_shape: PourShape | None = None
    """Whether the pour fills the bounding rectangle or steps with the tiers."""

    reinforcing: Reinforcing | None = None
    """Bars in the envelope."""

    side_slope_ratio: float | None = None
    """Side of the trench, horizontal for one vertical, when the trench is the form."""

    trench_width: Length | None = None
    """Width of the trench where the concrete begins, when the trench is the form; left out for a
    formed pour. From 1 in to 1200 in."""

    truck_capacity: Volume | None = None
    """What one truck brings. From 0.1 yd3 to 100 yd3."""

    waste_percent: float | None = None
    """Waste on the net volume, in percent."""


class EncasementResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Envelope, volumes and what to order."""

    bag_count: int
    """Bags of pre-mix for the net volume with waste."""

    concrete_mass: Mass
    """Mass of the net volume."""

    duct_volume: Volume
    """What the ducts displace, by outside diameter."""

    ducts: list[PlacedDuct]
    """Where every duct lies."""

    envelope_height: Length
    """Height of the concrete."""

    envelope_width: Length
    """Greatest width of the concrete; at its bottom in a sloped trench."""

    form_area: Area
    """Forms along the pour, without its ends; 0 against earth."""

    gross_volume: Volume
    """Volume of the envelope."""

    net_volume: Volume
    """Concrete in place, without waste."""

    order_volume: Volume
    """With waste, up to the next step the plant sells."""

    truck_load_count: int
    """Truck loads for the order."""

    bank_ground_takeoff: BankGroundTakeoff | None = None
    """Bare conductors in the envelope, if asked for."""

    envelope_top_width: Length | None = None
    """Width of the concrete at its top, against the sides of a trench."""

    form_pressure: Pressure | None = None
    """Of the fresh concrete at the foot of the forms, filled from above; none against earth."""

    pigment_mass: Mass | None = None
    """Color for the mix, if asked for."""

    reinforcing_takeoff: ReinforcingTakeoff | None = None
    """Bars, if asked for."""


class EncasementStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="encasement"
):
    """An answer of encasement."""

    answer: EncasementAnswer
    """The answer of `POST /v1/encasement`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["encasement"]] = "encasement"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Encasing(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How concrete is mixed, reinforced and bought."""

    bag_mass: Mass | None = None
    """Mass of one bag of pre-mix, for small pours. From 1 lb to 5000 lb."""

    bank_ground: BankGround | None = None
    """Bare conductors in the envelope, if any."""

    cement_content: Density | None = None
    """Cement in the mix. From 1 lb/ft3 to 100 lb/ft3."""

    concrete_density: Density | None = None
    """Density of fresh concrete. From 50 lb/ft3 to 300 lb/ft3."""

    maximum_aggregate_size: Length | None = None
    """Largest aggregate of the mix. From 0 in to 240 in."""

    order_increment: Volume | None = None
    """Step in which the plant sells. From 0.001 yd3 to 100 yd3."""

    pigment_percent: float | None = None
    """Color in percent of the mass of cement, for a marked mix."""

    reinforcing: Reinforcing | None = None
    """Bars in the envelope."""

    truck_capacity: Volume | None = None
    """What one truck brings. From 0.1 yd3 to 100 yd3."""

    waste_percent: float | None = None
    """Waste on the net volume, in percent."""


class Energy(Quantity, frozen=True):
    """An energy with its unit."""

    unit: EnergyUnit

    PINT: ClassVar[Mapping[str, str]] = {"kWh": "kilowatt * hour"}
    CLOSED: ClassVar[bool] = True


class ExistingSetting(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="existing"
):
    """Ducts that are there already: nothing is bought for them but cable, cord and proofing."""

    kind: ClassVar[Literal["existing"]] = "existing"


class ExpansionAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of expansion with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: ExpansionResult
    """What was calculated."""

    request: ExpansionRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class ExpansionCoefficient(Quantity, frozen=True):
    """A coefficient of linear thermal expansion with its unit."""

    unit: ExpansionCoefficientUnit

    PINT: ClassVar[Mapping[str, str]] = {"1/degC": "1 / delta_degree_Celsius", "1/degF": "1 / delta_degree_Fahrenheit"}
    CLOSED: ClassVar[bool] = True


class ExpansionItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="expansion"
):
    """A question of expansion."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["expansion"]] = "expansion"

    request: ExpansionRequest
    """The body of `POST /v1/expansion`."""


class ExpansionItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="expansion"
):
    """An answer of expansion."""

    answer: ExpansionAnswer
    """The answer of `POST /v1/expansion`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["expansion"]] = "expansion"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class ExpansionRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Straight runs between securely mounted items, and the temperatures they see."""

    temperatures: Temperatures
    """The temperatures of the conduit."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    coefficient: ExpansionCoefficient | None = None
    """Coefficient of linear expansion; give this or the material. From 1e-07 1/degF to 0.001
    1/degF."""

    crosses_structural_joint: bool | None = None
    """Whether a run crosses a joint of the structure."""

    emerges_from_grade: bool | None = None
    """Whether a run comes up out of the ground."""

    fitting_travel: Length | None = None
    """Travel of one expansion fitting. From 0.25 in to 60 in."""

    length: Length | None = None
    """Length of one straight run between boxes, elbows or other fixed points; this or
    straight_runs. From 0.01 ft to 100000 ft."""

    material: ConduitMaterial | None = None
    """Material of the conduit; give this or the coefficient."""

    opening_temperatures: list[Temperature] | None = None
    """Temperatures for which to give the opening, as a table the crew carries."""

    piston_convention: PistonConvention | None = None
    """How far to open the fittings."""

    piston_engagement: Length | None = None
    """Length of the piston that stays in the barrel when the fitting is fully open, with its
    coupling. A fitting fully open is as long as this and twice its travel. From 0 in to 12 in."""

    service_temperature: Temperature | None = None
    """Highest temperature of the air that the conduit is permitted or listed for. From 50 degF to
    400 degF."""

    setting: RunSetting | None = None
    """Where the runs lie."""

    straight_runs: list[Length] | None = None
    """Lengths of several straight runs, each judged on its own; this or length."""

    usable_travel_percent: float | None = None
    """Most of the travel of a fitting that its share of the movement may use."""


class ExpansionResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How far the runs move and what takes it up; runs held by the ground have no movement to
    show."""

    coefficient: ExpansionCoefficient
    """Coefficient of linear expansion that the runs move by."""

    fitting_count: int
    """Expansion fittings of all runs together."""

    fitting_required: bool
    """Whether any run reaches what calls for a fitting."""

    runs: list[RunMovement]
    """Each straight run; none if they are buried or encased."""

    temperature_difference: TemperatureDifference
    """Highest less lowest temperature, sun allowance included."""

    travel_options: list[TravelOption]
    """How many fittings of each travel that is sold would be needed."""

    fitting_spacing: Length | None = None
    """Length of run to each fitting, for one run that needs any."""

    largest_difference_without_fitting: TemperatureDifference | None = None
    """At this difference the longest run needs a fitting; at less, none does."""

    length_change: Length | None = None
    """Change of the run; of several, of the one that moves most."""

    longest_run_without_fitting: Length | None = None
    """At this length a fitting becomes required; shorter runs need none."""

    piston_opening: Length | None = None
    """Opening at the installation temperature, measured from fully closed, for one run."""

    travel_needed: Length | None = None
    """Travel with which one fitting would do for the longest run, its usable share considered."""


class ExpansionStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="expansion"
):
    """An answer of expansion."""

    answer: ExpansionAnswer
    """The answer of `POST /v1/expansion`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["expansion"]] = "expansion"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Fall(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The fall of ducts that drain, below level ground."""

    grade: Grade
    """How steeply the ducts fall. From 0 percent to 30 percent."""

    drains_to: DrainsTo | None = None
    """Whether the ducts fall from one end to the other, or from the middle to both."""


class Fault(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One fault of a request."""

    code: str
    """Stable code, of request and query: missing, unknown_member, wrong_type, not_an_integer,
    not_allowed, kind_missing, unknown_kind, out_of_range, too_few, too_many, too_short, too_long,
    control_character, unknown_parameter, not_with_this_form, repeated, assumption_needed; or one of
    a calculation: all are listed in docs/findings.md of the service."""

    message: str
    """What is wrong and what to do next."""

    allowed_values: list[str] | None = None
    """The values or names that are taken; left out where a problem has told many already."""

    assumption: RefusedAssumption | None = None
    """What would have been assumed, had it not been refused."""

    maximum: AnyQuantity | None = None
    """Most that is taken; what must be less is so in the message."""

    minimum: AnyQuantity | None = None
    """Least that is taken; what must be more is so in the message."""

    parameter: str | None = None
    """Name of the query parameter."""

    pointer: str | None = None
    """JSON Pointer of the member, as a URI fragment."""

    suggestion: str | None = None
    """Value or name that was probably meant: what was sent was not taken for it."""


class FillAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of fill with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: FillResult
    """What was calculated."""

    request: FillRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class FillItem(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="fill"):
    """A question of fill."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["fill"]] = "fill"

    request: FillRequest
    """The body of `POST /v1/fill`."""


class FillItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="fill"
):
    """An answer of fill."""

    answer: FillAnswer
    """The answer of `POST /v1/fill`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["fill"]] = "fill"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class FillRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What goes into which conduit."""

    cables: list[CableLine]
    """Everything in the conduit, grounding and bonding conductors included."""

    conduit: Conduit
    """The conduit."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    nipple_length: Length | None = None
    """Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent.
    From 0 ft to 1000 ft."""

    single_cable_rounding: bool | None = None
    """Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence
    speaks of a conductor, and a jacketed cable over 53 percent is often refused in the field. A
    single conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C are."""


class FillResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How full the conduit is, and against which limit."""

    conductor_area: Area
    """Their area together."""

    conductor_count: int
    """Conductors and cables counted."""

    conduit_area: Area
    """Inside area of the conduit, as printed if listed."""

    fill_percent: float
    """Conductor area in percent of conduit area."""

    limit_area: Area
    """Area this percentage allows, as printed if listed."""

    limit_percent: float
    """Percentage of Table 1 that applies."""

    limit_reason: str
    """Why that line applies, in a sentence."""

    limit_rule: FillLimitRule
    """Which line of Table 1 applies."""

    rounding_decided: bool
    """Whether it complies only by the 0.8 rule of Note 7."""

    spare_area: Area
    """Limit area less conductor area; negative when over."""

    jam_ratio: float | None = None
    """Conduit over cable diameter; for three conductors or cables only."""

    jam_ratio_with_ovality: float | None = None
    """Conduit over cable diameter times 1.05, the handbook allowance for ovality in bends."""

    smallest_trade_size: TradeSize | None = None
    """Smallest trade size of the same type that complies; listed only."""


class FillStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="fill"
):
    """An answer of fill."""

    answer: FillAnswer
    """The answer of `POST /v1/fill`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["fill"]] = "fill"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Finding(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One sentence a foreman understands: what, how much, the limit, what to do; `pointer` is where
    in the request. What the caller gave, and what is worked out, has no source id."""

    citation: str
    """Where the rule or the limit stands."""

    code: str
    """What was found, in one stable word for programs: all are listed in docs/findings.md of the
    service."""

    message: str
    """The sentence for people."""

    severity: Severity
    """Violation, caution or note."""

    standing: Standing
    """With what right that is given."""

    actual: AnyQuantity | None = None
    """How much it is."""

    limit: AnyQuantity | None = None
    """What it is held against."""

    pointer: str | None = None
    """JSON pointer of the member it is about."""

    source_id: str | None = None
    """Id of the source in the table of sources."""


class Fittings(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The expansion fittings of a run, as `expansion` counts them: one in each of as many equal
    pieces."""

    fitting_count: int
    """Expansion fittings of the run."""

    fitting_travel: Length | None = None
    """Travel of one expansion fitting. From 0.25 in to 60 in."""

    piston_engagement: Length | None = None
    """Length of the piston that stays in the barrel when the fitting is fully open, with its
    coupling. A fitting fully open is as long as this and twice its travel. From 0 in to 12 in."""


class Floating(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What a bank floats in, and how it is held down."""

    cable_mass_per_length: MassPerLength | None = None
    """Mass of the cables in each duct, if they are in it. From 0 lb/ft to 1000 lb/ft."""

    concrete_density: Density | None = None
    """Density of the concrete around ducts in groundwater, whose weight holds them. From 50 lb/ft3
    to 300 lb/ft3."""

    contents: DuctContents | None = None
    """What is in the ducts."""

    duct_density: Density | None = None
    """Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3
    to 700 lb/ft3."""

    duct_mass_per_length: MassPerLength | None = None
    """Mass of an empty duct. From 0 lb/ft to 1000 lb/ft."""

    duct_material: DuctMaterial | None = None
    """What ducts that are given by their diameters are made of; a listed one tells it by its
    type."""

    fluid_density: Density | None = None
    """Density of the fluid. From 20 lb/ft3 to 300 lb/ft3."""

    lift_height: Length | None = None
    """Depth of a pour that is liquid at once, wherever it starts; the whole pour if left out. From
    0.25 ft to 1000 ft."""

    medium: FlotationMedium | None = None
    """What surrounds it."""

    safety_factor: float | None = None
    """Factor on the uplift."""

    saturated_soil_density: Density | None = None
    """Density of the earth over ducts in groundwater, full of water, with that water. From 50
    lb/ft3 to 200 lb/ft3."""

    station_spacing: Length | None = None
    """Distance of the stations that hold the bank down. From 0.25 ft to 1000 ft."""

    tie_down_capacity: Force | None = None
    """What one tie-down holds; without it tie-downs are not counted. From 1 lbf to 1e+06 lbf."""


class FlotationAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of flotation with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: FlotationResult
    """What was calculated."""

    request: FlotationRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class FlotationItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="flotation"
):
    """A question of flotation."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["flotation"]] = "flotation"

    request: FlotationRequest
    """The body of `POST /v1/flotation`."""


class FlotationItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="flotation"
):
    """An answer of flotation."""

    answer: FlotationAnswer
    """The answer of `POST /v1/flotation`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["flotation"]] = "flotation"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class FlotationRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A bank in a fluid."""

    bank: DuctBank
    """The duct bank."""

    cable_mass_per_length: MassPerLength | None = None
    """Mass of the cables in each duct, if they are in it. From 0 lb/ft to 1000 lb/ft."""

    concrete_cover: ConcreteCover | None = None
    """In groundwater: the hardened concrete around the ducts, whose weight holds them; left out,
    none is counted."""

    concrete_density: Density | None = None
    """Density of the concrete around ducts in groundwater, whose weight holds them. From 50 lb/ft3
    to 300 lb/ft3."""

    contents: DuctContents | None = None
    """What is in the ducts."""

    cover: Length | None = None
    """In groundwater: least earth over the top of what is buried, whose weight holds it; left out,
    none is counted. From 0 in to 1200 in."""

    duct_density: Density | None = None
    """Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3
    to 700 lb/ft3."""

    duct_mass_per_length: MassPerLength | None = None
    """Mass of an empty duct. From 0 lb/ft to 1000 lb/ft."""

    duct_material: DuctMaterial | None = None
    """What ducts that are given by their diameters are made of; a listed one tells it by its
    type."""

    fluid_density: Density | None = None
    """Density of the fluid. From 20 lb/ft3 to 300 lb/ft3."""

    length: Length | None = None
    """Length of the run, to count all tie-downs. From 0.01 ft to 100000 ft."""

    lift_height: Length | None = None
    """Depth of a pour that is liquid at once, wherever it starts; the whole pour if left out. From
    0.25 ft to 1000 ft."""

    medium: FlotationMedium | None = None
    """What surrounds it."""

    pour_shape: PourShape | None = None
    """Whether that concrete fills the bounding rectangle or steps with the tiers."""

    safety_factor: float | None = None
    """Factor on the uplift."""

    saturated_soil_density: Density | None = None
    """Density of the earth over ducts in groundwater, full of water, with that water. From 50
    lb/ft3 to 200 lb/ft3."""

    station_spacing: Length | None = None
    """Distance of the stations that hold the bank down. From 0.25 ft to 1000 ft."""

    tie_down_capacity: Force | None = None
    """What one tie-down holds; without it tie-downs are not counted. From 1 lbf to 1e+06 lbf."""


class FlotationResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The uplift and what holds it."""

    full_uplift_per_length: ForcePerLength
    """Of all ducts, with the whole depth liquid at once."""

    hold_down_per_station: Force
    """On one station: the uplift of the ducts with the safety factor, less the weight."""

    tier_uplifts: list[TierUplift]
    """Each kind of duct of each tier, the bottom tier first."""

    uplift_per_length: ForcePerLength
    """Of the ducts in the worst live lift, less the weight that lies on them; 0 if none floats."""

    uplift_per_station: Force
    """On one station."""

    concrete_weight_per_length: ForcePerLength | None = None
    """Of the concrete around the ducts, weighed in the groundwater, if it is given."""

    earth_weight_per_length: ForcePerLength | None = None
    """Of the earth above, weighed in the groundwater, if its cover is given."""

    tie_down_count: int | None = None
    """Tie-downs at each station, if the capacity of one is given."""

    total_tie_down_count: int | None = None
    """Tie-downs of the run, if its length is given as well."""


class FlotationStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="flotation"
):
    """An answer of flotation."""

    answer: FlotationAnswer
    """The answer of `POST /v1/flotation`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["flotation"]] = "flotation"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Force(Quantity, frozen=True):
    """A force with its unit; tension is a force."""

    unit: ForceUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "N": "newton",
        "kN": "kilonewton",
        "lbf": "force_pound",
        "kgf": "force_kilogram",
    }
    CLOSED: ClassVar[bool] = True


class ForcePerLength(Quantity, frozen=True):
    """A force per length with its unit; sidewall pressure is one."""

    unit: ForcePerLengthUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "N/m": "newton / meter",
        "kN/m": "kilonewton / meter",
        "lbf/ft": "force_pound / foot",
    }
    CLOSED: ClassVar[bool] = True


class Frequency(Quantity, frozen=True):
    """A frequency with its unit."""

    unit: FrequencyUnit

    PINT: ClassVar[Mapping[str, str]] = {"Hz": "hertz"}
    CLOSED: ClassVar[bool] = True


class FrictionCase(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pull at one coefficient of friction, from both ends."""

    friction_coefficient: float
    """The coefficient of friction."""

    reversed_tension: Force
    """Tension at the pulling end, pulled from the other end."""

    reversed_utilization_percent: float
    """The largest share of the limits that is used, pulled from the other end."""

    reversed_verdict: Verdict
    """Whether the pull from the other end keeps its limits, or was not judged."""

    tension: Force
    """Tension at the pulling end."""

    utilization_percent: float
    """The largest share of the limits that is used."""

    verdict: Verdict
    """Whether the pull keeps its limits, or was not judged."""

    brake_tension: Force | None = None
    """Force with which the reel must hold back, if it must."""

    reversed_brake_tension: Force | None = None
    """Force with which the reel must hold back, pulled from the other end, if it must."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest sidewall pressure, if there is a bend."""


class FrictionRange(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A low and a high coefficient of friction beside the expected one."""

    high: float
    """High coefficient, dry."""

    low: float
    """Low coefficient, lubricated."""


class FrictionRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A published range of the coefficient of friction of a cable jacket against a conduit."""

    conduit: str
    """Conduit, as the source names it."""

    high_coefficient: float
    """Upper end of the range."""

    jacket: str
    """Jacket of the cable, as the source names it."""

    low_coefficient: float
    """Lower end of the range."""

    lubrication: str
    """How the cable was lubricated."""

    source_id: str
    """Id of the source; see /v1/tables/sources."""

    standing: Standing
    """With what right it is given."""

    note: str | None = None
    """Remark on the row."""


class FrictionTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Friction coefficients, with the hash of all tables."""

    rows: list[FrictionRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class Grade(Quantity, frozen=True):
    """A grade with its unit; positive climbs in the direction of travel."""

    unit: GradeUnit

    PINT: ClassVar[Mapping[str, str]] = {"deg": "degree", "percent": "percent"}
    CLOSED: ClassVar[bool] = True


class GroundingSize(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The least equipment grounding conductor in every duct of a circuit."""

    aluminum: ConductorSize
    """Least size in aluminum."""

    copper: ConductorSize
    """Least size in copper."""


class HangingCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Cable that is supported over a rise."""

    place: str
    """The sections it goes through."""

    rise: Length
    """How high it hangs."""

    support_count: int
    """Supports in one duct: at the top of the rise, and below it."""

    support_spacing: Length
    """From the top down, the most between two of them."""


class HorizontalBendSection(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="horizontal_bend"
):
    """A bend in a level plane; an offset is two bends."""

    angle: Angle
    """Change of direction. From 0.1 deg to 360 deg."""

    kind: ClassVar[Literal["horizontal_bend"]] = "horizontal_bend"

    radius: Length
    """Radius to the center line. From 0.5 in to 120000 in."""

    conduit: Conduit | None = None
    """Conduit of this section, where it differs."""

    friction_coefficient: float | None = None
    """Coefficient of friction of this section, where it differs."""

    made: BendMade | None = None
    """Whether it is bought or bent on site."""


class InService(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Empty ducts in groundwater."""

    hold_down_per_length: ForcePerLength
    """Weight of earth, ducts and concrete that holds the ducts down."""

    uplift_per_length: ForcePerLength
    """Lift of the groundwater on what lies below its level."""

    verdict: Verdict
    """Whether the ducts stay down with the factor asked."""

    safety_factor: float | None = None
    """hold_down_per_length over uplift_per_length, the least of any bare ducts that lie over each
    other; absent where nothing lifts."""


class ItemProblem(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="type", tag="problem"):
    """A question of a batch that has no answer."""

    problem: Problem
    """The problem; its pointers start at the item."""

    status: int
    """HTTP status the question would have had by itself."""

    type: ClassVar[Literal["problem"]] = "problem"

    id: str | None = None
    """Id of the question; left out if it had none that could be read."""

    operation: OperationName | None = None
    """The calculation asked for; left out if it could not be read."""


class JointFitting(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A joint of the structure, and the expansion fitting that each duct has over it."""

    fitting_travel: Length
    """Travel of the fitting."""

    movement: Length
    """By how much the joint opens and closes in all."""

    piston_openings: list[PistonOpening]
    """How far to open it by the temperature of the structure, from the lowest on; without a range,
    none."""

    position: Length
    """Where it is, from the start of the stretch."""


class JointsAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of joints with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: JointsResult
    """What was calculated."""

    request: JointsRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class JointsItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="joints"
):
    """A question of joints."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["joints"]] = "joints"

    request: JointsRequest
    """The body of `POST /v1/joints`."""


class JointsItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="joints"
):
    """An answer of joints."""

    answer: JointsAnswer
    """The answer of `POST /v1/joints`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["joints"]] = "joints"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class JointsRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ducts along a run."""

    conduit: ListedConduit
    """The duct."""

    duct_count: int
    """Ducts of the run."""

    length: Length
    """Length of one duct along its center line, elbows included. From 0.01 ft to 100000 ft."""

    bell_loss: Length | None = None
    """What a joint takes of a stick's length. From 0 in to 240 in."""

    cement_per_joint: Volume | None = None
    """Solvent cement that a cemented joint takes. From 1e-05 qt_us to 4 qt_us."""

    cord_tail: Length | None = None
    """Pull cord left at each end of a duct. From 0 in to 240 in."""

    elbows: list[DuctElbow] | None = None
    """Elbows and sweeps of each duct."""

    end: RunEnd | None = None
    """How it finishes at the end."""

    ends: DuctEnds | None = None
    """Bells or plain ends of the sticks; only what is cemented has bells."""

    mandrel_clearance: Length | None = None
    """How much smaller than the bore the mandrel is. From 0 in to 240 in."""

    offcuts_shared: bool | None = None
    """Whether the offcut of one duct starts the next."""

    spare_duct_count: int | None = None
    """Ducts that stay empty, plugged at both ends."""

    start: RunEnd | None = None
    """How each duct finishes at the start: with an end bell, a coupling or an adapter that is
    ordered here, at an elbow of the run beside it with the coupling that plain ends take, in a
    conduit body, or with nothing, where the run beside it counts the joint."""

    stick_length: Length | None = None
    """Length a stick is sold by. From 0.25 ft to 1000 ft."""

    temperature: Temperature | None = None
    """Temperature when joining. From -100 degF to 400 degF."""

    waste_percent: float | None = None
    """Sticks to order beyond those laid."""


class JointsResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What to order and how long to wait."""

    adapter_count: int
    """Terminal adapters."""

    coupling_count: int
    """Couplings, with those at elbows of a run beside; none with bells."""

    elbow_count: int
    """Elbows and sweeps of all ducts."""

    elbow_length: Length
    """Developed length of the elbows of one duct."""

    end_bell_count: int
    """End bells."""

    joint_count: int
    """Joints of all ducts with those of their ends; of cemented ones each socket."""

    method: JoiningMethod
    """How lengths of this conduit are joined."""

    order_coupling_count: int
    """Couplings to order: without those that come on lengths of threaded conduit, one on each."""

    order_stick_count: int
    """Sticks of all ducts with waste, in whole sticks."""

    plug_count: int
    """Plugs for spare ducts, two each."""

    pull_cord_length: Length
    """Cord through every duct, tails included."""

    stick_count: int
    """Sticks of all ducts."""

    straight_length: Length
    """Straight duct in one duct, elbows taken out."""

    cement_order_volume: Volume | None = None
    """Solvent cement to order, in whole US quarts."""

    cement_volume: Volume | None = None
    """Solvent cement of cemented joints."""

    mandrel_diameter: Length | None = None
    """Mandrel for the test, if the bore is known."""

    set_time: Duration | None = None
    """Initial set of a cemented joint, before it is handled."""


class JointsStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="joints"
):
    """An answer of joints."""

    answer: JointsAnswer
    """The answer of `POST /v1/joints`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["joints"]] = "joints"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class JudgedUse(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One use."""

    citation: str
    """Where that stands, or that it is from memory."""

    use: ConduitUse
    """The use asked about."""

    verdict: Verdict
    """Permitted, not, or not judged: permitted under a condition that was not looked at."""

    condition: str | None = None
    """What it hangs on where it is not judged, if that is on file."""


class LargestComplying(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The largest values with which the pull as given would still comply; absent where none
    does."""

    friction_coefficient: float | None = None
    """Highest coefficient of friction, up to 2; absent if none complies."""

    incoming_tension: Force | None = None
    """Largest tension at the entry; absent if none complies."""

    last_straight: Length | None = None
    """Longest last straight: the last section if it is one, else one at the grade of its end that
    could follow. Absent if the pull before it does not comply, or if no length is too long."""


class LeastDimension(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The least of a dimension, inside, and what decided it."""

    citation: str
    """Where it stands."""

    least: Length
    """The least."""

    pointers: list[str]
    """JSON pointers of the entries that decided it; none where no entry did."""

    rule: BoxRule
    """The rule that decided it."""


class Length(Quantity, frozen=True):
    """A length with its unit."""

    unit: LengthUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "mm": "millimeter",
        "cm": "centimeter",
        "m": "meter",
        "in": "inch",
        "ft": "foot",
        "yd": "yard",
    }
    CLOSED: ClassVar[bool] = True


class LineOfRun(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What one run takes of a line, beside the base."""

    exact_quantity: ComparedQuantity
    """What is laid, dug or done, without waste."""

    run: str
    """Name of the run."""

    labor_hours: ComparedNumber | None = None
    """By the rates of the run."""

    order_quantity: ComparedQuantity | None = None
    """What is ordered, if it is."""

    price: ComparedNumber | None = None
    """Of the order, by the rates of the run."""


class ListedCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="listed"):
    """Insulated building wire by marking and size, from Chapter 9, Table 5."""

    insulation: Insulation
    """Insulation as marked; an asterisk means without an outer covering."""

    kind: ClassVar[Literal["listed"]] = "listed"

    size: ConductorSize
    """Conductor size."""

    allowable_stress: Pressure | None = None
    """Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to
    1000 MPa."""

    bending_radius: Length | None = None
    """Least bending radius of the cable's maker, to the inner wall, in place of the code's. From
    0.5 in to 120000 in."""

    cable_type: CableType | None = None
    """Kind of cable, for its sidewall pressure."""

    jacket: CableJacket | None = None
    """What slides on the conduit, for its published friction."""

    mass_per_length: MassPerLength | None = None
    """Mass per length of one cable; of building wire it is derived from metal and insulation. From
    0.0001 lb/ft to 1000 lb/ft."""

    material: ConductorMaterial | None = None
    """Metal of the conductor, for its mass and for what it bears."""

    sheath: CableSheath | None = None
    """What a basket grip would hold."""

    shielded_conductor_diameter: Length | None = None
    """Outside diameter of one shielded conductor within an individually shielded cable. From 0.01
    in to 60 in."""

    shielding: CableShielding | None = None
    """Make-up of the cable, for its bending radius."""

    temper: ConductorTemper | None = None
    """Temper or alloy of the metal."""


class ListedConduit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="listed"):
    """A conduit or duct by its type and trade size; its diameters come from the tables."""

    kind: ClassVar[Literal["listed"]] = "listed"

    trade_size: TradeSize
    """Trade size, as the trade writes it."""

    type: ConduitType
    """Type of conduit or duct."""


class ListedPositions(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="listed"
):
    """Pull points may stand at given places only."""

    kind: ClassVar[Literal["listed"]] = "listed"

    positions: list[Length]
    """Distances along the center line from the start of the route, each on a straight."""


class LiveLoadByMethod(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pressure of traffic on top of a duct by one method, its impact included."""

    method: LiveLoadMethod
    """The method."""

    pressure: Pressure
    """On top of the duct."""


class LoadedCircuit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A circuit in ducts of the bank."""

    cables: list[CableLine]
    """The cables in each of its ducts, grounding conductors included."""

    ducts: list[str]
    """Its ducts, as tier-position: tier 1 at the bottom, position 1 at the left."""

    current: Current | None = None
    """Current of the circuit, all its sets together; without it the answer says what it may be.
    From 0.001 A to 20 kA."""

    load_factor_percent: float | None = None
    """Mean load of a day in percent of its peak."""

    loaded_conductor_count: int | None = None
    """Conductors in each duct that carry the current, neutrals that count included; other neutrals
    and grounds carry none here."""

    loaded_neutral_count: int | None = None
    """Of the loaded conductors in each duct, those that are neutrals, where loads have harmonics:
    each is as large as the phases, and is taken to carry as much."""

    name: str | None = None
    """What it is called."""

    overcurrent_device: Current | None = None
    """Rating of the overcurrent device ahead, for the least grounding conductor. From 1 A to 6
    kA."""

    shield_grounding: ShieldGrounding | None = None
    """Where the shields are grounded, if the cables have any."""

    system: CircuitSystem | None = None
    """Kind of circuit: three conductors make a set, or two."""

    temperature_limit: Temperature | None = None
    """Highest temperature of the conductor. From 0 degC to 250 degC."""

    terminal_rating: TerminalRating | None = None
    """Temperature that the terminals at both ends are marked for; unmarked ones are taken for 60
    degC to 100 A of overcurrent_device or, without one, of current, and for 75 degC above; where
    neither is given, for 60 degC to 1 AWG."""

    voltage: Voltage | None = None
    """Between lines; to ground of a single phase. For the loss in insulation, and what the code
    allows. From 1 V to 500 kV."""


class Mass(Quantity, frozen=True):
    """A mass with its unit; a force is not a mass: see Force."""

    unit: MassUnit

    PINT: ClassVar[Mapping[str, str]] = {"kg": "kilogram", "t": "metric_ton", "lb": "pound", "short_ton": "short_ton"}
    CLOSED: ClassVar[bool] = True


class MassPerLength(Quantity, frozen=True):
    """A mass per length with its unit."""

    unit: MassPerLengthUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "kg/m": "kilogram / meter",
        "kg/km": "kilogram / kilometer",
        "lb/ft": "pound / foot",
        "lb/1000ft": "pound / (kilofoot)",
    }
    CLOSED: ClassVar[bool] = True


class MaterialRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Coefficient of linear expansion of one conduit material."""

    coefficient: ExpansionCoefficient
    """Coefficient of linear expansion."""

    material: ConduitMaterial
    """Material of the conduit."""

    source_id: str
    """Id of the source; see /v1/tables/sources."""

    standing: Standing
    """With what right it is given."""

    note: str | None = None
    """Remark on the row."""


class MaterialTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Expansion coefficients, with the hash of all tables."""

    rows: list[MaterialRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class MeasuredCable(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="measured"
):
    """A single conductor or single-conductor cable by its diameter (Chapter 9, Table 1, Note 5)."""

    diameter: Length
    """Outside diameter. From 0.01 in to 60 in."""

    kind: ClassVar[Literal["measured"]] = "measured"

    bending_radius: Length | None = None
    """Least bending radius of the cable's maker, to the inner wall, in place of the code's. From
    0.5 in to 120000 in."""

    cable_type: CableType | None = None
    """Kind of cable, for its sidewall pressure."""

    conductor: CableConductor | None = None
    """What the pulling eye holds and the current flows in; without it the tension is not judged."""

    jacket: CableJacket | None = None
    """What slides on the conduit, for its published friction."""

    layers: CableLayers | None = None
    """What lies around it, for its ampacity."""

    mass_per_length: MassPerLength | None = None
    """Mass per length of one cable; of building wire it is derived from metal and insulation. From
    0.0001 lb/ft to 1000 lb/ft."""

    sheath: CableSheath | None = None
    """What a basket grip would hold."""

    shielded_conductor_diameter: Length | None = None
    """Outside diameter of one shielded conductor within an individually shielded cable. From 0.01
    in to 60 in."""

    shielding: CableShielding | None = None
    """Make-up of the cable, for its bending radius."""


class MeasuredConduit(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="measured"
):
    """A conduit or duct by its diameters, for one that no table lists; take them from its maker."""

    inside_diameter: Length
    """Inside diameter. From 0.01 in to 60 in."""

    kind: ClassVar[Literal["measured"]] = "measured"

    outside_diameter: Length | None = None
    """Outside diameter; needed where the duct takes room: in a bank, in concrete, in a trench. From
    0.01 in to 60 in."""

    trade_size: TradeSize | None = None
    """Trade size, for what is ordered and bent by it."""

    type: ConduitType | None = None
    """Type of conduit or duct, for the rules that hang on it; its diameters stay those given."""


class MulticonductorCable(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="multiconductor"
):
    """A multiconductor cable or cord by its diameter: it counts as one (Chapter 9, Table 1, Note
    9)."""

    diameter: Length
    """Outside diameter, the larger one if elliptical. From 0.01 in to 60 in."""

    kind: ClassVar[Literal["multiconductor"]] = "multiconductor"

    bending_radius: Length | None = None
    """Least bending radius of the cable's maker, to the inner wall, in place of the code's. From
    0.5 in to 120000 in."""

    cable_type: CableType | None = None
    """Kind of cable, for its sidewall pressure."""

    conductor: CableConductor | None = None
    """What the pulling eye holds and the current flows in; without it the tension is not judged."""

    jacket: CableJacket | None = None
    """What slides on the conduit, for its published friction."""

    layers: CableLayers | None = None
    """What lies around it, for its ampacity."""

    mass_per_length: MassPerLength | None = None
    """Mass per length of one cable; of building wire it is derived from metal and insulation. From
    0.0001 lb/ft to 1000 lb/ft."""

    sheath: CableSheath | None = None
    """What a basket grip would hold."""

    shielded_conductor_diameter: Length | None = None
    """Outside diameter of one shielded conductor within an individually shielded cable. From 0.01
    in to 60 in."""

    shielding: CableShielding | None = None
    """Make-up of the cable, for its bending radius."""


class NamedRun(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One whole run with the name it is compared under."""

    name: str
    """What it is called here."""

    run: DuctRunRequest
    """The run, complete by itself."""


class OrderedCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What to order of one line of cables."""

    count: int
    """Cables of this line."""

    length: Length
    """One cable: route, tails, racking, splices and waste."""

    order_length: Length
    """One cable, rounded up to a length that is sold."""

    total_order_length: Length
    """All cables of the line."""

    reel_count: int | None = None
    """Reels, if their length was given and holds one cable."""


class OtherMethod(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The method that allows more, where both were asked."""

    ampacity: Current
    """What it allows."""

    conductor_temperature: Temperature
    """Temperature of its hottest conductor."""

    difference_percent: float
    """By how much it allows more."""

    method: AmpacityMethod
    """The method."""


class Pavement(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pavement that a trench goes through; its top is grade, and it is laid again as thick as
    it was."""

    kind: PavementKind
    """What it is made of."""

    thickness: Length
    """How thick it is. From 0.5 in to 48 in."""

    cut_back: Length | None = None
    """How far beyond each edge of the trench it is cut. From 0 in to 240 in."""


class PavementTakeoff(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Pavement in place; what is taken up of it is no spoil."""

    cut_width: Length
    """Width of the cut; the greatest, if it varies."""

    kind: PavementKind
    """Kind of the pavement."""

    removal_area: Area
    """Taken up, the whole cut."""

    removal_volume: Volume
    """Taken up, in place."""

    restoration_area: Area
    """Laid again, the whole cut."""

    restoration_volume: Volume
    """Laid again, in place."""

    saw_cut_length: Length
    """Along both sides and across both ends."""


class PerStickInterval(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="per_stick"
):
    """So many stations for each stick of duct."""

    count: int
    """Stations for each stick."""

    kind: ClassVar[Literal["per_stick"]] = "per_stick"

    stick_length: Length
    """Length of a stick. From 0.25 ft to 1000 ft."""


class PermittedUseAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of permitted-use with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: PermittedUseResult
    """What was calculated."""

    request: PermittedUseRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class PermittedUseItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="permitted_use"
):
    """A question of permitted_use."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["permitted_use"]] = "permitted_use"

    request: PermittedUseRequest
    """The body of `POST /v1/permitted-use`."""


class PermittedUseItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="permitted_use"
):
    """An answer of permitted_use."""

    answer: PermittedUseAnswer
    """The answer of `POST /v1/permitted-use`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["permitted_use"]] = "permitted_use"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PermittedUseRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A conduit and everything it meets."""

    conduit_type: ConduitType
    """Type of conduit."""

    uses: list[ConduitUse]
    """Places and ways it is used."""

    ambient_temperature: Temperature | None = None
    """Highest temperature around it. From -100 degF to 300 degF."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""


class PermittedUseResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Whether the conduit may be used so."""

    uses: list[JudgedUse]
    """Each use, in the order asked."""


class PermittedUseStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="permitted_use"
):
    """An answer of permitted_use."""

    answer: PermittedUseAnswer
    """The answer of `POST /v1/permitted-use`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["permitted_use"]] = "permitted_use"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PistonOpening(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One line of the table the crew carries."""

    opening: Length
    """Opening of the piston, measured from fully closed."""

    temperature: Temperature
    """Temperature of the conduit."""


class PlacedDuct(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One duct of the bank, from the lower left corner of the bank without its cover."""

    outside_diameter: Length
    """Outside diameter of the duct."""

    signal: bool
    """Whether it carries signals."""

    tier: int
    """Tier, from 1 at the bottom."""

    x: Length
    """Distance of its center to the right."""

    y: Length
    """Distance of its center upward."""


class PlannedPull(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One pull of the plan."""

    bend_total: Angle
    """Bends of this pull together."""

    direction: PullDirection
    """Forward toward the end of the route, or reversed."""

    end_position: Length
    """Where it ends."""

    highest_tension: Force
    """Highest tension anywhere along the pull."""

    start_position: Length
    """Where the pull starts, along the route from its start."""

    tension: Force
    """Tension at the pulling end."""

    utilization_percent: float
    """The largest share of its limits that it uses."""

    verdict: Verdict
    """Whether it keeps its limits, or was not judged."""

    brake_tension: Force | None = None
    """Force with which the reel must hold back, if it must."""

    braking_case: BrakingCase | None = None
    """The pull at the low friction, where the route can run away."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest sidewall pressure, if there is a bend."""


class Power(Quantity, frozen=True):
    """A power with its unit."""

    unit: PowerUnit

    PINT: ClassVar[Mapping[str, str]] = {"W": "watt", "kW": "kilowatt"}
    CLOSED: ClassVar[bool] = True


class PowerPerLength(Quantity, frozen=True):
    """A power per length with its unit; the heat that a cable gives off is one."""

    unit: PowerPerLengthUnit

    PINT: ClassVar[Mapping[str, str]] = {"W/m": "watt / meter", "W/ft": "watt / foot"}
    CLOSED: ClassVar[bool] = True


class PresetInterval(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="preset"):
    """The interval of a published specification or of the trade, by name."""

    kind: ClassVar[Literal["preset"]] = "preset"

    preset: SpacerPreset
    """The specification."""


class Pressure(Quantity, frozen=True):
    """A pressure or stress with its unit."""

    unit: PressureUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "kPa": "kilopascal",
        "MPa": "megapascal",
        "psi": "force_pound / inch**2",
        "psf": "force_pound / foot**2",
    }
    CLOSED: ClassVar[bool] = True


class Problem(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Problem details by RFC 9457."""

    detail: str
    """What happened to this request."""

    request_id: str
    """Id of the request, also in X-Request-ID."""

    status: int
    """HTTP status."""

    title: str
    """What kind of problem it is."""

    type: str
    """URI of the page that explains this kind of problem."""

    errors: list[Fault] | None = None
    """Every fault found, up to a thousand."""


class Profile(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Elevations along the run, straight between the points: they give grades and cover."""

    points: list[ElevationPoint]
    """The points from the start of the run to its end."""

    reference: ProfileReference
    """What the line is: top of the envelope, of the ducts alone, or the invert of the lowest duct,
    the bottom of its bore."""


class ProfilePoint(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Tension at one place of the run."""

    position: Length
    """Distance along the run from where the cable enters."""

    tension: Force
    """Tension there."""


class PullBoxAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of pull-box with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: PullBoxResult
    """What was calculated."""

    request: PullBoxRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class PullBoxItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_box"
):
    """A question of pull_box."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["pull_box"]] = "pull_box"

    request: PullBoxRequest
    """The body of `POST /v1/pull-box`."""


class PullBoxItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_box"
):
    """An answer of pull_box."""

    answer: PullBoxAnswer
    """The answer of `POST /v1/pull-box`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["pull_box"]] = "pull_box"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullBoxRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What enters a box."""

    circuits: list[BoxCircuit]
    """The circuits in them, each in the entries by which it goes in and out."""

    entries: list[BoxEntry]
    """Every raceway that enters it."""

    voltage: Voltage
    """Highest voltage between conductors in it: over the threshold of the edition the cables size
    it. From 1 V to 800000 V."""

    box: BoxSize | None = None
    """The box as planned or built, held against what it must measure."""

    box_sizes: list[BoxSize] | None = None
    """Boxes that can be had: the smallest that holds the entries is named. A box that is given is
    judged by itself."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    racking: Racking | None = None
    """Racks for the cable, in a manhole."""

    removable_cover: BoxWall | None = None
    """The side that comes off: opposite to it conductors need only the room to bend."""

    structure: Structure | None = None
    """What it is."""


class PullBoxResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What a box must measure for what enters it; a dimension that no rule sets is absent."""

    candidates: list[BoxCandidate]
    """The boxes that can be had, as listed."""

    pulls: list[PullThrough]
    """Every circuit between two of its entries."""

    structure: Structure
    """What it is."""

    least_access_opening: Length | None = None
    """Least opening of the lid of a manhole."""

    least_depth: LeastDimension | None = None
    """From back to front."""

    least_length: LeastDimension | None = None
    """From left to right."""

    least_width: LeastDimension | None = None
    """From bottom to top."""

    racking: RackedCable | None = None
    """The racks, if they were asked."""

    small_conductors: SmallConductorVolume | None = None
    """Conductors that take volume, if there are any."""

    smallest_box: BoxCandidate | None = None
    """The least by volume of the boxes that hold the entries, or, where none is known to, that
    may."""


class PullBoxStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_box"
):
    """An answer of pull_box."""

    answer: PullBoxAnswer
    """The answer of `POST /v1/pull-box`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["pull_box"]] = "pull_box"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullPlanAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of pull-plan with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: PullPlanResult
    """What was calculated."""

    request: PullPlanRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class PullPlanItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_plan"
):
    """A question of pull_plan."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["pull_plan"]] = "pull_plan"

    request: PullPlanRequest
    """The body of `POST /v1/pull-plan`."""


class PullPlanItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_plan"
):
    """An answer of pull_plan."""

    answer: PullPlanAnswer
    """The answer of `POST /v1/pull-plan`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["pull_plan"]] = "pull_plan"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullPlanRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Cables, conduit, the whole route, and where pull points may stand."""

    cables: list[CableLine]
    """The cables pulled together, one line for each kind."""

    conduit: Conduit
    """The conduit."""

    sections: list[RouteSection]
    """The route, in the order of the pull, every bend and elbow included."""

    allowable_sidewall_pressure: ForcePerLength | None = None
    """Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000
    lbf/ft."""

    allowable_tension: Force | None = None
    """Limit of the cable's maker, in place of the one computed from conductors; limits of device
    and grip hold beside it where they are given. From 1 lbf to 1e+06 lbf."""

    arrangement: CableArrangement | None = None
    """How the cables lie, where it is sure; else each check takes the worst way they may lie."""

    attachment: Attachment | None = None
    """How the rope holds the cable."""

    box_positions: BoxPositions | None = None
    """Where pull boxes, handholes or manholes may stand."""

    brake_limit: Force | None = None
    """Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf."""

    braking_friction_coefficient: float | None = None
    """Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons
    with it."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    conductor_counting: ConductorCounting | None = None
    """How many of several conductors share the pull."""

    device_limit: Force | None = None
    """Rating of the pulling device. From 1 lbf to 1e+06 lbf."""

    feed_length: Length | None = None
    """Cable between reel and conduit whose friction is the incoming tension, where that is not
    given. From 0 ft to 1000 ft."""

    friction_coefficient: float | None = None
    """Coefficient of friction of one cable against the conduit."""

    grip_limit: Force | None = None
    """Limit of the basket grip. From 1 lbf to 1e+06 lbf."""

    incoming_tension: Force | None = None
    """Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf."""

    weight_correction_factor: float | None = None
    """Factor on friction for cables side by side, in place of the one of their arrangement."""

    weight_correction_in: WeightCorrectionUse | None = None
    """Where the weight correction factor multiplies friction."""


class PullPlanResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The fewest pulls, or the bend that forbids any."""

    box_count: int
    """Pull points between them."""

    pull_count: int
    """Pulls of the plan."""

    pulls: list[PlannedPull]
    """The pulls in the order of the route; none if no plan keeps the limits."""

    forbidding_pointer: str | None = None
    """Section of the route, in the request, that forbids any plan."""

    highest_utilization_percent: float | None = None
    """Largest share of its limits that any pull uses; with so many judged pulls the lowest there
    is."""


class PullPlanStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_plan"
):
    """An answer of pull_plan."""

    answer: PullPlanAnswer
    """The answer of `POST /v1/pull-plan`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["pull_plan"]] = "pull_plan"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullPractice(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How cables are pulled: friction, gear, and what they may bear."""

    allowable_sidewall_pressure: ForcePerLength | None = None
    """Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000
    lbf/ft."""

    allowable_tension: Force | None = None
    """Limit of the cable's maker, in place of the one computed from conductors; limits of device
    and grip hold beside it where they are given. From 1 lbf to 1e+06 lbf."""

    arrangement: CableArrangement | None = None
    """How the cables lie, where it is sure; else each check takes the worst way they may lie."""

    attachment: Attachment | None = None
    """How the rope holds the cable."""

    brake_limit: Force | None = None
    """Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf."""

    braking_friction_coefficient: float | None = None
    """Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons
    with it."""

    conductor_counting: ConductorCounting | None = None
    """How many of several conductors share the pull."""

    device_limit: Force | None = None
    """Rating of the pulling device. From 1 lbf to 1e+06 lbf."""

    feed_length: Length | None = None
    """Cable between reel and conduit whose friction is the incoming tension, where that is not
    given. From 0 ft to 1000 ft."""

    friction_coefficient: float | None = None
    """Coefficient of friction of one cable against the conduit."""

    grip_limit: Force | None = None
    """Limit of the basket grip. From 1 lbf to 1e+06 lbf."""

    incoming_tension: Force | None = None
    """Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf."""

    weight_correction_factor: float | None = None
    """Factor on friction for cables side by side, in place of the one of their arrangement."""

    weight_correction_in: WeightCorrectionUse | None = None
    """Where the weight correction factor multiplies friction."""


class PullTensionAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of pull-tension with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: PullTensionResult
    """What was calculated."""

    request: PullTensionRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class PullTensionItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_tension"
):
    """A question of pull_tension."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["pull_tension"]] = "pull_tension"

    request: PullTensionRequest
    """The body of `POST /v1/pull-tension`."""


class PullTensionItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_tension"
):
    """An answer of pull_tension."""

    answer: PullTensionAnswer
    """The answer of `POST /v1/pull-tension`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["pull_tension"]] = "pull_tension"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullTensionRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Cables, conduit, and the route in the order of the pull; and what to find beside the
    tension."""

    cables: list[CableLine]
    """The cables pulled together, one line for each kind."""

    conduit: Conduit
    """The conduit."""

    sections: list[RouteSection]
    """The route, in the order of the pull, every bend and elbow included."""

    allowable_sidewall_pressure: ForcePerLength | None = None
    """Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000
    lbf/ft."""

    allowable_tension: Force | None = None
    """Limit of the cable's maker, in place of the one computed from conductors; limits of device
    and grip hold beside it where they are given. From 1 lbf to 1e+06 lbf."""

    arrangement: CableArrangement | None = None
    """How the cables lie, where it is sure; else each check takes the worst way they may lie."""

    attachment: Attachment | None = None
    """How the rope holds the cable."""

    brake_limit: Force | None = None
    """Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf."""

    braking_friction_coefficient: float | None = None
    """Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons
    with it."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    conductor_counting: ConductorCounting | None = None
    """How many of several conductors share the pull."""

    device_limit: Force | None = None
    """Rating of the pulling device. From 1 lbf to 1e+06 lbf."""

    feed_length: Length | None = None
    """Cable between reel and conduit whose friction is the incoming tension, where that is not
    given. From 0 ft to 1000 ft."""

    find_largest: bool | None = None
    """Whether to find the largest friction, incoming tension and last straight that still
    comply."""

    friction_coefficient: float | None = None
    """Coefficient of friction of one cable against the conduit."""

    friction_range: FrictionRange | None = None
    """Gives the pull at a low and a high friction as well."""

    grip_limit: Force | None = None
    """Limit of the basket grip. From 1 lbf to 1e+06 lbf."""

    incoming_tension: Force | None = None
    """Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf."""

    ordering: CableOrder | None = None
    """Gives the cable to order as well."""

    profile_spacing: Length | None = None
    """Gives the tension along the run at points this far apart, for plotting. From 0.25 ft to 1000
    ft."""

    weight_correction_factor: float | None = None
    """Factor on friction for cables side by side, in place of the one of their arrangement."""

    weight_correction_in: WeightCorrectionUse | None = None
    """Where the weight correction factor multiplies friction."""


class PullTensionResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pull from the first section to the last, and from the other end."""

    allowable_sidewall_pressure: ForcePerLength
    """What the cable allows in a bend."""

    arrangement: CableArrangement
    """How the cables lie, or the way with most friction."""

    bend_total: Angle
    """All bends of the route together."""

    better_direction: PullDirection
    """Direction that complies, or was judged, or uses less of the limits."""

    better_reason: str
    """Why that end, in a sentence."""

    highest_tension: Force
    """Highest tension anywhere along the pull."""

    incoming_tension: Force
    """Tension at the entry without a brake."""

    lubricant_volume: Volume
    """Pulling lubricant for the run."""

    reversed: ReversedPull
    """The same pull from the other end."""

    sections: list[SectionTension]
    """The sections in the order of the pull."""

    tension: Force
    """Tension at the pulling end."""

    utilization_percent: float
    """The largest share of tension, sidewall pressure and brake that is used."""

    weight_correction_factor: float
    """Factor on friction for that arrangement."""

    allowable_tension: Force | None = None
    """What conductors, grip and gear allow; absent where the conductors are not known."""

    brake_tension: Force | None = None
    """Force with which the reel must hold back, if it must."""

    braking_case: BrakingCase | None = None
    """The pull at the low friction, where the route can run away."""

    cable_supports: list[HangingCable] | None = None
    """Where the cable must be supported, if it hangs farther than its conductors may."""

    cables_to_order: list[OrderedCable] | None = None
    """The cable to order, a line of cables each, if asked."""

    clearance: Length | None = None
    """Free height above the cables; up to four cables."""

    friction_cases: list[FrictionCase] | None = None
    """The pull at low, expected and high friction, if asked."""

    handbook_clearance: Length | None = None
    """Clearance as handbooks print it; higher for the cradle."""

    jam_ratio: float | None = None
    """Conduit over cable diameter, where three cables govern."""

    jam_ratio_with_ovality: float | None = None
    """Conduit over cable diameter times 1.05, the handbook allowance for ovality in bends."""

    largest: LargestComplying | None = None
    """What would still comply, if asked."""

    profile: list[ProfilePoint] | None = None
    """Tension along the run for plotting, if asked."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest sidewall pressure, if there is a bend."""


class PullTensionStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="pull_tension"
):
    """An answer of pull_tension."""

    answer: PullTensionAnswer
    """The answer of `POST /v1/pull-tension`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["pull_tension"]] = "pull_tension"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class PullThrough(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A circuit between two entries; the distance of entries is between their near edges."""

    circuit: str
    """Name of the circuit."""

    kind: PullKind
    """How it goes."""

    pointers: list[str]
    """JSON pointers of its two entries."""

    spliced: bool
    """Whether it is spliced on its way."""

    entry_distance: Length | None = None
    """Distance of the two entries, where positions and the box tell it."""

    least_entry_distance: Length | None = None
    """Least distance of the two entries, where it turns or is spliced."""

    verdict: Verdict | None = None
    """Whether the two entries are far enough apart; absent where no distance is asked."""


class RackedCable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Cable on the racks of a manhole."""

    centerline_radius: Length
    """Least radius of the center line of the cable."""

    offset_length: Length
    """Length of the two reverse bends at each end."""

    wall_length: Length
    """Least length of the wall, from duct to duct."""


class Racking(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How cable leads from its ducts to the racks on a wall of a manhole, along its length."""

    offset: Length
    """How far the racks lie aside of the ducts; none where the ducts face each other. From 0 in to
    240 in."""

    bending_radius: Length | None = None
    """Least radius to the inner side of the cable. From 0.5 in to 120000 in."""

    splice_wall: Length | None = None
    """Wall that a splice takes between the bends, where a circuit is spliced. From 0.1 in to 1200
    in."""

    straight_out: Length | None = None
    """Straight out of the duct, before the cable bends. From 0 in to 240 in."""


class Rate(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The caller's own rate for an item; a key left out matches any."""

    item: TakeoffItem
    """What it is for."""

    conduit_type: ConduitType | None = None
    """Of this conduit alone."""

    size: str | None = None
    """Of this size alone."""

    unit: TakeoffUnit | None = None
    """What it is for one of; what is ordered is rounded up in it."""

    unit_labor_hours: float | None = None
    """Labor hours for one of the unit."""

    unit_price: float | None = None
    """Price for one of the unit, in the caller's money; this, or labor hours, or both."""


class RatingPractice(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The method banks are rated by, at one frequency for all, and what concrete and ducts are to
    their heat."""

    concrete_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W."""

    duct_air_temperature: Temperature | None = None
    """Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to
    150 degC."""

    duct_material: WallMaterial | None = None
    """What ducts without a type are made of, for their heat; of the others their type tells."""

    duct_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W."""

    frequency: Frequency | None = None
    """Frequency of the alternating current. From 10 Hz to 400 Hz."""

    method: AmpacityMethod | None = None
    """Method; both gives the one that allows less, with the other beside it."""


class Ready(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The tables are loaded and requests are welcome."""

    status: str
    """The word `ready`."""

    tables_version: str
    """Hash of all reference tables."""


class RefusedAssumption(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The value that would have been taken for want of one; a quantity too, where it is a
    figure."""

    citation: str
    """Where it comes from, or that it is practice."""

    standing: Standing
    """With what right it would be taken."""

    text: str
    """The value as a text."""

    quantity: AnyQuantity | None = None
    """The value, where it is a figure."""

    source_id: str | None = None
    """Id of the source in the table of sources."""


class Reinforcing(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Longitudinal bars and ties."""

    bar_count: int
    """Longitudinal bars."""

    bar_size: BarSize
    """Size of the longitudinal bars."""

    edge_cover: Length | None = None
    """Concrete outside the ties. From 0 in to 240 in."""

    lap_diameter_ratio: float | None = None
    """Lap over the diameter of a bar, where lap_length is left out."""

    lap_length: Length | None = None
    """Lap of two bars. From 0 in to 240 in."""

    stock_length: Length | None = None
    """Length bars come in. From 0.25 ft to 1000 ft."""

    tie_hook_length: Length | None = None
    """What each of the two hooks of a tie takes of its bar. From 0 in to 240 in."""

    tie_size: BarSize | None = None
    """Size of the ties."""

    tie_spacing: Length | None = None
    """Distance of the ties. From 0.25 ft to 1000 ft."""


class ReinforcingTakeoff(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Bars of the envelope."""

    bar_count: int
    """Longitudinal bars beside each other."""

    bar_size: BarSize
    """Their size."""

    edge_cover: Length
    """Concrete outside the ties."""

    lap_count: int
    """Laps of all longitudinal bars."""

    lap_length: Length
    """Lap of two bars."""

    least_concrete_cover: Length
    """Concrete outside the ducts that the cage takes: edge cover, tie and bar."""

    longitudinal_length: Length
    """Longitudinal bars with their laps, together."""

    mass: Mass
    """All bars together."""

    tie_count: int
    """Ties along the pour."""

    tie_length: Length
    """All ties together."""

    tie_size: BarSize
    """Size of the ties."""

    tie_spacing: Length
    """Distance of the ties."""


class Remedies(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What would make a run comply, each change of one thing verified by running it."""

    cut_short: bool
    """Whether there is more than is told: as many runs were tried as may be and changes left, more
    than 20 were found, or their runs take more than 4 MiB together."""

    found: list[Remedy]
    """Remedies that were found: runs that comply first, then the cheapest to build."""

    not_found: list[UnremediedViolation]
    """Violations that no remedy removes, each with why."""

    trial_count: int
    """How many changed runs were tried: 50 at most, fewer of a run that takes long."""


class Remedy(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One change that was run: it removes a violation and adds none."""

    change: ChangeKind
    """What kind of change it is."""

    changed: list[str]
    """JSON pointers into that run of what was set."""

    message: str
    """What to change, in one sentence."""

    remaining_violation_count: int
    """Violations that are left then."""

    removed: list[RemovedViolation]
    """Violations that are gone then."""

    run: DuctRunRequest
    """The run as it was sent with this one change made: to send, to alter further, or to
    compare."""

    verdict: Verdict
    """Of the run so changed."""


class RemovedViolation(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A violation that the changed run has no more."""

    code: str
    """Its code."""

    pointer: str | None = None
    """Where it is in the request that was sent."""


class ResistancePerLength(Quantity, frozen=True):
    """An electric resistance per length with its unit."""

    unit: ResistancePerLengthUnit

    PINT: ClassVar[Mapping[str, str]] = {"ohm/km": "ohm / kilometer", "ohm/1000ft": "ohm / (kilofoot)"}
    CLOSED: ClassVar[bool] = True


class ReversedPull(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The same pull from the other end."""

    highest_tension: Force
    """Highest tension anywhere along the pull."""

    sections: list[SectionTension]
    """The sections in the order of this pull: the route from its last section to its first."""

    tension: Force
    """Tension at the pulling end."""

    utilization_percent: float
    """The largest share of the limits that is used."""

    verdict: Verdict
    """Whether it keeps its limits, or was not judged."""

    brake_tension: Force | None = None
    """Force with which the reel must hold back, if it must."""

    braking_case: BrakingCase | None = None
    """The pull at the low friction, where the route can run away."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest sidewall pressure, if there is a bend."""


class RunCircuit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One circuit."""

    ducts: list[str]
    """Names of its ducts, as tier-position."""

    end: str
    """Stop where it leaves, nearer the end of the run."""

    fills: list[CircuitFill]
    """In every conduit on its way."""

    length: Length
    """From its start to its end along the center line."""

    name: str
    """What the request calls it, or its place."""

    pulls: list[CircuitPulls]
    """From stop to stop."""

    service: Service
    """What it carries."""

    start: str
    """Stop where it enters, nearer the start of the run."""

    voltage_drop: VoltageDropResult | None = None
    """Over that length, if a current or a power is given."""


class RunDuct(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One duct of the run, from the lower left corner of the bank without its cover. It has no
    place where the first stretch takes no room and an outside diameter is not known."""

    circuits: list[str]
    """Names of the circuits that lie in it; none in a spare."""

    name: str
    """Tier-position: tier 1 the bottom, position 1 the left."""

    mandrel_diameter: Length | None = None
    """Mandrel of the smallest bore along it, as far as that is known."""

    outside_diameter: Length | None = None
    """Outside diameter, where it is known."""

    signal: bool | None = None
    """Whether it is for signals."""

    x: Length | None = None
    """Distance of its center to the right."""

    y: Length | None = None
    """Distance of its center upward."""


class RunHorizontalBend(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="horizontal_bend"
):
    """A bend in a level plane."""

    angle: Angle
    """Change of direction. From 0.1 deg to 360 deg."""

    kind: ClassVar[Literal["horizontal_bend"]] = "horizontal_bend"

    made: BendMade | None = None
    """Whether it is bought, bent on site, or laid on a curve."""

    radius: Length | None = None
    """Radius to the center line. From 0.5 in to 120000 in."""

    turn: Turn | None = None
    """To which side; nothing is reckoned with it, it is drawn."""


class RunJoining(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How ducts are joined, and how their elbows are made."""

    bell_loss: Length | None = None
    """What a joint takes of a stick's length. From 0 in to 240 in."""

    cement_per_joint: Volume | None = None
    """Solvent cement that a cemented joint takes. From 1e-05 qt_us to 4 qt_us."""

    cord_tail: Length | None = None
    """Pull cord left at each end of a duct. From 0 in to 240 in."""

    elbow_tangent: Length | None = None
    """Straight part at either end of a factory elbow. From 0 in to 240 in."""

    ends: DuctEnds | None = None
    """Bells or plain ends of the sticks; only what is cemented has bells."""

    mandrel_clearance: Length | None = None
    """How much smaller than the bore the mandrel is. From 0 in to 240 in."""

    offcuts_shared: bool | None = None
    """Whether the offcut of one duct starts the next."""

    stick_length: Length | None = None
    """Length a stick is sold by. From 0.25 ft to 1000 ft."""

    temperature: Temperature | None = None
    """Temperature when joining. From -100 degF to 400 degF."""

    waste_percent: float | None = None
    """Sticks to order beyond those laid."""


class RunLoad(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What a circuit carries, at the voltage it has; its sets are those of its ducts."""

    apparent_power: ApparentPower | None = None
    """Apparent power of the load at the voltage of the source; this, current or power. From 1e-05
    kVA to 1e+06 kVA."""

    conduit_material: CircuitConduit | None = None
    """Conduit that its voltage drop is reckoned in, as Table 9 tells them apart."""

    current: Current | None = None
    """Current of the circuit, all its sets together; without it the answer says what it may be.
    From 0.001 A to 20 kA."""

    duration_per_year: Duration | None = None
    """At this load, to tell what is lost in a year. From 0 h to 8784 h."""

    limit_percent: float | None = None
    """Most that may be lost."""

    load_factor_percent: float | None = None
    """Mean load of a day in percent of its peak."""

    loaded_conductor_count: int | None = None
    """Conductors in each duct that carry the current, neutrals that count included; other neutrals
    and grounds carry none here."""

    loaded_neutral_count: int | None = None
    """Of the loaded conductors in each duct, those that are neutrals, where loads have harmonics:
    each is as large as the phases, and is taken to carry as much."""

    overcurrent_device: Current | None = None
    """Rating of the overcurrent device ahead, for the least grounding conductor. From 1 A to 6
    kA."""

    power: Power | None = None
    """Power of the load at the voltage of the source; this, current or apparent_power. From 0.01 W
    to 1e+06 kW."""

    power_factor: float | None = None
    """Of the load, which lags; of direct current there is none."""

    reactance: ResistancePerLength | None = None
    """Of one conductor to neutral, in place of the table's. From 0 ohm/1000ft to 1000
    ohm/1000ft."""

    resistance: ResistancePerLength | None = None
    """Of one conductor at its temperature, in place of the table's. From 0.0001 ohm/1000ft to 1000
    ohm/1000ft."""

    shield_grounding: ShieldGrounding | None = None
    """Where the shields are grounded, if the cables have any."""

    system: CircuitSystem | None = None
    """Kind of circuit: three conductors make a set, or two."""

    temperature_limit: Temperature | None = None
    """Highest temperature of the conductor; what is lost on the way is reckoned at it. From 0 degC
    to 250 degC."""

    terminal_rating: TerminalRating | None = None
    """Temperature that the terminals at both ends are marked for; unmarked ones are taken for 60
    degC to 100 A of overcurrent_device or, without one, of current, and for 75 degC above; where
    neither is given, for 60 degC to 1 AWG."""


class RunMovement(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One straight run."""

    anchor_positions: list[Length]
    """Where the run is fixed between them; its ends are fixed."""

    fitting_count: int
    """Fittings that share the change; 0 if none is required."""

    fitting_positions: list[Length]
    """Where the barrels are clamped, one for each fitting."""

    fitting_required: bool
    """Whether the change reaches what calls for a fitting."""

    holding_strap_positions: list[Length]
    """Straps that hold: the clamps of the barrels, and the anchors without barrels. All others let
    the run slide."""

    length: Length
    """Length of the run."""

    length_change: Length
    """Change over the whole span of temperature."""

    piston_openings: list[PistonOpening]
    """Openings at the temperatures asked for and of the installation, from the lowest on."""

    piston_reaches: list[Length]
    """Where the pistons end when fully open, in the order of the fittings: between a barrel's clamp
    and this place no strap may stand."""

    travel_used_percent: float | None = None
    """Share of the travel of a fitting that its movement uses."""


class RunMoving(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Expansion fittings and straps of all that lies above ground."""

    coupling: Coupling | None = None
    """How lengths of rmc and imc are coupled."""

    end_distance: Length | None = None
    """Distance of the end straps from the terminations. From 0 ft to 1000 ft."""

    fitting_travel: Length | None = None
    """Travel of one expansion fitting. From 0.25 in to 60 in."""

    opening_temperatures: list[Temperature] | None = None
    """Temperatures for which to give the opening."""

    piston_convention: PistonConvention | None = None
    """How far to open the fittings."""

    piston_engagement: Length | None = None
    """Length of the piston that stays in the barrel when the fitting is fully open, with its
    coupling. A fitting fully open is as long as this and twice its travel. From 0 in to 12 in."""

    service_temperature: Temperature | None = None
    """Highest temperature of the air that the conduit is permitted or listed for. From 50 degF to
    400 degF."""

    usable_travel_percent: float | None = None
    """Most of the travel of a fitting that its share of the movement may use."""


class RunPlace(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """An end of the run, or a pull point in it."""

    kind: PlaceKind
    """What stands there."""

    box: BoxSize | None = None
    """The box as planned or built, held against what it must measure."""

    box_sizes: list[BoxSize] | None = None
    """Boxes that can be had: the smallest that holds the entries is named. A box that is given is
    judged by itself."""

    cable_allowance: Length | None = None
    """Cable beyond the conduit there, for racking, tail and termination together. From 0 ft to 1000
    ft."""

    exit_wall: BoxWall | None = None
    """Wall of the box by which ducts leave toward the end of the run; they come in by the left."""

    finish: RunEnd | None = None
    """How each duct finishes there."""

    height: Length | None = None
    """Height above grade to which the ducts come up: the buried stretch beside it then gets an
    elbow and a straight leg up to it. From 0 ft to 100 ft."""

    name: str | None = None
    """Its name."""

    racking: Racking | None = None
    """Racks for the cable, in a manhole."""

    removable_cover: BoxWall | None = None
    """The side that comes off: opposite to it conductors need only the room to bend."""

    riser_conduit_type: ConduitType | None = None
    """Conduit of that elbow and leg."""

    riser_radius: Length | None = None
    """Radius of that elbow. From 0.5 in to 120000 in."""

    spliced: bool | None = None
    """Whether the circuits that pass are spliced there."""


class RunStop(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """An end of the run or a pull point."""

    kind: PlaceKind
    """What stands there."""

    name: str
    """What the request calls it, or its place."""

    station: Length
    """Distance in plan from the start."""

    box: PullBoxResult | None = None
    """What it must measure for the circuits that pass it, where known."""


class RunStraight(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="straight"):
    """A straight; in plan where a profile gives the heights, else along the conduit."""

    kind: ClassVar[Literal["straight"]] = "straight"

    length: Length
    """Its length. From 0.01 ft to 100000 ft."""

    grade: Grade | None = None
    """Slope, positive climbs toward the end of the run; none with a profile. From -90 deg to 90
    deg."""


class RunStretch(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One stretch of the run, each part as its own operation tells it."""

    conduits: list[StretchJoints]
    """Its ducts by conduit, risers of another apart."""

    length: Length
    """Length of a duct along its center line, risers included."""

    name: str
    """What the request calls it, or its place."""

    permitted_uses: list[StretchUse]
    """Whether each type of its conduit may be used as it is here."""

    plan_length: Length
    """Length in plan, that of its trench."""

    risers: list[StretchRiser]
    """The parts above grade at its ends."""

    setting: SettingKind
    """How it is laid."""

    station: Length
    """Where it begins, in plan from the start."""

    ampacity: AmpacityResult | None = None
    """What its circuits may carry where it lies deepest, if they have a load."""

    bore_uplift_per_length: ForcePerLength | None = None
    """Of all ducts together in the fluid of the bore; negative if they sink."""

    cover: CoverResult | None = None
    """The cover it needs, where it is buried."""

    earth_loads: list[EarthLoadResult] | None = None
    """If asked: under its least cover, where that is another under its greatest, and between them
    where groundwater stands at the top of what is buried."""

    encasement: EncasementResult | None = None
    """The concrete around its bank."""

    expansion: ExpansionResult | None = None
    """Of its straights above ground."""

    flotation: FlotationResult | None = None
    """While its concrete is poured."""

    groundwater_flotation: FlotationResult | None = None
    """Finished and empty, where it lies under the groundwater."""

    spacers: SpacersResult | None = None
    """The spacers of its bank."""

    structure_joints: list[JointFitting] | None = None
    """Joints of the structure, each with one more fitting in every duct, if there are any."""

    supports: list[SupportsResult] | None = None
    """Of each straight above ground."""

    trench: TrenchResult | None = None
    """The trench it lies in."""


class RunVerticalBend(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="vertical_bend"
):
    """A bend in a vertical plane, from the grade of what is before it; none with a profile."""

    exit_grade: Grade
    """Slope where it ends, positive climbs. From -90 deg to 90 deg."""

    kind: ClassVar[Literal["vertical_bend"]] = "vertical_bend"

    entry_grade: Grade | None = None
    """Slope where it begins, positive climbs. From -90 deg to 90 deg."""

    made: BendMade | None = None
    """Whether it is bought, bent on site, or laid on a curve."""

    radius: Length | None = None
    """Radius to the center line. From 0.5 in to 120000 in."""


class SectionTension(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One section of the pull."""

    highest_tension: Force
    """Highest tension in it, at its ends or inside a bend."""

    tension_in: Force
    """Tension entering the section."""

    tension_out: Force
    """Tension leaving the section."""

    sidewall_pressure: ForcePerLength | None = None
    """Highest pressure on the worst cable; bends only."""


class Site(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The place, once."""

    earth_temperature: Temperature | None = None
    """Temperature of the earth at the depth of the ducts, where circuits have a load. From -20 degC
    to 70 degC."""

    earth_thermal_resistivity: ThermalResistivity | None = None
    """Thermal resistivity of the earth and the backfill, where circuits have a load. From 20
    degC.cm/W to 1000 degC.cm/W."""

    groundwater_depth: Length | None = None
    """Depth of the groundwater below grade, at its highest; assumed where an earth_load asks. From
    0 in to 1200 in."""

    temperatures: Temperatures | None = None
    """What conduit above ground sees; without them its movement is not judged."""


class SizeCandidate(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One trade size of the type with what the set would take of it."""

    conduit_area: Area
    """Inside area, as printed."""

    fill_percent: float
    """Conductor area in percent of conduit area."""

    limit_area: Area
    """Area the percentage allows, as printed."""

    passes_bore: bool
    """Whether every conductor is narrower than the bore."""

    rounding_decided: bool
    """Whether it complies only by the 0.8 rule of Note 7."""

    spare_area: Area
    """Limit area less conductor area; negative when over."""

    trade_size: TradeSize
    """Trade size of the conduit."""

    verdict: Verdict
    """Whether the set complies and leaves the spare asked for."""

    jam_ratio: float | None = None
    """Conduit over cable diameter; for three conductors or cables only."""

    jam_ratio_with_ovality: float | None = None
    """Conduit over cable diameter times 1.05."""


class SizeChange(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What one change of the set does to the size."""

    change: ConductorChange
    """What changes on that line."""

    pointer: str
    """Line of `cables` that changes, in the request."""

    trade_size: TradeSize | None = None
    """Smallest size that complies with the change; absent if none does."""


class SmallConductorVolume(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Conductors smaller than 4 AWG."""

    conductor_count: int
    """Conductors that count, those spliced at every entry."""

    least_volume: Volume
    """Volume they take, without devices and clamps."""

    standard_box: StandardBoxFound | None = None
    """Least standard box for them, where nothing larger enters."""


class SourceRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A cited document."""

    citation: str
    """Title, publisher and date of the document."""

    source_id: str
    """Id by which rows and findings name the document."""

    note: str | None = None
    """Where its figures were read."""


class SourceTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Sources, with the hash of all tables."""

    rows: list[SourceRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class SpacersAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of spacers with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: SpacersResult
    """What was calculated."""

    request: SpacersRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class SpacersItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="spacers"
):
    """A question of spacers."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["spacers"]] = "spacers"

    request: SpacersRequest
    """The body of `POST /v1/spacers`."""


class SpacersItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="spacers"
):
    """An answer of spacers."""

    answer: SpacersAnswer
    """The answer of `POST /v1/spacers`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["spacers"]] = "spacers"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class SpacersOfSize(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The pieces for ducts of one size."""

    base_spacer_count: int
    """Base spacers, which carry the bottom tier."""

    intermediate_spacer_count: int
    """Intermediate spacers, which part two tiers."""

    order_count: int
    """All pieces of this size with waste, rounded up."""

    outside_diameter: Length
    """Of the ducts that they carry or close."""

    top_piece_count: int
    """Pieces that close the top tier."""


class SpacersRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One straight run of a duct bank and how its spacers are specified."""

    length: Length
    """Length of the run, face to face. From 0.01 ft to 100000 ft."""

    bank: DuctBank | None = None
    """In place of tiers: the duct bank, whose pieces are counted by the size of its ducts."""

    duct_count_per_spacer: int | None = None
    """Ducts that one piece carries side by side."""

    end_offset: Length | None = None
    """Distance of the first and last station from the ends, for an interval by distance. From 0 ft
    to 1000 ft."""

    interval: SpacerInterval | None = None
    """How far apart the stations stand."""

    piece_system: PieceSystem | None = None
    """Whether a piece carries a few ducts, a whole tier or the whole bank."""

    shared_end_count: int | None = None
    """Ends of this segment whose station belongs to the segment it meets; 0 between manholes."""

    stick_length: Length | None = None
    """Length of a stick, to keep stations clear of the joints. From 0.25 ft to 1000 ft."""

    tiers: list[int] | None = None
    """Ducts in each tier, the bottom tier first."""

    top_closure: TopClosure | None = None
    """What closes each stack above the top ducts."""

    waste_percent: float | None = None
    """Extra pieces to order, in percent."""


class SpacersResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The stations and the pieces."""

    base_spacer_count: int
    """Base pieces, under the bottom tier."""

    intermediate_spacer_count: int
    """Intermediate pieces, between tiers."""

    order_count: int
    """All pieces with waste, rounded up; by size, if they are."""

    piece_count: int
    """All pieces, before waste."""

    station_count: int
    """Stations along the run."""

    top_piece_count: int
    """Pieces that close the stacks from above."""

    actual_spacing: Length | None = None
    """Even distance between stations; none for a single station."""

    sizes: list[SpacersOfSize] | None = None
    """The pieces by size, the largest first, if a bank is given."""


class SpacersStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="spacers"
):
    """An answer of spacers."""

    answer: SpacersAnswer
    """The answer of `POST /v1/spacers`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["spacers"]] = "spacers"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Spacing(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How spacers are specified."""

    duct_count_per_spacer: int | None = None
    """Ducts that one piece carries side by side."""

    end_offset: Length | None = None
    """Distance of the first and last station from the ends, for an interval by distance. From 0 ft
    to 1000 ft."""

    interval: SpacerInterval | None = None
    """How far apart the stations stand."""

    piece_system: PieceSystem | None = None
    """Whether a piece carries a few ducts, a whole tier or the whole bank."""

    shared_end_count: int | None = None
    """Ends of this segment whose station belongs to the segment it meets; 0 between manholes."""

    stick_length: Length | None = None
    """Length of a stick, to keep stations clear of the joints. From 0.25 ft to 1000 ft."""

    top_closure: TopClosure | None = None
    """What closes each stack above the top ducts."""

    waste_percent: float | None = None
    """Extra pieces to order, in percent."""


class StandardBoxFound(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A standard metal box."""

    kind: StandardBoxKind
    """Its kind; masonry, FS and FD are per gang."""

    size: str
    """Its size, as printed in inches."""

    volume: Volume
    """Its volume."""


class Station(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Depth of cover at one place of the run."""

    cover: Length
    """Cover over the bank there. From 0 in to 1200 in."""

    station: Length
    """Distance from the start. From 0 ft to 1e+07 ft."""


class Step(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One line of the working; `pointer` is the part of the request it is about."""

    formula: str
    """The formula."""

    pointer: str
    """JSON pointer of the part of the request."""

    quantity: AnyQuantity
    """What comes out."""

    substituted: str
    """The figures put in, in SI unless they say their unit."""

    symbol: str
    """Symbol of what comes out."""


class StraightSection(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="straight"
):
    """A straight length of conduit."""

    kind: ClassVar[Literal["straight"]] = "straight"

    length: Length
    """Length along the conduit. From 0.01 ft to 100000 ft."""

    conduit: Conduit | None = None
    """Conduit of this section, where it differs."""

    friction_coefficient: float | None = None
    """Coefficient of friction of this section, where it differs."""

    grade: Grade | None = None
    """Slope; positive climbs in the direction of the pull. Left out, that with which the last
    straight or vertical bend ends. From -90 deg to 90 deg."""


class StreamBasis(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="type", tag="basis"):
    """The first line of a stream: what all its answers rest on."""

    service_version: str
    """Version of the service."""

    tables_version: str
    """Hash of all tables."""

    type: ClassVar[Literal["basis"]] = "basis"


class StreamProblem(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="type", tag="problem"):
    """A line of a stream that has no answer."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    problem: Problem
    """The problem; its pointers start at the line."""

    status: int
    """HTTP status the question would have had by itself."""

    type: ClassVar[Literal["problem"]] = "problem"

    id: str | None = None
    """Id of the question; left out if it had none that could be read."""

    operation: OperationName | None = None
    """The calculation asked for; left out if it could not be read."""


class StreamStopped(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="type", tag="stopped"):
    """The last line of a stream that the service ended before its sender did: what was answered
    counts, and the lines after `line` can be sent again."""

    failed_count: int
    """How many of the questions ended in a problem."""

    item_count: int
    """Lines that were answered, blank ones not counted."""

    line: int
    """Number of the last line that was looked at."""

    reason: str
    """`stopping`: this process is being stopped; `idle`: nothing came for too long."""

    type: ClassVar[Literal["stopped"]] = "stopped"


class StreamSummary(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="type", tag="summary"):
    """The last line of a stream; an answer without it was cut off."""

    failed_count: int
    """How many of the questions ended in a problem."""

    item_count: int
    """Lines that were answered, blank ones not counted."""

    type: ClassVar[Literal["summary"]] = "summary"


class Stretch(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A part of the run in one setting, from the end of the one before it."""

    setting: Setting
    """Where it lies."""

    bank: DuctBank | None = None
    """Its own bank, in place of that of the run."""

    concrete: Encasing | None = None
    """What differs here from the concrete of the run."""

    conduit: Conduit | None = None
    """What every duct of the bank is here."""

    conduit_type: ConduitType | None = None
    """Type of every duct of the bank here, its size kept."""

    digging: Digging | None = None
    """What differs here from the digging of the run."""

    earth_load: EarthLoading | None = None
    """Earth and traffic here, in place of the earth_load of the run or laid over it."""

    friction_coefficient: float | None = None
    """Coefficient of friction here, where it differs."""

    joining: RunJoining | None = None
    """What differs here from the joining of the run."""

    length: Length | None = None
    """Length of one level straight; between ends with a height it is measured to their risers. This
    or sections. From 0.01 ft to 100000 ft."""

    name: str | None = None
    """Its name."""

    pull_point: RunPlace | None = None
    """The pull point at its end, if one is there."""

    rating: EarthRating | None = None
    """What differs here from the rating of the run, or the earth from that of the site; its
    frequency is one for all stretches."""

    sections: list[RunSection] | None = None
    """Its straights and bends; these or length."""

    spacing: Spacing | None = None
    """What differs here from the spacing of the run."""

    tiers: list[int] | None = None
    """Tiers of the same ducts here, where they differ: the ducts go on in order, from the bottom
    left."""


class StretchJoints(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Ducts of one conduit in a stretch, or in a riser of it."""

    duct_count: int
    """Ducts of this conduit."""

    length: Length
    """Of one duct along its center line."""

    conduit_type: ConduitType | None = None
    """Its type, where it is given."""

    joints: JointsResult | None = None
    """If it is on file how it is joined."""

    riser: str | None = None
    """Where it comes up, if it is a riser."""

    stick_length: Length | None = None
    """Length of its sticks, if it is on file how it is joined."""

    trade_size: TradeSize | None = None
    """Trade size, where it is given."""


class StretchRiser(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The part of a riser above grade."""

    name: str
    """What stands above it."""

    expansion: ExpansionResult | None = None
    """If temperatures are given."""

    supports: SupportsResult | None = None
    """If a rule is on file."""


class StretchUse(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The uses of one type of conduit in a stretch."""

    conduit_type: ConduitType
    """Type of the conduit."""

    uses: list[JudgedUse]
    """What is said of each use."""

    verdict: Verdict
    """Of all its uses together."""


class StructureJoint(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A joint of the structure that the run lies on."""

    movement: Length
    """By how much it opens and closes in all. From 0 in to 60 in."""

    position: Length
    """Distance from the start of the stretch. From 0 ft to 100000 ft."""


class SupportedConduit(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A conduit with a rule of support spacing, by type and trade size."""

    kind: Literal["listed"]
    """Fixed text that says: by type and trade size."""

    trade_size: TradeSize
    """Trade size, as the trade writes it."""

    type: SupportedConduitType
    """Type of conduit."""

    coupling: Coupling | None = None
    """How the lengths are coupled, of rmc and imc alone."""


class SupportsAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of supports with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: SupportsResult
    """What was calculated."""

    request: SupportsRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class SupportsItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="supports"
):
    """A question of supports."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["supports"]] = "supports"

    request: SupportsRequest
    """The body of `POST /v1/supports`."""


class SupportsItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="supports"
):
    """An answer of supports."""

    answer: SupportsAnswer
    """The answer of `POST /v1/supports`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["supports"]] = "supports"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class SupportsRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A straight run above ground."""

    conduit: SupportedConduit
    """The conduit."""

    length: Length
    """Length of the run above ground, between boxes, fittings or other terminations. From 0.01 ft
    to 100000 ft."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    end_distance: Length | None = None
    """Distance of the end straps from the terminations, at most what the rule of the conduit
    allows. From 0 ft to 1000 ft."""

    fittings: Fittings | None = None
    """Expansion fittings of the run, which then lies between two fixed points; without them the
    straps are those of a run that needs none."""

    termination_count: int | None = None
    """Ends of the run at a box or other termination; with one, the run goes on."""


class SupportsResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """How far apart, how many and where."""

    anchor_positions: list[Length]
    """Where the run is fixed between them; its ends are fixed."""

    end_distance: Length
    """Distance of the first strap from its termination."""

    fitting_positions: list[Length]
    """Where the barrels of the fittings given are clamped."""

    holding_strap_positions: list[Length]
    """Supports that hold: with fittings the clamps of their barrels, and anchors without barrels;
    of metal and flexible conduit without fittings all. All others let the run slide."""

    piston_reaches: list[Length]
    """Where the pistons of the fittings end when fully open, in the order of fitting_positions."""

    positions: list[Length]
    """Where the supports stand along the run."""

    support_count: int
    """Straps of the run."""

    support_spacing: Length
    """Most that supports may stand apart, as printed."""

    actual_spacing: Length | None = None
    """Widest distance between straps; none for a single one."""


class SupportsStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="supports"
):
    """An answer of supports."""

    answer: SupportsAnswer
    """The answer of `POST /v1/supports`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["supports"]] = "supports"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Takeoff(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """All lines in the order of building, and their total by the caller's rates."""

    lines: list[TakeoffLine]
    """The lines, by group and item."""

    total: TakeoffTotal | None = None
    """If rates were given."""


class TakeoffLine(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One line: an item of one conduit type and size with all that the run takes of it."""

    basis: str
    """Arithmetic of the exact quantity in one line."""

    description: str
    """The item in words."""

    exact_quantity: TakeoffQuantity
    """What is laid, dug or done, without waste."""

    group: TakeoffGroup
    """The part of the work it belongs to."""

    item: TakeoffItem
    """What it is a line of."""

    line: int
    """Number of the line, from 1."""

    pointer: str
    """JSON pointer of the figure in this answer that it comes from."""

    shares: list[TakeoffShare]
    """The exact quantity by stretch, in their order."""

    angle: Angle | None = None
    """Angle of an elbow or a field bend."""

    conduit_type: ConduitType | None = None
    """Type of the conduit."""

    labor_hours: float | None = None
    """Labor hours of the exact quantity, by the caller's rate."""

    measure: VolumeMeasure | None = None
    """How a volume of earth is measured."""

    order_quantity: TakeoffQuantity | None = None
    """What is ordered, in whole packages; absent for work without an order."""

    package: str | None = None
    """What it comes in, such as a stick of 10 ft."""

    package_count: int | None = None
    """Packages that are ordered."""

    price: float | None = None
    """By the caller's rate, to the cent: of the order, else of the exact quantity."""

    radius: Length | None = None
    """Radius of an elbow or a field bend."""

    size: str | None = None
    """Trade size, conductor size or bar size; of pavement its kind. A rate matches by it."""

    unit_labor_hours: float | None = None
    """The caller's rate, for one of the unit of the line."""

    unit_price: float | None = None
    """The caller's rate, for one of the unit of the line."""

    waste_percent: float | None = None
    """Waste that is in the order."""


class TakeoffQuantity(Quantity, frozen=True):
    """A quantity with the unit in which it is sold, paid or done."""

    unit: TakeoffUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "A": "ampere",
        "kA": "kiloampere",
        "V": "volt",
        "kV": "kilovolt",
        "W": "watt",
        "kW": "kilowatt",
        "kVA": "kilovolt * ampere",
        "kWh": "kilowatt * hour",
        "ohm/km": "ohm / kilometer",
        "ohm/1000ft": "ohm / (kilofoot)",
        "Hz": "hertz",
        "1": "dimensionless",
        "percent": "percent",
        "mm": "millimeter",
        "cm": "centimeter",
        "m": "meter",
        "in": "inch",
        "ft": "foot",
        "yd": "yard",
        "mm2": "millimeter**2",
        "cm2": "centimeter**2",
        "m2": "meter**2",
        "in2": "inch**2",
        "ft2": "foot**2",
        "kcmil": "kilocircular_mil",
        "L": "liter",
        "m3": "meter**3",
        "in3": "inch**3",
        "ft3": "foot**3",
        "yd3": "yard**3",
        "qt_us": "quart",
        "gal_us": "gallon",
        "deg": "degree",
        "rad": "radian",
        "degC": "degree_Celsius",
        "degF": "degree_Fahrenheit",
        "K": "kelvin",
        "delta_degC": "delta_degree_Celsius",
        "delta_degF": "delta_degree_Fahrenheit",
        "1/degC": "1 / delta_degree_Celsius",
        "1/degF": "1 / delta_degree_Fahrenheit",
        "K.m/W": "kelvin * meter / watt",
        "degC.cm/W": "delta_degree_Celsius * centimeter / watt",
        "degC.ft/W": "delta_degree_Celsius * foot / watt",
        "W/m": "watt / meter",
        "W/ft": "watt / foot",
        "kg": "kilogram",
        "t": "metric_ton",
        "lb": "pound",
        "short_ton": "short_ton",
        "kg/m": "kilogram / meter",
        "kg/km": "kilogram / kilometer",
        "lb/ft": "pound / foot",
        "lb/1000ft": "pound / (kilofoot)",
        "N": "newton",
        "kN": "kilonewton",
        "lbf": "force_pound",
        "kgf": "force_kilogram",
        "N/m": "newton / meter",
        "kN/m": "kilonewton / meter",
        "lbf/ft": "force_pound / foot",
        "kPa": "kilopascal",
        "MPa": "megapascal",
        "psi": "force_pound / inch**2",
        "psf": "force_pound / foot**2",
        "kg/m3": "kilogram / meter**3",
        "lb/ft3": "pound / foot**3",
        "lb/yd3": "pound / yard**3",
        "s": "second",
        "min": "minute",
        "h": "hour",
        "each": "dimensionless",
    }
    CLOSED: ClassVar[bool] = True


class TakeoffShare(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What of the exact quantity one stretch of the run takes."""

    quantity: TakeoffQuantity
    """How much of it."""

    stretch: str
    """Name of the stretch."""


class TakeoffTotal(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What the caller's rates come to; a total with gaps says so."""

    complete: bool
    """Whether every line has a price."""

    lines_without_hours: list[int]
    """Lines without a rate of labor hours."""

    unpriced_lines: list[int]
    """Lines that have no price, of work too."""

    labor_hours: float | None = None
    """Labor hours of all lines with a rate."""

    price: float | None = None
    """Price of all priced lines, to the cent."""


class Temperature(Quantity, frozen=True):
    """A temperature with its unit."""

    unit: TemperatureUnit

    PINT: ClassVar[Mapping[str, str]] = {"degC": "degree_Celsius", "degF": "degree_Fahrenheit", "K": "kelvin"}
    CLOSED: ClassVar[bool] = True


class TemperatureDifference(Quantity, frozen=True):
    """A difference between two temperatures with its unit."""

    unit: TemperatureDifferenceUnit

    PINT: ClassVar[Mapping[str, str]] = {"delta_degC": "delta_degree_Celsius", "delta_degF": "delta_degree_Fahrenheit"}
    CLOSED: ClassVar[bool] = True


class TemperatureRange(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="range"
):
    """The lowest and highest temperature of the conduit itself, which in the sun is not that of the
    air."""

    highest: Temperature
    """Highest temperature. From -100 degF to 400 degF."""

    kind: ClassVar[Literal["range"]] = "range"

    lowest: Temperature
    """Lowest temperature. From -100 degF to 400 degF."""

    direct_sun: bool | None = None
    """Whether the run lies in direct sun and the highest temperature does not include that yet."""

    installation: Temperature | None = None
    """Temperature of the conduit when the fitting is set; needed for the piston opening. From -100
    degF to 400 degF."""

    sun_allowance: TemperatureDifference | None = None
    """What direct sun adds to the highest temperature. From 0 delta_degF to 100 delta_degF."""


class TemperatureSpread(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="difference"
):
    """The difference between the highest and lowest temperature of the conduit, sun included."""

    difference: TemperatureDifference
    """Highest less lowest temperature. From 0.1 delta_degF to 500 delta_degF."""

    kind: ClassVar[Literal["difference"]] = "difference"


class ThermalResistance(Quantity, frozen=True):
    """A thermal resistance of a length, as of a metre or a foot of a layer, with its unit."""

    unit: ThermalResistanceUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "K.m/W": "kelvin * meter / watt",
        "degC.ft/W": "delta_degree_Celsius * foot / watt",
    }
    CLOSED: ClassVar[bool] = True


class ThermalResistivity(Quantity, frozen=True):
    """A thermal resistivity with its unit."""

    unit: ThermalResistivityUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "K.m/W": "kelvin * meter / watt",
        "degC.cm/W": "delta_degree_Celsius * centimeter / watt",
    }
    CLOSED: ClassVar[bool] = True


class TierInPour(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Like ducts of one tier in wet concrete."""

    head: Length
    """Wet concrete over the bottom of its ducts."""

    outside_diameter: Length
    """Outside diameter of one of the ducts."""

    pointer: str
    """Place of their conduit in the request, the first of like ones."""

    pressure: Pressure
    """Pressure of the wet concrete at the bottom of the ducts."""

    tier: int
    """Tier, from 1 at the bottom."""

    verdict: Verdict
    """Whether the ducts, as free rings, bear the pressure of the wet concrete."""

    allowable_pressure: Pressure | None = None
    """Pressure that the ducts bear, safety included, where that is on file."""

    conduit_type: ConduitType | None = None
    """Type of the conduit, where it is given."""

    trade_size: TradeSize | None = None
    """Trade size, where it is given."""


class TierUnderLoad(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Like ducts of one tier under earth and traffic; what a wall or a load not on file leaves open
    is absent."""

    buckling_verdict: Verdict
    """Whether the ducts bear buckling_load."""

    cover: Length
    """Earth over the top of its ducts."""

    deflection_verdict: Verdict
    """Whether the limit of deflection is kept."""

    earth_pressure: Pressure
    """Pressure of earth taken for deflection, that of earth_load_method."""

    live_loads: list[LiveLoadByMethod]
    """Pressure of traffic, by every method asked that goes so shallow."""

    outside_diameter: Length
    """Outside diameter of one of the ducts."""

    pointer: str
    """Place of their conduit in the request, the first of like ones."""

    prism_pressure: Pressure
    """Pressure of the prism of earth above a duct."""

    tier: int
    """Tier, from 1 at the bottom."""

    wall_verdict: Verdict
    """Whether the wall bears its compression."""

    allowable_buckling_load: Pressure | None = None
    """What the ducts bear before they buckle, safety included."""

    buckling_load: Pressure | None = None
    """Water, earth and traffic that press from around."""

    conduit_type: ConduitType | None = None
    """Type of the conduit, where it is given."""

    deflected_bore: Length | None = None
    """Least inside diameter of a duct flattened by deflection_percent, where the bore is on
    file."""

    deflection_percent: float | None = None
    """By how much their vertical diameter shrinks."""

    governing_method: LiveLoadMethod | None = None
    """Method that gives the largest pressure of traffic; absent without traffic."""

    highest_deflection_percent: float | None = None
    """The high end of what the formula stands for."""

    least_bore: Length | None = None
    """Least inside diameter of a duct flattened by highest_deflection_percent: what a mandrel and
    the jam of cables are held against."""

    live_pressure: Pressure | None = None
    """Largest pressure of traffic of the methods asked; absent where none was judged."""

    lowest_deflection_percent: float | None = None
    """The low end of what the formula stands for."""

    pipe_stiffness: Pressure | None = None
    """Stiffness of its ducts at 5 percent deflection."""

    trade_size: TradeSize | None = None
    """Trade size, where it is given."""

    trench_pressure: Pressure | None = None
    """Pressure of earth that arches in its trench, where the width is given."""

    wall_stress: Pressure | None = None
    """Compression of the wall."""

    wall_thrust: ForcePerLength | None = None
    """Thrust in the wall."""


class TierUplift(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Like ducts of one tier."""

    duct_count: int
    """Ducts of this kind in the tier."""

    duct_uplift_per_length: ForcePerLength
    """Of one duct; negative if it sinks."""

    mass_per_length: MassPerLength
    """Of one empty duct."""

    outside_diameter: Length
    """Outside diameter of one duct."""

    tier: int
    """Tier, from 1 at the bottom."""

    uplift_per_length: ForcePerLength
    """Of these ducts together."""


class TravelOption(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What fittings of one travel that is sold would mean."""

    fitting_count: int
    """Fittings of that travel that the run needs."""

    fitting_travel: Length
    """Travel of one fitting."""


class TrenchAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of trench with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: TrenchResult
    """What was calculated."""

    request: TrenchRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class TrenchItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="trench"
):
    """A question of trench."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["trench"]] = "trench"

    request: TrenchRequest
    """The body of `POST /v1/trench`."""


class TrenchItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="trench"
):
    """An answer of trench."""

    answer: TrenchAnswer
    """The answer of `POST /v1/trench`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["trench"]] = "trench"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class TrenchRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A bank in its trench."""

    bank: DuctBank
    """The duct bank."""

    length: Length
    """Length of the trench. From 0.01 ft to 100000 ft."""

    bedding: Length | None = None
    """Bedding under the bank. From 0 in to 1200 in."""

    bucket_widths: list[Length] | None = None
    """Widths of the buckets at hand: the floor is as wide as the narrowest that digs the width
    wanted."""

    compacted_volume_factor: float | None = None
    """Compacted volume of one in the bank, in place of the soil's."""

    concrete_cover: ConcreteCover | None = None
    """Concrete outside the ducts, unless they are buried directly."""

    cover: Length | None = None
    """Earth over the envelope, or over the ducts if there is none; this or stations. From 0 in to
    1200 in."""

    fall: Fall | None = None
    """Fall of the ducts below level ground, from where cover is given, the least of it; without it
    the ducts lie as the ground does."""

    haul_capacity: Volume | None = None
    """What one truck hauls, loose. From 0.1 yd3 to 100 yd3."""

    least_width: Length | None = None
    """Least width of the bottom where ducts are buried directly and width is left out. From 1 in to
    1200 in."""

    loose_volume_factor: float | None = None
    """Loose volume of one in the bank, in place of the soil's."""

    nearest_utility: Length | None = None
    """Clear distance to the nearest other utility. From 0 in to 1200 in."""

    pavement: Pavement | None = None
    """The pavement over the trench, if there is any."""

    pour_shape: PourShape | None = None
    """Whether a formed pour fills the bounding rectangle or steps with the tiers."""

    practice: TrenchPractice | None = None
    """How the bank lies in its trench."""

    select_fill: Length | None = None
    """Select fill over the bank, before native backfill. From 0 in to 1200 in."""

    side_slope_ratio: float | None = None
    """Side of the trench, horizontal for one vertical."""

    soil: SoilKind | None = None
    """What is dug, for its volumes."""

    soil_type: ExcavationSoilType | None = None
    """Soil type of the excavation rules, by the competent person."""

    stations: list[Station] | None = None
    """Cover along the run where it varies, from its start to its end; this or cover."""

    tape_overlap_percent: float | None = None
    """Extra warning tape."""

    warning_tape_depth: Length | None = None
    """Warning tape below grade; under a pavement that is thicker it lies right under that. From 0
    in to 1200 in."""

    width: Length | None = None
    """Width of the bottom, in place of practice. From 1 in to 1200 in."""

    working_space: Length | None = None
    """Room beside the bank on each side, where width is left out and the trench is not the form.
    From 0 in to 240 in."""


class TrenchResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Size and volumes; bank, loose and compacted are named as such."""

    backfill_volume: Volume
    """Native, compacted, up to grade or pavement."""

    bedding_volume: Volume
    """Compacted, under the bank."""

    depth: Length
    """Depth to the bottom; the greatest, if it varies."""

    envelope_height: Length
    """Height of the concrete, or of the bare ducts."""

    envelope_volume: Volume
    """What the envelope, or the ducts, take."""

    envelope_width: Length
    """Width of the concrete, or of the ducts alone; its bottom in a sloped trench."""

    excavation_volume: Volume
    """Earth in the bank, below any pavement."""

    haul_load_count: int
    """Truck loads of earth hauled away, or brought; none of pavement."""

    import_volume: Volume
    """Loose, to bring; 0 if what was dug is enough."""

    least_cover_over_ducts: Length
    """The shortest way from the top of the ducts themselves to grade, where it is least."""

    least_warning_tape_depth: Length
    """Below grade, where the cover is least and may leave no room for more."""

    loose_excavation_volume: Volume
    """All that is dug, loose."""

    measured_from: str
    """What the cover is measured between."""

    select_fill_volume: Volume
    """Compacted, beside and over the bank."""

    shoring_area: Area
    """Both sides, where so deep and steep that they are to be protected; 0 where nowhere."""

    spoil_volume: Volume
    """Loose, to haul away; 0 if fill must be brought."""

    warning_tape_depth: Length
    """Below grade, where the cover is greatest."""

    warning_tape_length: Length
    """Tape over the run."""

    width: Length
    """Width of the bottom."""

    fall_height: Length | None = None
    """From the highest of the ducts to the lowest, if they fall."""

    pavement: PavementTakeoff | None = None
    """Cut, taken up and laid again, if any."""


class TrenchStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="trench"
):
    """An answer of trench."""

    answer: TrenchAnswer
    """The answer of `POST /v1/trench`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["trench"]] = "trench"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class UnitRow(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """One unit code: SI value = factor x value + offset; a grade in percent is the arc tangent of
    that."""

    dimension: str
    """What it measures, such as mass_per_length."""

    si_factor: float
    """What a value is multiplied by."""

    si_offset: float
    """What is added then."""

    si_unit: str
    """SI unit of the dimension."""

    ucum: str
    """UCUM code."""

    unit: str
    """The code, as a request and an answer write it."""


class UnitTable(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """Unit codes, with the hash of all tables."""

    rows: list[UnitRow]
    """The rows, as the source has them."""

    tables_version: str
    """Hash of all reference tables."""


class UnremediedViolation(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A violation that no remedy told removes."""

    code: str
    """Its code."""

    message: str
    """Why there is none: nothing known to try, or tried in vain."""

    trial_count: int
    """How many changes were tried against it."""

    pointer: str | None = None
    """Where it is in the request that was sent."""


class VerticalBendSection(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="kind", tag="vertical_bend"
):
    """A bend in a vertical plane; the slope rises through a sag and falls over a crest."""

    exit_grade: Grade
    """Slope where the cable leaves; positive climbs. From -90 deg to 90 deg."""

    kind: ClassVar[Literal["vertical_bend"]] = "vertical_bend"

    radius: Length
    """Radius to the center line. From 0.5 in to 120000 in."""

    conduit: Conduit | None = None
    """Conduit of this section, where it differs."""

    entry_grade: Grade | None = None
    """Slope where the cable enters; positive climbs. Left out, that with which the last straight or
    vertical bend ends. From -90 deg to 90 deg."""

    friction_coefficient: float | None = None
    """Coefficient of friction of this section, where it differs."""

    made: BendMade | None = None
    """Whether it is bought or bent on site."""


class Voltage(Quantity, frozen=True):
    """A voltage with its unit."""

    unit: VoltageUnit

    PINT: ClassVar[Mapping[str, str]] = {"V": "volt", "kV": "kilovolt"}
    CLOSED: ClassVar[bool] = True


class VoltageDropAnswer(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """The answer of voltage-drop with everything that defends it."""

    assumptions: list[Assumption]
    """What was taken for members that were left out."""

    basis: Basis
    """The versions and sources that the answer rests on."""

    cautions: list[Caution]
    """The usual cautions of the work, whatever the figures."""

    findings: list[Finding]
    """What is broken, unwise or worth a note; often none."""

    notice: str
    """What the answer is not: show it wherever its figures are shown."""

    result: VoltageDropResult
    """What was calculated."""

    request: VoltageDropRequest | None = None
    """The request with every default filled in, if asked for."""

    verdict: Verdict | None = None
    """What the answer says of its limits; absent where nothing was held against one."""

    working: list[Step] | None = None
    """How it was worked out, step by step, if asked for."""


class VoltageDropItem(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="voltage_drop"
):
    """A question of voltage_drop."""

    id: str
    """Any text of the caller's, given back with the answer."""

    operation: ClassVar[Literal["voltage_drop"]] = "voltage_drop"

    request: VoltageDropRequest
    """The body of `POST /v1/voltage-drop`."""


class VoltageDropItemAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="voltage_drop"
):
    """An answer of voltage_drop."""

    answer: VoltageDropAnswer
    """The answer of `POST /v1/voltage-drop`."""

    id: str
    """Id of the question."""

    operation: ClassVar[Literal["voltage_drop"]] = "voltage_drop"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class VoltageDropRequest(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """A circuit and its length."""

    cable: Cable
    """One conductor of the circuit, or the cable that has them all."""

    length: Length
    """From the source to the load, one way. From 0.01 ft to 100000 ft."""

    voltage: Voltage
    """At the source: between lines, or between the two wires. From 1 V to 50 kV."""

    apparent_power: ApparentPower | None = None
    """Apparent power of the load at the voltage of the source; this, current or power. From 1e-05
    kVA to 1e+06 kVA."""

    code_edition: CodeEdition | None = None
    """Edition of NFPA 70 to follow."""

    conductor_temperature: Temperature | None = None
    """Temperature of the conductors under load. From -40 degC to 250 degC."""

    conduit_material: CircuitConduit | None = None
    """Conduit the circuit lies in, as Table 9 tells them apart."""

    current: Current | None = None
    """Current of the circuit, all its sets together; this, power or apparent_power. From 0.001 A to
    20 kA."""

    duration_per_year: Duration | None = None
    """At this load, to tell what is lost in a year. From 0 h to 8784 h."""

    frequency: Frequency | None = None
    """Of the alternating current; the printed reactance is for 60 Hz and goes with it. From 10 Hz
    to 400 Hz."""

    limit_percent: float | None = None
    """Most that may be lost."""

    parallel_count: int | None = None
    """Sets in parallel."""

    power: Power | None = None
    """Power of the load at the voltage of the source; this, current or apparent_power. From 0.01 W
    to 1e+06 kW."""

    power_factor: float | None = None
    """Of the load, which lags; of direct current there is none."""

    reactance: ResistancePerLength | None = None
    """Of one conductor to neutral, in place of the table's. From 0 ohm/1000ft to 1000
    ohm/1000ft."""

    resistance: ResistancePerLength | None = None
    """Of one conductor at its temperature, in place of the table's. From 0.0001 ohm/1000ft to 1000
    ohm/1000ft."""

    system: CircuitSystem | None = None
    """Three phases between lines, or two wires."""


class VoltageDropResult(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What is lost, and what keeps within the limit."""

    current: Current
    """Of the circuit, all its sets together."""

    drop: Voltage
    """Between lines, or between the two wires: exactly, by phasors."""

    drop_percent: float
    """Of the voltage at the source."""

    limit_percent: float
    """What it is held against."""

    load_voltage: Voltage
    """What is left at the load."""

    loss: Power
    """Heat of all conductors."""

    reactance: ResistancePerLength
    """Of one conductor to neutral."""

    resistance: ResistancePerLength
    """Of one conductor."""

    table_drop: Voltage
    """As the tables have it: effective impedance times current and length."""

    table_drop_percent: float
    """Of the voltage at the source."""

    energy_loss: Energy | None = None
    """In a year, if duration_per_year is given."""

    longest_length: Length | None = None
    """Within the limit, one way; absent where the longest run that may be given keeps it."""

    smallest_size: ConductorSize | None = None
    """Within the limit, and carrying the current by the tables at unmarked terminals and with this
    insulation in a wet place. Where the power factor is the one at which the most is lost, each
    size is held to its own."""


class VoltageDropStreamAnswer(
    Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True, tag_field="operation", tag="voltage_drop"
):
    """An answer of voltage_drop."""

    answer: VoltageDropAnswer
    """The answer of `POST /v1/voltage-drop`."""

    id: str
    """Id of the question."""

    line: int
    """Number of the line, from 1, blank lines counted."""

    operation: ClassVar[Literal["voltage_drop"]] = "voltage_drop"

    status: int
    """HTTP status the question would have had by itself."""

    type: Literal["answer"]
    """Fixed text that says: answer."""


class Volume(Quantity, frozen=True):
    """A volume with its unit."""

    unit: VolumeUnit

    PINT: ClassVar[Mapping[str, str]] = {
        "L": "liter",
        "m3": "meter**3",
        "in3": "inch**3",
        "ft3": "foot**3",
        "yd3": "yard**3",
        "qt_us": "quart",
        "gal_us": "gallon",
    }
    CLOSED: ClassVar[bool] = True


class WouldComply(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True):
    """What would keep every limit of this calculation with all else as it is; absent where nothing
    would."""

    greatest_cover: Length | None = None
    """Greatest cover, in whole inches; absent where 100 ft comply."""

    least_class: ConduitType | None = None
    """Least class of direct-burial duct, of the same trade sizes."""

    least_compaction: Compaction | None = None
    """Least compaction of the embedment asked."""

    least_cover: Length | None = None
    """Least cover, in whole inches; all from it to the greatest comply."""

    least_pipe_stiffness: Pressure | None = None
    """Least stiffness; absent where wall, cover or flotation would not be kept."""


BatchItem: TypeAlias = (
    AmpacityItem
    | ConductorCountItem
    | ConduitSizeItem
    | CoverItem
    | DuctRunItem
    | DuctRunComparisonItem
    | EarthLoadItem
    | EncasementItem
    | ExpansionItem
    | FillItem
    | FlotationItem
    | JointsItem
    | PermittedUseItem
    | PullBoxItem
    | PullPlanItem
    | PullTensionItem
    | SpacersItem
    | SupportsItem
    | TrenchItem
    | VoltageDropItem
)
BATCH_ITEM_BY_OPERATION: Final[dict[str, type[BatchItem]]] = {
    "ampacity": AmpacityItem,
    "conductor_count": ConductorCountItem,
    "conduit_size": ConduitSizeItem,
    "cover": CoverItem,
    "duct_run": DuctRunItem,
    "duct_run_compare": DuctRunComparisonItem,
    "earth_load": EarthLoadItem,
    "encasement": EncasementItem,
    "expansion": ExpansionItem,
    "fill": FillItem,
    "flotation": FlotationItem,
    "joints": JointsItem,
    "permitted_use": PermittedUseItem,
    "pull_box": PullBoxItem,
    "pull_plan": PullPlanItem,
    "pull_tension": PullTensionItem,
    "spacers": SpacersItem,
    "supports": SupportsItem,
    "trench": TrenchItem,
    "voltage_drop": VoltageDropItem,
}

BoxPositions: TypeAlias = Anywhere | BetweenSections | ListedPositions
BOX_POSITIONS_BY_KIND: Final[dict[str, type[BoxPositions]]] = {
    "anywhere": Anywhere,
    "between_sections": BetweenSections,
    "listed": ListedPositions,
}

Cable: TypeAlias = BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable
CABLE_BY_KIND: Final[dict[str, type[Cable]]] = {
    "bare": BareCable,
    "compact": CompactCable,
    "listed": ListedCable,
    "measured": MeasuredCable,
    "multiconductor": MulticonductorCable,
}

Conduit: TypeAlias = ListedConduit | MeasuredConduit
CONDUIT_BY_KIND: Final[dict[str, type[Conduit]]] = {
    "listed": ListedConduit,
    "measured": MeasuredConduit,
}

ItemAnswer: TypeAlias = (
    AmpacityItemAnswer
    | ConductorCountItemAnswer
    | ConduitSizeItemAnswer
    | CoverItemAnswer
    | DuctRunItemAnswer
    | DuctRunComparisonItemAnswer
    | EarthLoadItemAnswer
    | EncasementItemAnswer
    | ExpansionItemAnswer
    | FillItemAnswer
    | FlotationItemAnswer
    | JointsItemAnswer
    | PermittedUseItemAnswer
    | PullBoxItemAnswer
    | PullPlanItemAnswer
    | PullTensionItemAnswer
    | SpacersItemAnswer
    | SupportsItemAnswer
    | TrenchItemAnswer
    | VoltageDropItemAnswer
)
ITEM_ANSWER_BY_OPERATION: Final[dict[str, type[ItemAnswer]]] = {
    "ampacity": AmpacityItemAnswer,
    "conductor_count": ConductorCountItemAnswer,
    "conduit_size": ConduitSizeItemAnswer,
    "cover": CoverItemAnswer,
    "duct_run": DuctRunItemAnswer,
    "duct_run_compare": DuctRunComparisonItemAnswer,
    "earth_load": EarthLoadItemAnswer,
    "encasement": EncasementItemAnswer,
    "expansion": ExpansionItemAnswer,
    "fill": FillItemAnswer,
    "flotation": FlotationItemAnswer,
    "joints": JointsItemAnswer,
    "permitted_use": PermittedUseItemAnswer,
    "pull_box": PullBoxItemAnswer,
    "pull_plan": PullPlanItemAnswer,
    "pull_tension": PullTensionItemAnswer,
    "spacers": SpacersItemAnswer,
    "supports": SupportsItemAnswer,
    "trench": TrenchItemAnswer,
    "voltage_drop": VoltageDropItemAnswer,
}

RouteSection: TypeAlias = HorizontalBendSection | StraightSection | VerticalBendSection
ROUTE_SECTION_BY_KIND: Final[dict[str, type[RouteSection]]] = {
    "horizontal_bend": HorizontalBendSection,
    "straight": StraightSection,
    "vertical_bend": VerticalBendSection,
}

RunSection: TypeAlias = RunHorizontalBend | RunStraight | RunVerticalBend
RUN_SECTION_BY_KIND: Final[dict[str, type[RunSection]]] = {
    "horizontal_bend": RunHorizontalBend,
    "straight": RunStraight,
    "vertical_bend": RunVerticalBend,
}

Setting: TypeAlias = AboveGroundSetting | BoredSetting | DirectBuriedSetting | EncasedSetting | ExistingSetting
SETTING_BY_KIND: Final[dict[str, type[Setting]]] = {
    "above_ground": AboveGroundSetting,
    "bored": BoredSetting,
    "direct_buried": DirectBuriedSetting,
    "encased": EncasedSetting,
    "existing": ExistingSetting,
}

SpacerInterval: TypeAlias = DistanceInterval | PerStickInterval | PresetInterval
SPACER_INTERVAL_BY_KIND: Final[dict[str, type[SpacerInterval]]] = {
    "distance": DistanceInterval,
    "per_stick": PerStickInterval,
    "preset": PresetInterval,
}

StreamAnswer: TypeAlias = (
    AmpacityStreamAnswer
    | ConductorCountStreamAnswer
    | ConduitSizeStreamAnswer
    | CoverStreamAnswer
    | DuctRunStreamAnswer
    | DuctRunComparisonStreamAnswer
    | EarthLoadStreamAnswer
    | EncasementStreamAnswer
    | ExpansionStreamAnswer
    | FillStreamAnswer
    | FlotationStreamAnswer
    | JointsStreamAnswer
    | PermittedUseStreamAnswer
    | PullBoxStreamAnswer
    | PullPlanStreamAnswer
    | PullTensionStreamAnswer
    | SpacersStreamAnswer
    | SupportsStreamAnswer
    | TrenchStreamAnswer
    | VoltageDropStreamAnswer
)
STREAM_ANSWER_BY_OPERATION: Final[dict[str, type[StreamAnswer]]] = {
    "ampacity": AmpacityStreamAnswer,
    "conductor_count": ConductorCountStreamAnswer,
    "conduit_size": ConduitSizeStreamAnswer,
    "cover": CoverStreamAnswer,
    "duct_run": DuctRunStreamAnswer,
    "duct_run_compare": DuctRunComparisonStreamAnswer,
    "earth_load": EarthLoadStreamAnswer,
    "encasement": EncasementStreamAnswer,
    "expansion": ExpansionStreamAnswer,
    "fill": FillStreamAnswer,
    "flotation": FlotationStreamAnswer,
    "joints": JointsStreamAnswer,
    "permitted_use": PermittedUseStreamAnswer,
    "pull_box": PullBoxStreamAnswer,
    "pull_plan": PullPlanStreamAnswer,
    "pull_tension": PullTensionStreamAnswer,
    "spacers": SpacersStreamAnswer,
    "supports": SupportsStreamAnswer,
    "trench": TrenchStreamAnswer,
    "voltage_drop": VoltageDropStreamAnswer,
}

Temperatures: TypeAlias = TemperatureSpread | TemperatureRange
TEMPERATURES_BY_KIND: Final[dict[str, type[Temperatures]]] = {
    "difference": TemperatureSpread,
    "range": TemperatureRange,
}

if TYPE_CHECKING:
    BatchItemAnswer: TypeAlias = ItemAnswer | ItemProblem
else:
    BatchItemAnswer = Raw

if TYPE_CHECKING:
    StreamAnswerLine: TypeAlias = StreamAnswer | StreamBasis | StreamProblem | StreamStopped | StreamSummary
else:
    StreamAnswerLine = Raw
