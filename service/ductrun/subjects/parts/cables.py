"""The cables of a request, the same for fills and pulls: lines of so many of one cable."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.kit.defaults import Default, by_rule, choice
from ductrun.kit.forms import BendRadius, CableMass, Count, Diameter, Form, MetalArea, Omissible, PullingStress
from ductrun.subjects.parts.cable_layers import CableLayers
from ductrun.subjects.parts.choices import (
    BareStranding,
    CableJacket,
    CableSheath,
    CableShielding,
    CableType,
    ConductorMaterial,
    ConductorSize,
    ConductorTemper,
    Insulation,
)

SHEATH = choice("pulling.sheath", CableSheath)
CABLE_TYPE = choice("pulling.cable_type", CableType)
BARE_STRANDING = choice("fill.bare_stranding", BareStranding)
TEMPER = {
    ConductorMaterial.COPPER: choice("pulling.copper_temper", ConductorTemper),
    ConductorMaterial.ALUMINUM: choice("pulling.aluminum_temper", ConductorTemper),
}
WIRE_TEMPER = TEMPER | {ConductorMaterial.ALUMINUM: choice("pulling.wire_aluminum_temper", ConductorTemper)}


def _by_metal(tempers: dict[ConductorMaterial, Default[ConductorTemper]]) -> dict[str, Any]:
    return by_rule("; ".join(f"{metal}: {temper.value}" for metal, temper in tempers.items()))


class CableConductor(Form):
    """The conductors within one cable, which a pulling eye holds and which carry the current."""

    material: ConductorMaterial = Field(description="Metal of the conductor.", examples=["copper"])
    size: Omissible[ConductorSize] = Field(
        default=None, description="Conductor size; give this or the area.", examples=["500 kcmil"]
    )
    area: Omissible[MetalArea] = Field(
        default=None,
        description="Metal area of one conductor; give this or the size.",
        examples=[{"value": 240, "unit": "mm2"}],
    )
    temper: Omissible[ConductorTemper] = Field(
        default=None,
        description="Temper or alloy of the metal.",
        examples=["aa_8000"],
        json_schema_extra=_by_metal(TEMPER),
    )
    allowable_stress: Omissible[PullingStress] = Field(
        default=None,
        description="Pull per metal area that the conductor bears, in place of the published one.",
        examples=[{"value": 70.2, "unit": "MPa"}],
    )
    count: Annotated[int, Field(ge=1, le=200)] = Field(
        description="Conductors of this size in one cable, shields and grounds not counted.", examples=[1]
    )


class _AnyCable(Form):
    """What may be said of every cable."""

    mass_per_length: Omissible[CableMass] = Field(
        default=None,
        description="Mass per length of one cable; of building wire it is derived from metal and insulation.",
        examples=[{"value": 2.6, "unit": "lb/ft"}],
        json_schema_extra=by_rule("of building wire derived from its metal and insulation; else needed by a pull"),
    )
    cable_type: Omissible[CableType] = Field(
        default=None,
        description="Kind of cable, for its sidewall pressure.",
        examples=["power_shielded_5_to_15_kv"],
        json_schema_extra=CABLE_TYPE.stated,
    )
    bending_radius: Omissible[BendRadius] = Field(
        default=None,
        description="Least bending radius of the cable's maker, to the inner wall, in place of the code's.",
        examples=[{"value": 12, "unit": "in"}],
    )
    shielding: Omissible[CableShielding] = Field(
        default=None,
        description="Make-up of the cable, for its bending radius.",
        examples=["shielded"],
        json_schema_extra=by_rule("that of the cable type; without one shielded, the stricter"),
    )
    shielded_conductor_diameter: Omissible[Diameter] = Field(
        default=None,
        description="Outside diameter of one shielded conductor within an individually shielded cable.",
        examples=[{"value": 0.9, "unit": "in"}],
    )
    sheath: Omissible[CableSheath] = Field(
        default=None,
        description="What a basket grip would hold.",
        examples=["nonmetallic"],
        json_schema_extra=SHEATH.stated,
    )
    jacket: Omissible[CableJacket] = Field(
        default=None, description="What slides on the conduit, for its published friction.", examples=["pvc"]
    )


class _Wire(_AnyCable):
    """What may be said of a conductor whose diameter is in a table."""

    size: ConductorSize = Field(description="Conductor size.", examples=["500 kcmil"])
    material: Omissible[ConductorMaterial] = Field(
        default=None, description="Metal of the conductor, for its mass and for what it bears.", examples=["copper"]
    )
    temper: Omissible[ConductorTemper] = Field(
        default=None,
        description="Temper or alloy of the metal.",
        examples=["aa_8000"],
        json_schema_extra=_by_metal(WIRE_TEMPER),
    )
    allowable_stress: Omissible[PullingStress] = Field(
        default=None,
        description="Pull per metal area that the conductor bears, in place of the published one.",
        examples=[{"value": 70.2, "unit": "MPa"}],
    )


class ListedCable(_Wire):
    """Insulated building wire by marking and size, from Chapter 9, Table 5."""

    kind: Literal["listed"] = Field(description="Fixed text that says: by insulation and size.")
    insulation: Insulation = Field(
        description="Insulation as marked; an asterisk means without an outer covering.", examples=["THWN-2"]
    )


class CompactCable(_Wire):
    """Insulated building wire of compact stranding by marking and size, from Chapter 9, Table 5A."""

    kind: Literal["compact"] = Field(description="Fixed text that says: compact stranding.")
    insulation: Insulation = Field(description="Insulation as marked.", examples=["XHHW-2"])


class BareCable(_Wire):
    """A bare conductor by size, from Chapter 9, Table 8; the circle around all strands counts."""

    kind: Literal["bare"] = Field(description="Fixed text that says: bare.")
    stranding: Omissible[BareStranding] = Field(
        default=None,
        description="Solid or stranded, where Table 8 has both.",
        examples=["stranded"],
        json_schema_extra=BARE_STRANDING.stated,
    )


class MeasuredCable(_AnyCable):
    """A single conductor or single-conductor cable by its diameter (Chapter 9, Table 1, Note 5)."""

    kind: Literal["measured"] = Field(description="Fixed text that says: a single conductor by diameter.")
    diameter: Diameter = Field(description="Outside diameter.", examples=[{"value": 1.42, "unit": "in"}])
    conductor: Omissible[CableConductor] = Field(
        default=None,
        description="What the pulling eye holds and the current flows in; without it the tension is not judged.",
    )
    layers: Omissible[CableLayers] = Field(default=None, description="What lies around it, for its ampacity.")


class MulticonductorCable(_AnyCable):
    """A multiconductor cable or cord by its diameter: it counts as one (Chapter 9, Table 1, Note 9)."""

    kind: Literal["multiconductor"] = Field(description="Fixed text that says: conductors in an overall jacket.")
    diameter: Diameter = Field(
        description="Outside diameter, the larger one if elliptical.", examples=[{"value": 2.1, "unit": "in"}]
    )
    conductor: Omissible[CableConductor] = Field(
        default=None,
        description="What the pulling eye holds and the current flows in; without it the tension is not judged.",
    )
    layers: Omissible[CableLayers] = Field(default=None, description="What lies around it, for its ampacity.")


Cable = TypeAliasType(
    "Cable",
    Annotated[
        ListedCable | CompactCable | BareCable | MeasuredCable | MulticonductorCable,
        Field(discriminator="kind", description="A conductor or cable: one of the tables, or by its measures."),
    ],
)


class CableLine(Form):
    """So many of one cable."""

    count: Count = Field(description="How many, grounding and bonding conductors included.", examples=[3])
    cable: Cable = Field(description="The cable.")


MOST_KINDS = 200
CableLines = Annotated[list[CableLine], Field(min_length=1, max_length=MOST_KINDS)]
MOST_LINES = 20
PulledLines = Annotated[list[CableLine], Field(min_length=1, max_length=MOST_LINES)]
MOST_PULLED = 100  # of all lines together
