"""What is said of a box beside its entries: what it is, how it opens, how large it is or may be bought."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule, choice, quantity
from ductrun.kit.forms import BendRadius, Clearance, Form, Omissible
from ductrun.subjects.boxes.choices import BoxWall, Structure
from ductrun.subjects.boxes.entries import BoxLength
from ductrun.units import Length

STRUCTURE = choice("box.structure", Structure)
REMOVABLE_COVER = choice("box.removable_cover", BoxWall)
STRAIGHT_OUT = quantity("box.racking_straight", Length)
SPLICE_WALL = quantity("box.splice_wall", Length)
MOST_SIZES = 50


class BoxSize(Form):
    """Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of the raceways."""

    length: BoxLength = Field(description="From left to right.", examples=[{"value": 36, "unit": "in"}])
    width: BoxLength = Field(description="From bottom to top.", examples=[{"value": 24, "unit": "in"}])
    depth: BoxLength = Field(description="From back to front.", examples=[{"value": 8, "unit": "in"}])


class Racking(Form):
    """How cable leads from its ducts to the racks on a wall of a manhole, along its length."""

    offset: Clearance = Field(
        description="How far the racks lie aside of the ducts; none where the ducts face each other.",
        examples=[{"value": 12, "unit": "in"}],
    )
    straight_out: Omissible[Clearance] = Field(
        default=None,
        description="Straight out of the duct, before the cable bends.",
        examples=[{"value": 12, "unit": "in"}],
        json_schema_extra=STRAIGHT_OUT.stated,
    )
    splice_wall: Omissible[BoxLength] = Field(
        default=None,
        description="Wall that a splice takes between the bends, where a circuit is spliced.",
        examples=[{"value": 6, "unit": "ft"}],
        json_schema_extra=SPLICE_WALL.stated,
    )
    bending_radius: Omissible[BendRadius] = Field(
        default=None,
        description="Least radius to the inner side of the cable.",
        examples=[{"value": 18, "unit": "in"}],
        json_schema_extra=by_rule("that of the cables, and 12 times the diameter of the largest at least"),
    )


class BoxAtHand(Form):
    """How a box opens, how large it is or may be bought, and how cable is racked in it."""

    removable_cover: Omissible[BoxWall] = Field(
        default=None,
        description="The side that comes off: opposite to it conductors need only the room to bend.",
        examples=["front"],
        json_schema_extra=REMOVABLE_COVER.stated,
    )
    box: Omissible[BoxSize] = Field(
        default=None, description="The box as planned or built, held against what it must measure."
    )
    box_sizes: Omissible[Annotated[list[BoxSize], Field(min_length=1, max_length=MOST_SIZES)]] = Field(
        default=None,
        description="Boxes that can be had: the smallest that holds the entries is named. A box that is given "
        "is judged by itself.",
    )
    racking: Omissible[Racking] = Field(default=None, description="Racks for the cable, in a manhole.")


class Boxing(BoxAtHand):
    """A box, handhole or manhole."""

    structure: Omissible[Structure] = Field(
        default=None, description="What it is.", examples=["pull_box"], json_schema_extra=STRUCTURE.stated
    )
