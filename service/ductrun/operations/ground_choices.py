"""The closed sets of what goes into the ground, written as the trade writes them."""

from __future__ import annotations

from ductrun.units import Code


class SeparationMeasure(Code):
    """How separations are measured."""

    CLEAR = "clear"
    CENTER_TO_CENTER = "center_to_center"


class BankAlignment(Code):
    """Alignments of tiers of different width."""

    CENTERED = "centered"
    LEFT = "left"
    RIGHT = "right"


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


class PourShape(Code):
    """Whether concrete fills the bounding rectangle or steps with the tiers."""

    BOUNDING_RECTANGLE = "bounding_rectangle"
    STEPPED = "stepped"


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


class DuctContents(Code):
    """Contents of ducts."""

    EMPTY = "empty"
    WATER = "water"
    CABLE = "cable"


class TrenchPractice(Code):
    """Practices of laying a bank in its trench."""

    FORMED = "formed"
    TRENCH_FORMED = "trench_formed"
    DIRECT_BURIED = "direct_buried"


class SoilKind(Code):
    """Soils with factors from bank to loose and compacted."""

    SAND = "sand"
    LOAM = "loam"
    CLAY = "clay"
    BLASTED_ROCK = "blasted_rock"
    DENSE_CLAY = "dense_clay"
    SAND_AND_GRAVEL = "sand_and_gravel"


class ExcavationSoilType(Code):
    """Soil types of 29 CFR 1926 Subpart P."""

    STABLE_ROCK = "stable_rock"
    TYPE_A = "type_a"
    TYPE_B = "type_b"
    TYPE_C = "type_c"
    UNCLASSIFIED = "unclassified"


class WiringMethod(Code):
    """What is buried, for its cover."""

    DIRECT_BURIED_CABLE = "direct_buried_cable"
    RMC_IMC = "rmc_imc"
    NONMETALLIC_RACEWAY = "nonmetallic_raceway"
    GFCI_RESIDENTIAL = "gfci_residential"
    LOW_VOLTAGE_CONTROL = "low_voltage_control"


class BurialLocation(Code):
    """Where it is buried."""

    NOT_OTHERWISE_SPECIFIED = "not_otherwise_specified"
    TRENCH_BELOW_2_IN_CONCRETE = "trench_below_2_in_concrete"
    UNDER_BUILDING = "under_building"
    UNDER_4_IN_EXTERIOR_SLAB_NO_VEHICLES = "under_4_in_exterior_slab_no_vehicles"
    STREET_ROAD_DRIVEWAY_PARKING_LOT = "street_road_driveway_parking_lot"
    DWELLING_DRIVEWAY = "dwelling_driveway"
    AIRPORT_RUNWAY = "airport_runway"


class VoltageClass(Code):
    """Classes of voltage."""

    UP_TO_1000_V = "up_to_1000_v"
    OVER_1_KV_TO_22_KV = "over_1_kv_to_22_kv"
    OVER_22_KV_TO_40_KV = "over_22_kv_to_40_kv"
    OVER_40_KV = "over_40_kv"


class ConduitUse(Code):
    """Places and ways conduit is used."""

    ABOVE_GROUND = "above_ground"
    SUNLIGHT = "sunlight"
    PHYSICAL_DAMAGE = "physical_damage"
    DIRECT_BURIAL = "direct_burial"
    CONCRETE_ENCASEMENT = "concrete_encasement"
    DIRECTIONAL_BORE = "directional_bore"
    UNDER_BUILDING = "under_building"
    HAZARDOUS_LOCATION = "hazardous_location"
    EMERGING_FROM_GRADE = "emerging_from_grade"


class UseVerdict(Code):
    """Whether a use is permitted: yes, no, or under a condition."""

    YES = "yes"
    NO = "no"
    CAUTION = "caution"


class DuctEnds(Code):
    """Whether sticks have a bell or two plain ends."""

    BELLED = "belled"
    PLAIN = "plain"


class TopClosure(Code):
    """What closes a spacer stack above the top ducts."""

    NONE = "none"
    CAP = "cap"
    STRAP = "strap"
    INTERMEDIATE = "intermediate"
    BASE = "base"
