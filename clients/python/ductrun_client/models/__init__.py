"""Contains all the data models used in inputs/outputs"""

from .alive import Alive
from .angle import Angle
from .angle_unit import AngleUnit
from .any_quantity import AnyQuantity
from .anywhere import Anywhere
from .area import Area
from .area_unit import AreaUnit
from .assumption import Assumption
from .assumption_policy import AssumptionPolicy
from .attachment import Attachment
from .bank_alignment import BankAlignment
from .bank_ground import BankGround
from .bank_ground_takeoff import BankGroundTakeoff
from .bar_size import BarSize
from .bare_cable import BareCable
from .bare_stranding import BareStranding
from .basis import Basis
from .batch_answer import BatchAnswer
from .batch_request import BatchRequest
from .bend_made import BendMade
from .between_sections import BetweenSections
from .braking_case import BrakingCase
from .burial_location import BurialLocation
from .cable_arrangement import CableArrangement
from .cable_conductor import CableConductor
from .cable_jacket import CableJacket
from .cable_line import CableLine
from .cable_order import CableOrder
from .cable_sheath import CableSheath
from .cable_shielding import CableShielding
from .cable_type import CableType
from .caution import Caution
from .code_edition import CodeEdition
from .compact_cable import CompactCable
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
from .density import Density
from .density_unit import DensityUnit
from .distance_interval import DistanceInterval
from .drains_to import DrainsTo
from .duct_bank import DuctBank
from .duct_contents import DuctContents
from .duct_elbow import DuctElbow
from .duct_ends import DuctEnds
from .duct_material import DuctMaterial
from .ducts_beside import DuctsBeside
from .duration import Duration
from .duration_unit import DurationUnit
from .encasement_answer import EncasementAnswer
from .encasement_item import EncasementItem
from .encasement_item_answer import EncasementItemAnswer
from .encasement_request import EncasementRequest
from .encasement_result import EncasementResult
from .encasement_stream_answer import EncasementStreamAnswer
from .excavation_soil_type import ExcavationSoilType
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
from .friction_case import FrictionCase
from .friction_range import FrictionRange
from .friction_row import FrictionRow
from .friction_table import FrictionTable
from .grade import Grade
from .grade_unit import GradeUnit
from .horizontal_bend_section import HorizontalBendSection
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
from .length import Length
from .length_unit import LengthUnit
from .listed_cable import ListedCable
from .listed_conduit import ListedConduit
from .listed_positions import ListedPositions
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
from .placed_duct import PlacedDuct
from .planned_pull import PlannedPull
from .pour_shape import PourShape
from .preset_interval import PresetInterval
from .pressure import Pressure
from .pressure_unit import PressureUnit
from .problem import Problem
from .problem_error import ProblemError
from .profile_point import ProfilePoint
from .pull_direction import PullDirection
from .pull_plan_answer import PullPlanAnswer
from .pull_plan_item import PullPlanItem
from .pull_plan_item_answer import PullPlanItemAnswer
from .pull_plan_request import PullPlanRequest
from .pull_plan_result import PullPlanResult
from .pull_plan_stream_answer import PullPlanStreamAnswer
from .pull_tension_answer import PullTensionAnswer
from .pull_tension_item import PullTensionItem
from .pull_tension_item_answer import PullTensionItemAnswer
from .pull_tension_request import PullTensionRequest
from .pull_tension_result import PullTensionResult
from .pull_tension_stream_answer import PullTensionStreamAnswer
from .ready import Ready
from .refused_assumption import RefusedAssumption
from .reinforcing import Reinforcing
from .reinforcing_takeoff import ReinforcingTakeoff
from .request_back import RequestBack
from .reversed_pull import ReversedPull
from .run_end import RunEnd
from .run_movement import RunMovement
from .run_setting import RunSetting
from .section_tension import SectionTension
from .separation_measure import SeparationMeasure
from .severity import Severity
from .size_candidate import SizeCandidate
from .size_change import SizeChange
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
from .standing import Standing
from .station import Station
from .step import Step
from .straight_section import StraightSection
from .stream_basis import StreamBasis
from .stream_problem import StreamProblem
from .stream_stopped import StreamStopped
from .stream_stopped_reason import StreamStoppedReason
from .stream_summary import StreamSummary
from .supported_conduit import SupportedConduit
from .supported_conduit_type import SupportedConduitType
from .supports_answer import SupportsAnswer
from .supports_item import SupportsItem
from .supports_item_answer import SupportsItemAnswer
from .supports_request import SupportsRequest
from .supports_result import SupportsResult
from .supports_stream_answer import SupportsStreamAnswer
from .temperature import Temperature
from .temperature_difference import TemperatureDifference
from .temperature_difference_unit import TemperatureDifferenceUnit
from .temperature_range import TemperatureRange
from .temperature_spread import TemperatureSpread
from .temperature_unit import TemperatureUnit
from .tier_uplift import TierUplift
from .top_closure import TopClosure
from .trade_size import TradeSize
from .travel_option import TravelOption
from .trench_answer import TrenchAnswer
from .trench_item import TrenchItem
from .trench_item_answer import TrenchItemAnswer
from .trench_practice import TrenchPractice
from .trench_request import TrenchRequest
from .trench_result import TrenchResult
from .trench_stream_answer import TrenchStreamAnswer
from .unit_row import UnitRow
from .unit_system import UnitSystem
from .unit_table import UnitTable
from .verdict import Verdict
from .vertical_bend_section import VerticalBendSection
from .voltage_class import VoltageClass
from .volume import Volume
from .volume_unit import VolumeUnit
from .weight_correction_use import WeightCorrectionUse
from .wiring_method import WiringMethod

__all__ = (
    "Alive",
    "Angle",
    "AngleUnit",
    "AnyQuantity",
    "Anywhere",
    "Area",
    "AreaUnit",
    "Assumption",
    "AssumptionPolicy",
    "Attachment",
    "BankAlignment",
    "BankGround",
    "BankGroundTakeoff",
    "BareCable",
    "BareStranding",
    "BarSize",
    "Basis",
    "BatchAnswer",
    "BatchRequest",
    "BendMade",
    "BetweenSections",
    "BrakingCase",
    "BurialLocation",
    "CableArrangement",
    "CableConductor",
    "CableJacket",
    "CableLine",
    "CableOrder",
    "CableSheath",
    "CableShielding",
    "CableType",
    "Caution",
    "CodeEdition",
    "CompactCable",
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
    "CoverItem",
    "CoverItemAnswer",
    "CoverRequest",
    "CoverResult",
    "CoverStreamAnswer",
    "Density",
    "DensityUnit",
    "DistanceInterval",
    "DrainsTo",
    "DuctBank",
    "DuctContents",
    "DuctElbow",
    "DuctEnds",
    "DuctMaterial",
    "DuctsBeside",
    "Duration",
    "DurationUnit",
    "EncasementAnswer",
    "EncasementItem",
    "EncasementItemAnswer",
    "EncasementRequest",
    "EncasementResult",
    "EncasementStreamAnswer",
    "ExcavationSoilType",
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
    "FrictionCase",
    "FrictionRange",
    "FrictionRow",
    "FrictionTable",
    "Grade",
    "GradeUnit",
    "HorizontalBendSection",
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
    "Length",
    "LengthUnit",
    "ListedCable",
    "ListedConduit",
    "ListedPositions",
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
    "PlannedPull",
    "PourShape",
    "PresetInterval",
    "Pressure",
    "PressureUnit",
    "Problem",
    "ProblemError",
    "ProfilePoint",
    "PullDirection",
    "PullPlanAnswer",
    "PullPlanItem",
    "PullPlanItemAnswer",
    "PullPlanRequest",
    "PullPlanResult",
    "PullPlanStreamAnswer",
    "PullTensionAnswer",
    "PullTensionItem",
    "PullTensionItemAnswer",
    "PullTensionRequest",
    "PullTensionResult",
    "PullTensionStreamAnswer",
    "Ready",
    "RefusedAssumption",
    "Reinforcing",
    "ReinforcingTakeoff",
    "RequestBack",
    "ReversedPull",
    "RunEnd",
    "RunMovement",
    "RunSetting",
    "SectionTension",
    "SeparationMeasure",
    "Severity",
    "SizeCandidate",
    "SizeChange",
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
    "Standing",
    "Station",
    "Step",
    "StraightSection",
    "StreamBasis",
    "StreamProblem",
    "StreamStopped",
    "StreamStoppedReason",
    "StreamSummary",
    "SupportedConduit",
    "SupportedConduitType",
    "SupportsAnswer",
    "SupportsItem",
    "SupportsItemAnswer",
    "SupportsRequest",
    "SupportsResult",
    "SupportsStreamAnswer",
    "Temperature",
    "TemperatureDifference",
    "TemperatureDifferenceUnit",
    "TemperatureRange",
    "TemperatureSpread",
    "TemperatureUnit",
    "TierUplift",
    "TopClosure",
    "TradeSize",
    "TravelOption",
    "TrenchAnswer",
    "TrenchItem",
    "TrenchItemAnswer",
    "TrenchPractice",
    "TrenchRequest",
    "TrenchResult",
    "TrenchStreamAnswer",
    "UnitRow",
    "UnitSystem",
    "UnitTable",
    "Verdict",
    "VerticalBendSection",
    "VoltageClass",
    "Volume",
    "VolumeUnit",
    "WeightCorrectionUse",
    "WiringMethod",
)
