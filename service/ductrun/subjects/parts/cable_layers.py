"""The layers of a cable from its conductor outward, for the heat that leaves it."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import Between, Diameter, Form, MetalArea, Omissible
from ductrun.subjects.parts.choices import CoveringMaterial
from ductrun.units import Length, ResistancePerLength, ThermalResistivity

LayerThickness = Annotated[Length, Between(Length.parse(0.001, "in"), Length.parse(10, "in"))]
MetalResistance = Annotated[
    ResistancePerLength,
    Between(ResistancePerLength.parse(0.0001, "ohm/1000ft"), ResistancePerLength.parse(1_000, "ohm/1000ft")),
]
MaterialResistivity = Annotated[
    ThermalResistivity, Between(ThermalResistivity.parse(0.01, "K.m/W"), ThermalResistivity.parse(50, "K.m/W"))
]
_OF_MATERIAL = by_rule("that of its material")


class CableInsulation(Form):
    """The insulation of one conductor, with the screens on both sides of it."""

    material: CoveringMaterial = Field(description="What it is made of.", examples=["xlpe"])
    thickness: Omissible[LayerThickness] = Field(
        default=None,
        description="Its wall; of several conductors in one jacket this is what tells how they lie. What is left up to "
        "the jacket is taken for insulation, unless a shield lies there.",
        examples=[{"value": 0.175, "unit": "in"}],
        json_schema_extra=by_rule(
            "all between the conductor and the jacket; of several conductors what lets them touch"
        ),
    )
    thermal_resistivity: Omissible[MaterialResistivity] = Field(
        default=None,
        description="Its thermal resistivity.",
        examples=[{"value": 3.5, "unit": "K.m/W"}],
        json_schema_extra=_OF_MATERIAL,
    )


class CableShield(Form):
    """The metal shield over the insulation of one conductor."""

    metal_area: Omissible[MetalArea] = Field(
        default=None,
        description="Area of its copper; this or the resistance.",
        examples=[{"value": 16, "unit": "mm2"}],
    )
    resistance: Omissible[MetalResistance] = Field(
        default=None,
        description="Its resistance at 20 degC; this or the area of its copper.",
        examples=[{"value": 1.1, "unit": "ohm/km"}],
    )
    mean_diameter: Omissible[Diameter] = Field(
        default=None,
        description="Its mean diameter.",
        examples=[{"value": 1.2, "unit": "in"}],
        json_schema_extra=by_rule("that of the insulation"),
    )


class CableJacketLayer(Form):
    """The jacket around the cable."""

    material: CoveringMaterial = Field(description="What it is made of.", examples=["pvc"])
    thickness: LayerThickness = Field(description="Its wall.", examples=[{"value": 0.08, "unit": "in"}])
    thermal_resistivity: Omissible[MaterialResistivity] = Field(
        default=None,
        description="Its thermal resistivity.",
        examples=[{"value": 6.0, "unit": "K.m/W"}],
        json_schema_extra=_OF_MATERIAL,
    )


class CableLayers(Form):
    """What lies between the conductor of a cable and its surface."""

    insulation: CableInsulation = Field(description="Insulation of one conductor.")
    conductor_diameter: Omissible[Diameter] = Field(
        default=None,
        description="Diameter of one conductor.",
        examples=[{"value": 0.813, "unit": "in"}],
        json_schema_extra=by_rule("that of Table 8 for its size; an area needs it"),
    )
    shield: Omissible[CableShield] = Field(default=None, description="Metal shield of one conductor, if it has one.")
    jacket: Omissible[CableJacketLayer] = Field(default=None, description="Jacket of the cable, if it has one.")
    conductor_resistance: Omissible[MetalResistance] = Field(
        default=None,
        description="Resistance of one conductor to direct current at 20 degC, in place of that of its metal area.",
        examples=[{"value": 0.0601, "unit": "ohm/km"}],
        json_schema_extra=by_rule("that of its metal area"),
    )
