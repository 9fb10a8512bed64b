"""Contains all the data models used in inputs/outputs"""

from .above_ground_setting import AboveGroundSetting
from .alive import Alive
from .ampacity_answer import AmpacityAnswer
from .ampacity_item import AmpacityItem
from .ampacity_item_answer import AmpacityItemAnswer
from .ampacity_method import AmpacityMethod
from .ampacity_request import AmpacityRequest
from .ampacity_result import AmpacityResult
from .ampacity_sensitivity import AmpacitySensitivity
from .ampacity_stream_answer import AmpacityStreamAnswer
from .ampacity_study import AmpacityStudy
from .angle import Angle
from .angle_unit import AngleUnit
from .any_quantity import AnyQuantity
from .anywhere import Anywhere
from .apparent_power import ApparentPower
from .apparent_power_unit import ApparentPowerUnit
from .arching_soil import ArchingSoil
from .area import Area
from .area_unit import AreaUnit
from .assumption import Assumption
from .assumption_policy import AssumptionPolicy
from .attachment import Attachment
from .bank_alignment import BankAlignment
from .bank_ground import BankGround
from .bank_ground_takeoff import BankGroundTakeoff
from .bank_setting import BankSetting
from .bar_size import BarSize
from .bare_cable import BareCable
from .bare_stranding import BareStranding
from .basis import Basis
from .batch_answer import BatchAnswer
from .batch_request import BatchRequest
from .bend_made import BendMade
from .between_sections import BetweenSections
from .bored_setting import BoredSetting
from .box_candidate import BoxCandidate
from .box_circuit import BoxCircuit
from .box_entry import BoxEntry
from .box_rule import BoxRule
from .box_size import BoxSize
from .box_wall import BoxWall
from .braking_case import BrakingCase
from .burial_location import BurialLocation
from .cable_arrangement import CableArrangement
from .cable_conductor import CableConductor
from .cable_insulation import CableInsulation
from .cable_jacket import CableJacket
from .cable_jacket_layer import CableJacketLayer
from .cable_layers import CableLayers
from .cable_line import CableLine
from .cable_order import CableOrder
from .cable_sheath import CableSheath
from .cable_shield import CableShield
from .cable_shielding import CableShielding
from .cable_type import CableType
from .caution import Caution
from .circuit import Circuit
from .circuit_ampacity import CircuitAmpacity
from .circuit_conduit import CircuitConduit
from .circuit_fill import CircuitFill
from .circuit_pulls import CircuitPulls
from .circuit_system import CircuitSystem
from .code_edition import CodeEdition
from .compact_cable import CompactCable
from .compaction import Compaction
from .concrete_cover import ConcreteCover
from .conductor_area import ConductorArea
from .conductor_area_unit import ConductorAreaUnit
from .conductor_change import ConductorChange
from .conductor_count_answer import ConductorCountAnswer
from .conductor_count_item import ConductorCountItem
from .conductor_count_item_answer import ConductorCountItemAnswer
from .conductor_count_request import ConductorCountRequest
from .conductor_count_result import ConductorCountResult
from .conductor_count_stream_answer import ConductorCountStreamAnswer
from .conductor_counting import ConductorCounting
from .conductor_marking import ConductorMarking
from .conductor_material import ConductorMaterial
from .conductor_row import ConductorRow
from .conductor_size import ConductorSize
from .conductor_table import ConductorTable
from .conductor_temper import ConductorTemper
from .conduit_material import ConduitMaterial
from .conduit_row import ConduitRow
from .conduit_size_answer import ConduitSizeAnswer
from .conduit_size_item import ConduitSizeItem
from .conduit_size_item_answer import ConduitSizeItemAnswer
from .conduit_size_request import ConduitSizeRequest
from .conduit_size_result import ConduitSizeResult
from .conduit_size_stream_answer import ConduitSizeStreamAnswer
from .conduit_table import ConduitTable
from .conduit_type import ConduitType
from .conduit_use import ConduitUse
from .coupling import Coupling
from .cover_answer import CoverAnswer
from .cover_item import CoverItem
from .cover_item_answer import CoverItemAnswer
from .cover_request import CoverRequest
from .cover_result import CoverResult
from .cover_stream_answer import CoverStreamAnswer
from .covering_material import CoveringMaterial
from .current import Current
from .current_unit import CurrentUnit
from .density import Density
from .density_unit import DensityUnit
from .digging import Digging
from .direct_buried_setting import DirectBuriedSetting
from .distance_interval import DistanceInterval
from .drains_to import DrainsTo
from .duct_bank import DuctBank
from .duct_contents import DuctContents
from .duct_elbow import DuctElbow
from .duct_ends import DuctEnds
from .duct_heat import DuctHeat
from .duct_material import DuctMaterial
from .duct_run_answer import DuctRunAnswer
from .duct_run_item import DuctRunItem
from .duct_run_item_answer import DuctRunItemAnswer
from .duct_run_request import DuctRunRequest
from .duct_run_result import DuctRunResult
from .duct_run_stream_answer import DuctRunStreamAnswer
from .ducts_beside import DuctsBeside
from .duration import Duration
from .duration_unit import DurationUnit
from .earth_load_answer import EarthLoadAnswer
from .earth_load_item import EarthLoadItem
from .earth_load_item_answer import EarthLoadItemAnswer
from .earth_load_method import EarthLoadMethod
from .earth_load_request import EarthLoadRequest
from .earth_load_result import EarthLoadResult
from .earth_load_stream_answer import EarthLoadStreamAnswer
from .earth_loading import EarthLoading
from .elevation_point import ElevationPoint
from .embedment import Embedment
from .encased_setting import EncasedSetting
from .encasement_answer import EncasementAnswer
from .encasement_item import EncasementItem
from .encasement_item_answer import EncasementItemAnswer
from .encasement_request import EncasementRequest
from .encasement_result import EncasementResult
from .encasement_stream_answer import EncasementStreamAnswer
from .encasing import Encasing
from .energy import Energy
from .energy_unit import EnergyUnit
from .excavation_soil_type import ExcavationSoilType
from .existing_setting import ExistingSetting
from .expansion_answer import ExpansionAnswer
from .expansion_coefficient import ExpansionCoefficient
from .expansion_coefficient_unit import ExpansionCoefficientUnit
from .expansion_item import ExpansionItem
from .expansion_item_answer import ExpansionItemAnswer
from .expansion_request import ExpansionRequest
from .expansion_result import ExpansionResult
from .expansion_stream_answer import ExpansionStreamAnswer
from .fall import Fall
from .fill_answer import FillAnswer
from .fill_item import FillItem
from .fill_item_answer import FillItemAnswer
from .fill_limit_rule import FillLimitRule
from .fill_request import FillRequest
from .fill_result import FillResult
from .fill_stream_answer import FillStreamAnswer
from .finding import Finding
from .fittings import Fittings
from .floating import Floating
from .flotation_answer import FlotationAnswer
from .flotation_item import FlotationItem
from .flotation_item_answer import FlotationItemAnswer
from .flotation_medium import FlotationMedium
from .flotation_request import FlotationRequest
from .flotation_result import FlotationResult
from .flotation_stream_answer import FlotationStreamAnswer
from .force import Force
from .force_per_length import ForcePerLength
from .force_per_length_unit import ForcePerLengthUnit
from .force_unit import ForceUnit
from .frequency import Frequency
from .frequency_unit import FrequencyUnit
from .friction_case import FrictionCase
from .friction_range import FrictionRange
from .friction_row import FrictionRow
from .friction_table import FrictionTable
from .grade import Grade
from .grade_unit import GradeUnit
from .grounding_size import GroundingSize
from .horizontal_bend_section import HorizontalBendSection
from .in_service import InService
from .insulation import Insulation
from .item_problem import ItemProblem
from .joining_method import JoiningMethod
from .joints_answer import JointsAnswer
from .joints_item import JointsItem
from .joints_item_answer import JointsItemAnswer
from .joints_request import JointsRequest
from .joints_result import JointsResult
from .joints_stream_answer import JointsStreamAnswer
from .judged_use import JudgedUse
from .largest_complying import LargestComplying
from .least_dimension import LeastDimension
from .length import Length
from .length_unit import LengthUnit
from .listed_cable import ListedCable
from .listed_conduit import ListedConduit
from .listed_positions import ListedPositions
from .live_load_by_method import LiveLoadByMethod
from .live_load_method import LiveLoadMethod
from .loaded_circuit import LoadedCircuit
from .mass import Mass
from .mass_per_length import MassPerLength
from .mass_per_length_unit import MassPerLengthUnit
from .mass_unit import MassUnit
from .material_row import MaterialRow
from .material_table import MaterialTable
from .measured_cable import MeasuredCable
from .measured_conduit import MeasuredConduit
from .multiconductor_cable import MulticonductorCable
from .operation_name import OperationName
from .ordered_cable import OrderedCable
from .other_method import OtherMethod
from .page import Page
from .pavement import Pavement
from .pavement_kind import PavementKind
from .pavement_takeoff import PavementTakeoff
from .per_stick_interval import PerStickInterval
from .permitted_use_answer import PermittedUseAnswer
from .permitted_use_item import PermittedUseItem
from .permitted_use_item_answer import PermittedUseItemAnswer
from .permitted_use_request import PermittedUseRequest
from .permitted_use_result import PermittedUseResult
from .permitted_use_stream_answer import PermittedUseStreamAnswer
from .piece_system import PieceSystem
from .piston_convention import PistonConvention
from .piston_opening import PistonOpening
from .place_kind import PlaceKind
from .place_rating import PlaceRating
from .placed_duct import PlacedDuct
from .planned_pull import PlannedPull
from .plastic_material import PlasticMaterial
from .pour_practice import PourPractice
from .pour_shape import PourShape
from .power import Power
from .power_per_length import PowerPerLength
from .power_per_length_unit import PowerPerLengthUnit
from .power_unit import PowerUnit
from .preset_interval import PresetInterval
from .pressure import Pressure
from .pressure_unit import PressureUnit
from .problem import Problem
from .problem_error import ProblemError
from .profile import Profile
from .profile_point import ProfilePoint
from .profile_reference import ProfileReference
from .pull_box_answer import PullBoxAnswer
from .pull_box_item import PullBoxItem
from .pull_box_item_answer import PullBoxItemAnswer
from .pull_box_request import PullBoxRequest
from .pull_box_result import PullBoxResult
from .pull_box_stream_answer import PullBoxStreamAnswer
from .pull_direction import PullDirection
from .pull_kind import PullKind
from .pull_plan_answer import PullPlanAnswer
from .pull_plan_item import PullPlanItem
from .pull_plan_item_answer import PullPlanItemAnswer
from .pull_plan_request import PullPlanRequest
from .pull_plan_result import PullPlanResult
from .pull_plan_stream_answer import PullPlanStreamAnswer
from .pull_practice import PullPractice
from .pull_tension_answer import PullTensionAnswer
from .pull_tension_item import PullTensionItem
from .pull_tension_item_answer import PullTensionItemAnswer
from .pull_tension_request import PullTensionRequest
from .pull_tension_result import PullTensionResult
from .pull_tension_stream_answer import PullTensionStreamAnswer
from .pull_through import PullThrough
from .racked_cable import RackedCable
from .racking import Racking
from .rate import Rate
from .rating_practice import RatingPractice
from .ready import Ready
from .refused_assumption import RefusedAssumption
from .reinforcing import Reinforcing
from .reinforcing_takeoff import ReinforcingTakeoff
from .request_back import RequestBack
from .resistance_per_length import ResistancePerLength
from .resistance_per_length_unit import ResistancePerLengthUnit
from .reversed_pull import ReversedPull
from .run_circuit import RunCircuit
from .run_duct import RunDuct
from .run_end import RunEnd
from .run_horizontal_bend import RunHorizontalBend
from .run_joining import RunJoining
from .run_load import RunLoad
from .run_movement import RunMovement
from .run_moving import RunMoving
from .run_place import RunPlace
from .run_setting import RunSetting
from .run_stop import RunStop
from .run_straight import RunStraight
from .run_stretch import RunStretch
from .run_vertical_bend import RunVerticalBend
from .section_tension import SectionTension
from .separation_measure import SeparationMeasure
from .service import Service
from .severity import Severity
from .shield_grounding import ShieldGrounding
from .site import Site
from .size_candidate import SizeCandidate
from .size_change import SizeChange
from .small_conductor_volume import SmallConductorVolume
from .soil_kind import SoilKind
from .source_row import SourceRow
from .source_table import SourceTable
from .spacer_preset import SpacerPreset
from .spacers_answer import SpacersAnswer
from .spacers_item import SpacersItem
from .spacers_item_answer import SpacersItemAnswer
from .spacers_of_size import SpacersOfSize
from .spacers_request import SpacersRequest
from .spacers_result import SpacersResult
from .spacers_stream_answer import SpacersStreamAnswer
from .spacing import Spacing
from .standard_box_found import StandardBoxFound
from .standard_box_kind import StandardBoxKind
from .standing import Standing
from .station import Station
from .step import Step
from .straight_lengths import StraightLengths
from .straight_section import StraightSection
from .stream_basis import StreamBasis
from .stream_problem import StreamProblem
from .stream_summary import StreamSummary
from .stretch import Stretch
from .stretch_joints import StretchJoints
from .stretch_riser import StretchRiser
from .stretch_use import StretchUse
from .structure import Structure
from .structure_joint import StructureJoint
from .support_kind import SupportKind
from .supported_conduit import SupportedConduit
from .supported_conduit_type import SupportedConduitType
from .supports_answer import SupportsAnswer
from .supports_item import SupportsItem
from .supports_item_answer import SupportsItemAnswer
from .supports_request import SupportsRequest
from .supports_result import SupportsResult
from .supports_stream_answer import SupportsStreamAnswer
from .takeoff import Takeoff
from .takeoff_group import TakeoffGroup
from .takeoff_item import TakeoffItem
from .takeoff_line import TakeoffLine
from .takeoff_quantity import TakeoffQuantity
from .takeoff_share import TakeoffShare
from .takeoff_total import TakeoffTotal
from .takeoff_unit import TakeoffUnit
from .temperature import Temperature
from .temperature_difference import TemperatureDifference
from .temperature_difference_unit import TemperatureDifferenceUnit
from .temperature_range import TemperatureRange
from .temperature_spread import TemperatureSpread
from .temperature_unit import TemperatureUnit
from .terminal_rating import TerminalRating
from .thermal_resistance import ThermalResistance
from .thermal_resistance_unit import ThermalResistanceUnit
from .thermal_resistivity import ThermalResistivity
from .thermal_resistivity_unit import ThermalResistivityUnit
from .tier_in_pour import TierInPour
from .tier_under_load import TierUnderLoad
from .tier_uplift import TierUplift
from .top_closure import TopClosure
from .trade_size import TradeSize
from .traffic import Traffic
from .travel_option import TravelOption
from .trench_answer import TrenchAnswer
from .trench_item import TrenchItem
from .trench_item_answer import TrenchItemAnswer
from .trench_practice import TrenchPractice
from .trench_request import TrenchRequest
from .trench_result import TrenchResult
from .trench_stream_answer import TrenchStreamAnswer
from .turn import Turn
from .unit_row import UnitRow
from .unit_system import UnitSystem
from .unit_table import UnitTable
from .verdict import Verdict
from .vertical_bend_section import VerticalBendSection
from .voltage import Voltage
from .voltage_class import VoltageClass
from .voltage_drop_answer import VoltageDropAnswer
from .voltage_drop_item import VoltageDropItem
from .voltage_drop_item_answer import VoltageDropItemAnswer
from .voltage_drop_request import VoltageDropRequest
from .voltage_drop_result import VoltageDropResult
from .voltage_drop_stream_answer import VoltageDropStreamAnswer
from .voltage_unit import VoltageUnit
from .volume import Volume
from .volume_measure import VolumeMeasure
from .volume_unit import VolumeUnit
from .wall_material import WallMaterial
from .weight_correction_use import WeightCorrectionUse
from .wiring_method import WiringMethod
from .would_comply import WouldComply

__all__ = (
    "AboveGroundSetting",
    "Alive",
    "AmpacityAnswer",
    "AmpacityItem",
    "AmpacityItemAnswer",
    "AmpacityMethod",
    "AmpacityRequest",
    "AmpacityResult",
    "AmpacitySensitivity",
    "AmpacityStreamAnswer",
    "AmpacityStudy",
    "Angle",
    "AngleUnit",
    "AnyQuantity",
    "Anywhere",
    "ApparentPower",
    "ApparentPowerUnit",
    "ArchingSoil",
    "Area",
    "AreaUnit",
    "Assumption",
    "AssumptionPolicy",
    "Attachment",
    "BankAlignment",
    "BankGround",
    "BankGroundTakeoff",
    "BankSetting",
    "BareCable",
    "BareStranding",
    "BarSize",
    "Basis",
    "BatchAnswer",
    "BatchRequest",
    "BendMade",
    "BetweenSections",
    "BoredSetting",
    "BoxCandidate",
    "BoxCircuit",
    "BoxEntry",
    "BoxRule",
    "BoxSize",
    "BoxWall",
    "BrakingCase",
    "BurialLocation",
    "CableArrangement",
    "CableConductor",
    "CableInsulation",
    "CableJacket",
    "CableJacketLayer",
    "CableLayers",
    "CableLine",
    "CableOrder",
    "CableSheath",
    "CableShield",
    "CableShielding",
    "CableType",
    "Caution",
    "Circuit",
    "CircuitAmpacity",
    "CircuitConduit",
    "CircuitFill",
    "CircuitPulls",
    "CircuitSystem",
    "CodeEdition",
    "CompactCable",
    "Compaction",
    "ConcreteCover",
    "ConductorArea",
    "ConductorAreaUnit",
    "ConductorChange",
    "ConductorCountAnswer",
    "ConductorCounting",
    "ConductorCountItem",
    "ConductorCountItemAnswer",
    "ConductorCountRequest",
    "ConductorCountResult",
    "ConductorCountStreamAnswer",
    "ConductorMarking",
    "ConductorMaterial",
    "ConductorRow",
    "ConductorSize",
    "ConductorTable",
    "ConductorTemper",
    "ConduitMaterial",
    "ConduitRow",
    "ConduitSizeAnswer",
    "ConduitSizeItem",
    "ConduitSizeItemAnswer",
    "ConduitSizeRequest",
    "ConduitSizeResult",
    "ConduitSizeStreamAnswer",
    "ConduitTable",
    "ConduitType",
    "ConduitUse",
    "Coupling",
    "CoverAnswer",
    "CoveringMaterial",
    "CoverItem",
    "CoverItemAnswer",
    "CoverRequest",
    "CoverResult",
    "CoverStreamAnswer",
    "Current",
    "CurrentUnit",
    "Density",
    "DensityUnit",
    "Digging",
    "DirectBuriedSetting",
    "DistanceInterval",
    "DrainsTo",
    "DuctBank",
    "DuctContents",
    "DuctElbow",
    "DuctEnds",
    "DuctHeat",
    "DuctMaterial",
    "DuctRunAnswer",
    "DuctRunItem",
    "DuctRunItemAnswer",
    "DuctRunRequest",
    "DuctRunResult",
    "DuctRunStreamAnswer",
    "DuctsBeside",
    "Duration",
    "DurationUnit",
    "EarthLoadAnswer",
    "EarthLoading",
    "EarthLoadItem",
    "EarthLoadItemAnswer",
    "EarthLoadMethod",
    "EarthLoadRequest",
    "EarthLoadResult",
    "EarthLoadStreamAnswer",
    "ElevationPoint",
    "Embedment",
    "EncasedSetting",
    "EncasementAnswer",
    "EncasementItem",
    "EncasementItemAnswer",
    "EncasementRequest",
    "EncasementResult",
    "EncasementStreamAnswer",
    "Encasing",
    "Energy",
    "EnergyUnit",
    "ExcavationSoilType",
    "ExistingSetting",
    "ExpansionAnswer",
    "ExpansionCoefficient",
    "ExpansionCoefficientUnit",
    "ExpansionItem",
    "ExpansionItemAnswer",
    "ExpansionRequest",
    "ExpansionResult",
    "ExpansionStreamAnswer",
    "Fall",
    "FillAnswer",
    "FillItem",
    "FillItemAnswer",
    "FillLimitRule",
    "FillRequest",
    "FillResult",
    "FillStreamAnswer",
    "Finding",
    "Fittings",
    "Floating",
    "FlotationAnswer",
    "FlotationItem",
    "FlotationItemAnswer",
    "FlotationMedium",
    "FlotationRequest",
    "FlotationResult",
    "FlotationStreamAnswer",
    "Force",
    "ForcePerLength",
    "ForcePerLengthUnit",
    "ForceUnit",
    "Frequency",
    "FrequencyUnit",
    "FrictionCase",
    "FrictionRange",
    "FrictionRow",
    "FrictionTable",
    "Grade",
    "GradeUnit",
    "GroundingSize",
    "HorizontalBendSection",
    "InService",
    "Insulation",
    "ItemProblem",
    "JoiningMethod",
    "JointsAnswer",
    "JointsItem",
    "JointsItemAnswer",
    "JointsRequest",
    "JointsResult",
    "JointsStreamAnswer",
    "JudgedUse",
    "LargestComplying",
    "LeastDimension",
    "Length",
    "LengthUnit",
    "ListedCable",
    "ListedConduit",
    "ListedPositions",
    "LiveLoadByMethod",
    "LiveLoadMethod",
    "LoadedCircuit",
    "Mass",
    "MassPerLength",
    "MassPerLengthUnit",
    "MassUnit",
    "MaterialRow",
    "MaterialTable",
    "MeasuredCable",
    "MeasuredConduit",
    "MulticonductorCable",
    "OperationName",
    "OrderedCable",
    "OtherMethod",
    "Page",
    "Pavement",
    "PavementKind",
    "PavementTakeoff",
    "PermittedUseAnswer",
    "PermittedUseItem",
    "PermittedUseItemAnswer",
    "PermittedUseRequest",
    "PermittedUseResult",
    "PermittedUseStreamAnswer",
    "PerStickInterval",
    "PieceSystem",
    "PistonConvention",
    "PistonOpening",
    "PlacedDuct",
    "PlaceKind",
    "PlaceRating",
    "PlannedPull",
    "PlasticMaterial",
    "PourPractice",
    "PourShape",
    "Power",
    "PowerPerLength",
    "PowerPerLengthUnit",
    "PowerUnit",
    "PresetInterval",
    "Pressure",
    "PressureUnit",
    "Problem",
    "ProblemError",
    "Profile",
    "ProfilePoint",
    "ProfileReference",
    "PullBoxAnswer",
    "PullBoxItem",
    "PullBoxItemAnswer",
    "PullBoxRequest",
    "PullBoxResult",
    "PullBoxStreamAnswer",
    "PullDirection",
    "PullKind",
    "PullPlanAnswer",
    "PullPlanItem",
    "PullPlanItemAnswer",
    "PullPlanRequest",
    "PullPlanResult",
    "PullPlanStreamAnswer",
    "PullPractice",
    "PullTensionAnswer",
    "PullTensionItem",
    "PullTensionItemAnswer",
    "PullTensionRequest",
    "PullTensionResult",
    "PullTensionStreamAnswer",
    "PullThrough",
    "RackedCable",
    "Racking",
    "Rate",
    "RatingPractice",
    "Ready",
    "RefusedAssumption",
    "Reinforcing",
    "ReinforcingTakeoff",
    "RequestBack",
    "ResistancePerLength",
    "ResistancePerLengthUnit",
    "ReversedPull",
    "RunCircuit",
    "RunDuct",
    "RunEnd",
    "RunHorizontalBend",
    "RunJoining",
    "RunLoad",
    "RunMovement",
    "RunMoving",
    "RunPlace",
    "RunSetting",
    "RunStop",
    "RunStraight",
    "RunStretch",
    "RunVerticalBend",
    "SectionTension",
    "SeparationMeasure",
    "Service",
    "Severity",
    "ShieldGrounding",
    "Site",
    "SizeCandidate",
    "SizeChange",
    "SmallConductorVolume",
    "SoilKind",
    "SourceRow",
    "SourceTable",
    "SpacerPreset",
    "SpacersAnswer",
    "SpacersItem",
    "SpacersItemAnswer",
    "SpacersOfSize",
    "SpacersRequest",
    "SpacersResult",
    "SpacersStreamAnswer",
    "Spacing",
    "StandardBoxFound",
    "StandardBoxKind",
    "Standing",
    "Station",
    "Step",
    "StraightLengths",
    "StraightSection",
    "StreamBasis",
    "StreamProblem",
    "StreamSummary",
    "Stretch",
    "StretchJoints",
    "StretchRiser",
    "StretchUse",
    "Structure",
    "StructureJoint",
    "SupportedConduit",
    "SupportedConduitType",
    "SupportKind",
    "SupportsAnswer",
    "SupportsItem",
    "SupportsItemAnswer",
    "SupportsRequest",
    "SupportsResult",
    "SupportsStreamAnswer",
    "Takeoff",
    "TakeoffGroup",
    "TakeoffItem",
    "TakeoffLine",
    "TakeoffQuantity",
    "TakeoffShare",
    "TakeoffTotal",
    "TakeoffUnit",
    "Temperature",
    "TemperatureDifference",
    "TemperatureDifferenceUnit",
    "TemperatureRange",
    "TemperatureSpread",
    "TemperatureUnit",
    "TerminalRating",
    "ThermalResistance",
    "ThermalResistanceUnit",
    "ThermalResistivity",
    "ThermalResistivityUnit",
    "TierInPour",
    "TierUnderLoad",
    "TierUplift",
    "TopClosure",
    "TradeSize",
    "Traffic",
    "TravelOption",
    "TrenchAnswer",
    "TrenchItem",
    "TrenchItemAnswer",
    "TrenchPractice",
    "TrenchRequest",
    "TrenchResult",
    "TrenchStreamAnswer",
    "Turn",
    "UnitRow",
    "UnitSystem",
    "UnitTable",
    "Verdict",
    "VerticalBendSection",
    "Voltage",
    "VoltageClass",
    "VoltageDropAnswer",
    "VoltageDropItem",
    "VoltageDropItemAnswer",
    "VoltageDropRequest",
    "VoltageDropResult",
    "VoltageDropStreamAnswer",
    "VoltageUnit",
    "Volume",
    "VolumeMeasure",
    "VolumeUnit",
    "WallMaterial",
    "WeightCorrectionUse",
    "WiringMethod",
    "WouldComply",
)
