"""The unions of the contract by name, and the kinds of each by its tag."""

from typing import Final

from . import models

BatchItem = (
    models.ConductorCountItem
    | models.ConduitSizeItem
    | models.CoverItem
    | models.EncasementItem
    | models.ExpansionItem
    | models.FillItem
    | models.FlotationItem
    | models.JointsItem
    | models.PermittedUseItem
    | models.PullPlanItem
    | models.PullTensionItem
    | models.SpacersItem
    | models.SupportsItem
    | models.TrenchItem
)
BATCH_ITEM_BY_OPERATION: Final[dict[str, type[BatchItem]]] = {
    "conductor_count": models.ConductorCountItem,
    "conduit_size": models.ConduitSizeItem,
    "cover": models.CoverItem,
    "encasement": models.EncasementItem,
    "expansion": models.ExpansionItem,
    "fill": models.FillItem,
    "flotation": models.FlotationItem,
    "joints": models.JointsItem,
    "permitted_use": models.PermittedUseItem,
    "pull_plan": models.PullPlanItem,
    "pull_tension": models.PullTensionItem,
    "spacers": models.SpacersItem,
    "supports": models.SupportsItem,
    "trench": models.TrenchItem,
}
BatchItemAnswer = (
    models.ConductorCountItemAnswer
    | models.ConduitSizeItemAnswer
    | models.CoverItemAnswer
    | models.EncasementItemAnswer
    | models.ExpansionItemAnswer
    | models.FillItemAnswer
    | models.FlotationItemAnswer
    | models.JointsItemAnswer
    | models.PermittedUseItemAnswer
    | models.PullPlanItemAnswer
    | models.PullTensionItemAnswer
    | models.SpacersItemAnswer
    | models.SupportsItemAnswer
    | models.TrenchItemAnswer
    | models.ItemProblem
)
BoxPositions = (
    models.Anywhere
    | models.BetweenSections
    | models.ListedPositions
)
BOX_POSITIONS_BY_KIND: Final[dict[str, type[BoxPositions]]] = {
    "anywhere": models.Anywhere,
    "between_sections": models.BetweenSections,
    "listed": models.ListedPositions,
}
Cable = (
    models.BareCable
    | models.CompactCable
    | models.ListedCable
    | models.MeasuredCable
    | models.MulticonductorCable
)
CABLE_BY_KIND: Final[dict[str, type[Cable]]] = {
    "bare": models.BareCable,
    "compact": models.CompactCable,
    "listed": models.ListedCable,
    "measured": models.MeasuredCable,
    "multiconductor": models.MulticonductorCable,
}
Conduit = (
    models.ListedConduit
    | models.MeasuredConduit
)
CONDUIT_BY_KIND: Final[dict[str, type[Conduit]]] = {
    "listed": models.ListedConduit,
    "measured": models.MeasuredConduit,
}
ItemAnswer = (
    models.ConductorCountItemAnswer
    | models.ConduitSizeItemAnswer
    | models.CoverItemAnswer
    | models.EncasementItemAnswer
    | models.ExpansionItemAnswer
    | models.FillItemAnswer
    | models.FlotationItemAnswer
    | models.JointsItemAnswer
    | models.PermittedUseItemAnswer
    | models.PullPlanItemAnswer
    | models.PullTensionItemAnswer
    | models.SpacersItemAnswer
    | models.SupportsItemAnswer
    | models.TrenchItemAnswer
)
ITEM_ANSWER_BY_OPERATION: Final[dict[str, type[ItemAnswer]]] = {
    "conductor_count": models.ConductorCountItemAnswer,
    "conduit_size": models.ConduitSizeItemAnswer,
    "cover": models.CoverItemAnswer,
    "encasement": models.EncasementItemAnswer,
    "expansion": models.ExpansionItemAnswer,
    "fill": models.FillItemAnswer,
    "flotation": models.FlotationItemAnswer,
    "joints": models.JointsItemAnswer,
    "permitted_use": models.PermittedUseItemAnswer,
    "pull_plan": models.PullPlanItemAnswer,
    "pull_tension": models.PullTensionItemAnswer,
    "spacers": models.SpacersItemAnswer,
    "supports": models.SupportsItemAnswer,
    "trench": models.TrenchItemAnswer,
}
RouteSection = (
    models.HorizontalBendSection
    | models.StraightSection
    | models.VerticalBendSection
)
ROUTE_SECTION_BY_KIND: Final[dict[str, type[RouteSection]]] = {
    "horizontal_bend": models.HorizontalBendSection,
    "straight": models.StraightSection,
    "vertical_bend": models.VerticalBendSection,
}
SpacerInterval = (
    models.DistanceInterval
    | models.PerStickInterval
    | models.PresetInterval
)
SPACER_INTERVAL_BY_KIND: Final[dict[str, type[SpacerInterval]]] = {
    "distance": models.DistanceInterval,
    "per_stick": models.PerStickInterval,
    "preset": models.PresetInterval,
}
StreamAnswer = (
    models.ConductorCountStreamAnswer
    | models.ConduitSizeStreamAnswer
    | models.CoverStreamAnswer
    | models.EncasementStreamAnswer
    | models.ExpansionStreamAnswer
    | models.FillStreamAnswer
    | models.FlotationStreamAnswer
    | models.JointsStreamAnswer
    | models.PermittedUseStreamAnswer
    | models.PullPlanStreamAnswer
    | models.PullTensionStreamAnswer
    | models.SpacersStreamAnswer
    | models.SupportsStreamAnswer
    | models.TrenchStreamAnswer
)
STREAM_ANSWER_BY_OPERATION: Final[dict[str, type[StreamAnswer]]] = {
    "conductor_count": models.ConductorCountStreamAnswer,
    "conduit_size": models.ConduitSizeStreamAnswer,
    "cover": models.CoverStreamAnswer,
    "encasement": models.EncasementStreamAnswer,
    "expansion": models.ExpansionStreamAnswer,
    "fill": models.FillStreamAnswer,
    "flotation": models.FlotationStreamAnswer,
    "joints": models.JointsStreamAnswer,
    "permitted_use": models.PermittedUseStreamAnswer,
    "pull_plan": models.PullPlanStreamAnswer,
    "pull_tension": models.PullTensionStreamAnswer,
    "spacers": models.SpacersStreamAnswer,
    "supports": models.SupportsStreamAnswer,
    "trench": models.TrenchStreamAnswer,
}
StreamAnswerLine = (
    models.ConductorCountStreamAnswer
    | models.ConduitSizeStreamAnswer
    | models.CoverStreamAnswer
    | models.EncasementStreamAnswer
    | models.ExpansionStreamAnswer
    | models.FillStreamAnswer
    | models.FlotationStreamAnswer
    | models.JointsStreamAnswer
    | models.PermittedUseStreamAnswer
    | models.PullPlanStreamAnswer
    | models.PullTensionStreamAnswer
    | models.SpacersStreamAnswer
    | models.SupportsStreamAnswer
    | models.TrenchStreamAnswer
    | models.StreamBasis
    | models.StreamProblem
    | models.StreamStopped
    | models.StreamSummary
)
Temperatures = (
    models.TemperatureSpread
    | models.TemperatureRange
)
TEMPERATURES_BY_KIND: Final[dict[str, type[Temperatures]]] = {
    "difference": models.TemperatureSpread,
    "range": models.TemperatureRange,
}
