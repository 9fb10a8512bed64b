"""The ends of a run and its pull points: what stands there, how high conduit comes up, how ducts finish."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule, choice
from ductrun.kit.forms import BendRadius, CableTail, Omissible, between
from ductrun.kit.texts import Name
from ductrun.subjects.boxes.boxing import BoxAtHand
from ductrun.subjects.boxes.choices import BoxWall
from ductrun.subjects.boxes.entries import SPLICED
from ductrun.subjects.conduit.choices import RunEnd
from ductrun.subjects.duct_run.choices import PlaceKind
from ductrun.subjects.parts.choices import ConduitType
from ductrun.units import Length

EXIT_WALL = choice("duct_run.exit_wall", BoxWall)
RiserHeight = Annotated[Length, between(Length, 0, 100, "ft")]


class RunPlace(BoxAtHand):
    """An end of the run, or a pull point in it."""

    kind: PlaceKind = Field(description="What stands there.", examples=["manhole"])
    name: Omissible[Name] = Field(default=None, description="Its name.", examples=["MH-12"])
    height: Omissible[RiserHeight] = Field(
        default=None,
        description="Height above grade to which the ducts come up: the buried stretch beside it then gets an elbow "
        "and a straight leg up to it.",
        examples=[{"value": 4, "unit": "ft"}],
    )
    riser_conduit_type: Omissible[ConduitType] = Field(
        default=None,
        description="Conduit of that elbow and leg.",
        examples=["pvc_schedule_80"],
        json_schema_extra=by_rule("the conduit of the stretch"),
    )
    riser_radius: Omissible[BendRadius] = Field(
        default=None,
        description="Radius of that elbow.",
        examples=[{"value": 36, "unit": "in"}],
        json_schema_extra=by_rule("that of the standard elbow of its size"),
    )
    finish: Omissible[RunEnd] = Field(
        default=None,
        description="How each duct finishes there.",
        examples=["end_bell"],
        json_schema_extra=by_rule(
            "end_bell at manholes, vaults, handholes, pads and pole bases; adapter at boxes and equipment; elbow at a "
            "conduit body; coupling at an existing duct; none at a stub-up or cap, and of what no bell fits"
        ),
    )
    cable_allowance: Omissible[CableTail] = Field(
        default=None,
        description="Cable beyond the conduit there, for racking, tail and termination together.",
        examples=[{"value": 30, "unit": "ft"}],
        json_schema_extra=by_rule("tail, racking_length and splice of ordering"),
    )
    exit_wall: Omissible[BoxWall] = Field(
        default=None,
        description="Wall of the box by which ducts leave toward the end of the run; they come in by the left.",
        examples=["right"],
        json_schema_extra=EXIT_WALL.stated,
    )
    spliced: Omissible[bool] = Field(
        default=None,
        description="Whether the circuits that pass are spliced there.",
        examples=[False],
        json_schema_extra=SPLICED.stated,
    )


CONFINED = {PlaceKind.MANHOLE, PlaceKind.VAULT}
