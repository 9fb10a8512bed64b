"""The unions of the contract by name, and the kinds of each by its tag."""

from typing import Final

from . import models

BatchItem = (
    models.AmpacityItem
    | models.ConductorCountItem
    | models.ConduitSizeItem
    | models.CoverItem
    | models.DuctRunItem
    | models.EarthLoadItem
    | models.EncasementItem
    | models.ExpansionItem
    | models.FillItem
    | models.FlotationItem
    | models.JointsItem
    | models.PermittedUseItem
    | models.PullBoxItem
    | models.PullPlanItem
    | models.PullTensionItem
    | models.SpacersItem
    | models.SupportsItem
    | models.TrenchItem
    | models.VoltageDropItem
)
BATCH_ITEM_BY_OPERATION: Final[dict[str, type[BatchItem]]] = {
    "ampacity": models.AmpacityItem,
    "conductor_count": models.ConductorCountItem,
    "conduit_size": models.ConduitSizeItem,
    "cover": models.CoverItem,
    "duct_run": models.DuctRunItem,
    "earth_load": models.EarthLoadItem,
    "encasement": models.EncasementItem,
    "expansion": models.ExpansionItem,
    "fill": models.FillItem,
    "flotation": models.FlotationItem,
    "joints": models.JointsItem,
    "permitted_use": models.PermittedUseItem,
    "pull_box": models.PullBoxItem,
    "pull_plan": models.PullPlanItem,
    "pull_tension": models.PullTensionItem,
    "spacers": models.SpacersItem,
    "supports": models.SupportsItem,
    "trench": models.TrenchItem,
    "voltage_drop": models.VoltageDropItem,
}
BatchItemAnswer = (
    models.AmpacityItemAnswer
    | models.ConductorCountItemAnswer
    | models.ConduitSizeItemAnswer
    | models.CoverItemAnswer
    | models.DuctRunItemAnswer
    | models.EarthLoadItemAnswer
    | models.EncasementItemAnswer
    | models.ExpansionItemAnswer
    | models.FillItemAnswer
    | models.FlotationItemAnswer
    | models.JointsItemAnswer
    | models.PermittedUseItemAnswer
    | models.PullBoxItemAnswer
    | models.PullPlanItemAnswer
    | models.PullTensionItemAnswer
    | models.SpacersItemAnswer
    | models.SupportsItemAnswer
    | models.TrenchItemAnswer
    | models.VoltageDropItemAnswer
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
    models.AmpacityItemAnswer
    | models.ConductorCountItemAnswer
    | models.ConduitSizeItemAnswer
    | models.CoverItemAnswer
    | models.DuctRunItemAnswer
    | models.EarthLoadItemAnswer
    | models.EncasementItemAnswer
    | models.ExpansionItemAnswer
    | models.FillItemAnswer
    | models.FlotationItemAnswer
    | models.JointsItemAnswer
    | models.PermittedUseItemAnswer
    | models.PullBoxItemAnswer
    | models.PullPlanItemAnswer
    | models.PullTensionItemAnswer
    | models.SpacersItemAnswer
    | models.SupportsItemAnswer
    | models.TrenchItemAnswer
    | models.VoltageDropItemAnswer
)
ITEM_ANSWER_BY_OPERATION: Final[dict[str, type[ItemAnswer]]] = {
    "ampacity": models.AmpacityItemAnswer,
    "conductor_count": models.ConductorCountItemAnswer,
    "conduit_size": models.ConduitSizeItemAnswer,
    "cover": models.CoverItemAnswer,
    "duct_run": models.DuctRunItemAnswer,
    "earth_load": models.EarthLoadItemAnswer,
    "encasement": models.EncasementItemAnswer,
    "expansion": models.ExpansionItemAnswer,
    "fill": models.FillItemAnswer,
    "flotation": models.FlotationItemAnswer,
    "joints": models.JointsItemAnswer,
    "permitted_use": models.PermittedUseItemAnswer,
    "pull_box": models.PullBoxItemAnswer,
    "pull_plan": models.PullPlanItemAnswer,
    "pull_tension": models.PullTensionItemAnswer,
    "spacers": models.SpacersItemAnswer,
    "supports": models.SupportsItemAnswer,
    "trench": models.TrenchItemAnswer,
    "voltage_drop": models.VoltageDropItemAnswer,
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
RunSection = (
    models.RunHorizontalBend
    | models.RunStraight
    | models.RunVerticalBend
)
RUN_SECTION_BY_KIND: Final[dict[str, type[RunSection]]] = {
    "horizontal_bend": models.RunHorizontalBend,
    "straight": models.RunStraight,
    "vertical_bend": models.RunVerticalBend,
}
Setting = (
    models.AboveGroundSetting
    | models.BoredSetting
    | models.DirectBuriedSetting
    | models.EncasedSetting
    | models.ExistingSetting
)
SETTING_BY_KIND: Final[dict[str, type[Setting]]] = {
    "above_ground": models.AboveGroundSetting,
    "bored": models.BoredSetting,
    "direct_buried": models.DirectBuriedSetting,
    "encased": models.EncasedSetting,
    "existing": models.ExistingSetting,
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
    models.AmpacityStreamAnswer
    | models.ConductorCountStreamAnswer
    | models.ConduitSizeStreamAnswer
    | models.CoverStreamAnswer
    | models.DuctRunStreamAnswer
    | models.EarthLoadStreamAnswer
    | models.EncasementStreamAnswer
    | models.ExpansionStreamAnswer
    | models.FillStreamAnswer
    | models.FlotationStreamAnswer
    | models.JointsStreamAnswer
    | models.PermittedUseStreamAnswer
    | models.PullBoxStreamAnswer
    | models.PullPlanStreamAnswer
    | models.PullTensionStreamAnswer
    | models.SpacersStreamAnswer
    | models.SupportsStreamAnswer
    | models.TrenchStreamAnswer
    | models.VoltageDropStreamAnswer
)
STREAM_ANSWER_BY_OPERATION: Final[dict[str, type[StreamAnswer]]] = {
    "ampacity": models.AmpacityStreamAnswer,
    "conductor_count": models.ConductorCountStreamAnswer,
    "conduit_size": models.ConduitSizeStreamAnswer,
    "cover": models.CoverStreamAnswer,
    "duct_run": models.DuctRunStreamAnswer,
    "earth_load": models.EarthLoadStreamAnswer,
    "encasement": models.EncasementStreamAnswer,
    "expansion": models.ExpansionStreamAnswer,
    "fill": models.FillStreamAnswer,
    "flotation": models.FlotationStreamAnswer,
    "joints": models.JointsStreamAnswer,
    "permitted_use": models.PermittedUseStreamAnswer,
    "pull_box": models.PullBoxStreamAnswer,
    "pull_plan": models.PullPlanStreamAnswer,
    "pull_tension": models.PullTensionStreamAnswer,
    "spacers": models.SpacersStreamAnswer,
    "supports": models.SupportsStreamAnswer,
    "trench": models.TrenchStreamAnswer,
    "voltage_drop": models.VoltageDropStreamAnswer,
}
StreamAnswerLine = (
    models.AmpacityStreamAnswer
    | models.ConductorCountStreamAnswer
    | models.ConduitSizeStreamAnswer
    | models.CoverStreamAnswer
    | models.DuctRunStreamAnswer
    | models.EarthLoadStreamAnswer
    | models.EncasementStreamAnswer
    | models.ExpansionStreamAnswer
    | models.FillStreamAnswer
    | models.FlotationStreamAnswer
    | models.JointsStreamAnswer
    | models.PermittedUseStreamAnswer
    | models.PullBoxStreamAnswer
    | models.PullPlanStreamAnswer
    | models.PullTensionStreamAnswer
    | models.SpacersStreamAnswer
    | models.SupportsStreamAnswer
    | models.TrenchStreamAnswer
    | models.VoltageDropStreamAnswer
    | models.StreamBasis
    | models.StreamProblem
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
