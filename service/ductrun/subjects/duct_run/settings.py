"""Where a stretch lies: encased, in earth, above ground, in a bore, or in ducts that are there already."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.kit.defaults import by_rule, choice, flag
from ductrun.kit.forms import (
    Depth,
    Diameter,
    Expansivity,
    FittingTravel,
    FluidDensity,
    Form,
    Interval,
    Omissible,
    between,
)
from ductrun.subjects.bank.choices import DuctContents
from ductrun.subjects.bank.flotation_practice import CONTENTS
from ductrun.subjects.conduit.choices import ConduitUse
from ductrun.subjects.conduit.permitted_use import MOST_USES
from ductrun.subjects.duct_run.choices import PourPractice, SupportKind
from ductrun.subjects.ground.choices import BurialLocation
from ductrun.subjects.movement.fittings import FITTING_TRAVEL
from ductrun.subjects.parts.envelope import POUR_SHAPE, ConcreteCover, PourShape
from ductrun.units import Length

POUR = choice("duct_run.pour", PourPractice)
LOCATION = choice("duct_run.location", BurialLocation)
SPACERS = flag("duct_run.spacers")
SUPPORTS = choice("duct_run.supports", SupportKind)
JointMovement = Annotated[Length, between(Length, 0, 60, "in")]


class _Buried(Form):
    """What is said of all that lies in earth."""

    cover: Omissible[Depth] = Field(
        default=None,
        description="Earth over the top of what is buried, its concrete where it is encased, the shortest way to "
        "grade; needed without a profile.",
        examples=[{"value": 30, "unit": "in"}],
    )
    location: Omissible[BurialLocation] = Field(
        default=None,
        description="What lies above, for the least cover.",
        examples=["street_road_driveway_parking_lot"],
        json_schema_extra=LOCATION.stated,
    )


class EncasedSetting(_Buried):
    """In concrete, in a trench."""

    kind: Literal["encased"] = Field(description="Fixed text that says: encased in concrete.")
    concrete_cover: Omissible[ConcreteCover] = Field(default=None, description="Concrete on every side of the ducts.")
    pour: Omissible[PourPractice] = Field(
        default=None,
        description="Whether the concrete is poured against forms or against the trench.",
        examples=["trench_formed"],
        json_schema_extra=POUR.stated,
    )
    pour_shape: Omissible[PourShape] = Field(
        default=None,
        description="Whether a formed pour fills the bounding rectangle or steps with the tiers.",
        examples=["bounding_rectangle"],
        json_schema_extra=POUR_SHAPE.stated,
    )


class DirectBuriedSetting(_Buried):
    """In earth, without concrete."""

    kind: Literal["direct_buried"] = Field(description="Fixed text that says: buried directly.")
    on_spacers: Omissible[bool] = Field(
        default=None,
        description="Whether spacers hold its ducts apart, where there are several; in concrete they always do.",
        examples=[True],
        json_schema_extra=SPACERS.stated,
    )


MOST_STRUCTURE_JOINTS = 100


class StructureJoint(Form):
    """A joint of the structure that the run lies on."""

    position: Annotated[Length, between(Length, 0, 100_000, "ft")] = Field(
        description="Distance from the start of the stretch.", examples=[{"value": 150, "unit": "ft"}]
    )
    movement: JointMovement = Field(
        description="By how much it opens and closes in all.", examples=[{"value": 2, "unit": "in"}]
    )


class AboveGroundSetting(Form):
    """Above ground, on supports."""

    kind: Literal["above_ground"] = Field(description="Fixed text that says: above ground.")
    uses: Omissible[Annotated[list[ConduitUse], Field(max_length=MOST_USES)]] = Field(
        default=None, description="What it meets there beside being above ground.", examples=[["sunlight"]]
    )
    structure_joints: Omissible[Annotated[list[StructureJoint], Field(max_length=MOST_STRUCTURE_JOINTS)]] = Field(
        default=None, description="Joints of a structure that moves, such as a bridge."
    )
    structure_coefficient: Omissible[Expansivity] = Field(
        default=None,
        description="How the structure itself moves with temperature: only the difference moves the conduit.",
        examples=[{"value": 6.5e-6, "unit": "1/degF"}],
        json_schema_extra=by_rule("the structure does not move"),
    )
    fitting_travel: Omissible[FittingTravel] = Field(
        default=None,
        description="Travel of one expansion fitting.",
        examples=[{"value": 8, "unit": "in"}],
        json_schema_extra=FITTING_TRAVEL.stated,
    )
    support_spacing: Omissible[Interval] = Field(
        default=None,
        description="Most that supports may stand apart; where the rule of the conduit allows less, that holds.",
        examples=[{"value": 10, "unit": "ft"}],
        json_schema_extra=by_rule("the most that the rule of the conduit allows"),
    )
    supports: Omissible[SupportKind] = Field(
        default=None,
        description="What holds it.",
        examples=["hanger"],
        json_schema_extra=SUPPORTS.stated,
    )


class BoredSetting(Form):
    """In a bore; how the ducts are drawn into it is not judged."""

    kind: Literal["bored"] = Field(description="Fixed text that says: in a directional bore.")
    cover: Omissible[Depth] = Field(
        default=None,
        description="Least earth over the ducts along the bore.",
        examples=[{"value": 15, "unit": "ft"}],
    )
    location: Omissible[BurialLocation] = Field(
        default=None,
        description="What lies above, for the least cover.",
        examples=["street_road_driveway_parking_lot"],
        json_schema_extra=LOCATION.stated,
    )
    bore_diameter: Omissible[Diameter] = Field(
        default=None, description="Diameter to which it is reamed.", examples=[{"value": 22, "unit": "in"}]
    )
    bundle_diameter: Omissible[Diameter] = Field(
        default=None, description="Circle around the ducts drawn in together.", examples=[{"value": 14.3, "unit": "in"}]
    )
    drilling_fluid_density: Omissible[FluidDensity] = Field(
        default=None,
        description="Density of the fluid in the bore: gives how hard the ducts float in it.",
        examples=[{"value": 75, "unit": "lb/ft3"}],
    )
    duct_contents: Omissible[DuctContents] = Field(
        default=None,
        description="What is in the ducts while they are drawn in.",
        examples=["water"],
        json_schema_extra=CONTENTS.stated,
    )


class ExistingSetting(Form):
    """Ducts that are there already: nothing is bought for them but cable, cord and proofing."""

    kind: Literal["existing"] = Field(description="Fixed text that says: ducts that are there already.")


Setting = TypeAliasType(
    "Setting",
    Annotated[
        EncasedSetting | DirectBuriedSetting | AboveGroundSetting | BoredSetting | ExistingSetting,
        Field(
            discriminator="kind",
            description="How a stretch is laid: encased, buried, bored, above ground, or there already.",
        ),
    ],
)
BURIED = {"encased", "direct_buried"}
