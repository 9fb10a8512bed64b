"""Closed sets of where a conduit may go and how it is joined."""

from __future__ import annotations

from ductrun.units import Code


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
    WITHIN_BUILDING = "within_building"
    WET_LOCATION = "wet_location"
    CORROSIVE_INFLUENCE = "corrosive_influence"
    CINDER_FILL = "cinder_fill"
    PLENUM = "plenum"
    SEVERE_PHYSICAL_DAMAGE = "severe_physical_damage"


class JoiningMethod(Code):
    """How lengths of a conduit are joined: by solvent cement, fused, threaded, or by couplings set on."""

    CEMENTED = "cemented"
    FUSED = "fused"
    THREADED = "threaded"
    COUPLED = "coupled"


class RunEnd(Code):
    """How ducts finish at an end of a run: what is ordered and joined there."""

    END_BELL = "end_bell"
    COUPLING = "coupling"
    ADAPTER = "adapter"
    ELBOW = "elbow"
    CONDUIT_BODY = "conduit_body"
    NONE = "none"


class DuctEnds(Code):
    """Whether sticks have a bell or two plain ends."""

    BELLED = "belled"
    PLAIN = "plain"
