"""Closed sets of trench and cover."""

from __future__ import annotations

from ductrun.units import Code


class TrenchPractice(Code):
    """Practices of laying a bank in its trench."""

    FORMED = "formed"
    TRENCH_FORMED = "trench_formed"
    DIRECT_BURIED = "direct_buried"


class DrainsTo(Code):
    """Where ducts that fall drain to."""

    END = "end"
    BOTH_ENDS = "both_ends"


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


class PavementKind(Code):
    """What a pavement is made of."""

    ASPHALT = "asphalt"
    CONCRETE = "concrete"
    PAVERS = "pavers"


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


class EarthLoadMethod(Code):
    """How earth loads a duct: by the prism above it, or arching on the walls of its trench."""

    PRISM = "prism"
    TRENCH = "trench"


class Traffic(Code):
    """What passes over a duct."""

    NONE = "none"
    H_20 = "h_20"


class LiveLoadMethod(Code):
    """How the load of a wheel is found at a depth; the governing one is the largest of those that go so shallow."""

    GOVERNING = "governing"
    HANDBOOK_TABLE = "handbook_table"
    AASHTO_SPREAD = "aashto_spread"
    BOUSSINESQ = "boussinesq"


class Embedment(Code):
    """Soils around a duct, by how they support it."""

    FINE_GRAINED_HIGH_PLASTICITY = "fine_grained_high_plasticity"
    FINE_GRAINED = "fine_grained"
    MIXED_GRAINED = "mixed_grained"
    COARSE_GRAINED = "coarse_grained"
    CRUSHED_ROCK = "crushed_rock"


class Compaction(Code):
    """How an embedment is compacted: under 85, 85 to 95, over 95 percent of the standard Proctor density."""

    DUMPED = "dumped"
    SLIGHT = "slight"
    MODERATE = "moderate"
    HIGH = "high"


class ArchingSoil(Code):
    """Fills of a trench, by their friction on its walls."""

    GRANULAR = "granular"
    SAND_AND_GRAVEL = "sand_and_gravel"
    SATURATED_TOPSOIL = "saturated_topsoil"
    CLAY = "clay"
    SATURATED_CLAY = "saturated_clay"


class PlasticMaterial(Code):
    """What a duct by its diameters is made of."""

    PVC = "pvc"
    HDPE = "hdpe"
