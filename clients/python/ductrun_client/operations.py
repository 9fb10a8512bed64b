"""The operations by name, written by `make clients`: change the contract, not this file."""

from typing import Final

from . import models
from .requesting import Call

CALLS: Final[dict[str, Call]] = {
    "duct_run": Call(
        "POST",
        "/v1/duct-run",
        models.DuctRunAnswer,
        models.DuctRunRequest,
        ("units", "working", "assumptions", "request", "suggestions"),
    ),
    "duct_run_compare": Call(
        "POST",
        "/v1/duct-run/compare",
        models.DuctRunComparisonAnswer,
        models.DuctRunComparisonRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "permitted_use": Call(
        "POST",
        "/v1/permitted-use",
        models.PermittedUseAnswer,
        models.PermittedUseRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "conduit_size": Call(
        "POST",
        "/v1/conduit-size",
        models.ConduitSizeAnswer,
        models.ConduitSizeRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "fill": Call(
        "POST", "/v1/fill", models.FillAnswer, models.FillRequest, ("units", "working", "assumptions", "request")
    ),
    "conductor_count": Call(
        "POST",
        "/v1/conductor-count",
        models.ConductorCountAnswer,
        models.ConductorCountRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "cover": Call(
        "POST", "/v1/cover", models.CoverAnswer, models.CoverRequest, ("units", "working", "assumptions", "request")
    ),
    "trench": Call(
        "POST", "/v1/trench", models.TrenchAnswer, models.TrenchRequest, ("units", "working", "assumptions", "request")
    ),
    "spacers": Call(
        "POST",
        "/v1/spacers",
        models.SpacersAnswer,
        models.SpacersRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "encasement": Call(
        "POST",
        "/v1/encasement",
        models.EncasementAnswer,
        models.EncasementRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "flotation": Call(
        "POST",
        "/v1/flotation",
        models.FlotationAnswer,
        models.FlotationRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "earth_load": Call(
        "POST",
        "/v1/earth-load",
        models.EarthLoadAnswer,
        models.EarthLoadRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "joints": Call(
        "POST", "/v1/joints", models.JointsAnswer, models.JointsRequest, ("units", "working", "assumptions", "request")
    ),
    "expansion": Call(
        "POST",
        "/v1/expansion",
        models.ExpansionAnswer,
        models.ExpansionRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "supports": Call(
        "POST",
        "/v1/supports",
        models.SupportsAnswer,
        models.SupportsRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "pull_box": Call(
        "POST",
        "/v1/pull-box",
        models.PullBoxAnswer,
        models.PullBoxRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "pull_plan": Call(
        "POST",
        "/v1/pull-plan",
        models.PullPlanAnswer,
        models.PullPlanRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "pull_tension": Call(
        "POST",
        "/v1/pull-tension",
        models.PullTensionAnswer,
        models.PullTensionRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "ampacity": Call(
        "POST",
        "/v1/ampacity",
        models.AmpacityAnswer,
        models.AmpacityRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "voltage_drop": Call(
        "POST",
        "/v1/voltage-drop",
        models.VoltageDropAnswer,
        models.VoltageDropRequest,
        ("units", "working", "assumptions", "request"),
    ),
    "batch": Call(
        "POST",
        "/v1/batch",
        models.BatchAnswer,
        models.BatchRequest,
        ("units", "working", "assumptions", "request", "suggestions"),
    ),
    "list_conduits": Call("GET", "/v1/tables/conduits", models.ConduitTable, None, ("type", "trade_size", "units")),
    "list_conductors": Call(
        "GET",
        "/v1/tables/conductors",
        models.ConductorTable,
        None,
        ("table", "insulation", "size", "stranding", "units"),
    ),
    "list_materials": Call("GET", "/v1/tables/materials", models.MaterialTable, None, ("material", "units")),
    "list_friction": Call(
        "GET", "/v1/tables/friction", models.FrictionTable, None, ("jacket", "conduit", "lubrication")
    ),
    "list_units": Call("GET", "/v1/tables/units", models.UnitTable, None, ("dimension", "unit")),
    "list_sources": Call("GET", "/v1/tables/sources", models.SourceTable, None, ("source_id",)),
    "check_alive": Call("GET", "/livez", models.Alive, None, ()),
    "check_ready": Call("GET", "/readyz", models.Ready, None, ()),
}
