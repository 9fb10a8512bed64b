"""Entries of a box and the circuits in them, as they are asked."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule, count, flag
from ductrun.kit.forms import Form, Omissible, between
from ductrun.kit.texts import Name
from ductrun.subjects.boxes.choices import BoxWall
from ductrun.subjects.parts.cables import PulledLines
from ductrun.subjects.parts.conduit import Conduit
from ductrun.units import Length

ROW = count("box.row")
SPLICED = flag("box.spliced")
MOST_ENTRIES, MOST_CIRCUITS, MOST_IN_ONE = 100, 100, 6
MOST_SPLICED = 8  # entries of one circuit
BoxLength = Annotated[Length, between(Length, 0.1, 1_200, "in")]
EntryPlace = Annotated[Length, between(Length, 0, 1_200, "in")]


class BoxEntry(Form):
    """A raceway that enters a box, or above the threshold voltage a cable."""

    wall: BoxWall = Field(description="Wall it enters through.", examples=["left"])
    row: Omissible[Annotated[int, Field(ge=1, le=20)]] = Field(
        default=None,
        description="Row of its wall, from 1 at the back; of the back itself from the bottom.",
        examples=[1],
        json_schema_extra=ROW.stated,
    )
    position: Omissible[EntryPlace] = Field(
        default=None,
        description="Its center along the row, from the left or from the bottom of the wall.",
        examples=[{"value": 6, "unit": "in"}],
    )
    offset: Omissible[EntryPlace] = Field(
        default=None,
        description="Its center across the row, from the back of the box; in the back itself from the bottom.",
        examples=[{"value": 3, "unit": "in"}],
    )
    conduit: Omissible[Conduit] = Field(
        default=None,
        description="Its raceway; needed to the threshold voltage, over which the cables alone decide.",
    )
    circuits: Annotated[list[Name], Field(min_length=1, max_length=MOST_IN_ONE)] = Field(
        description="Names of the circuits in it.", examples=[["feeder 1"]]
    )


class BoxCircuit(Form):
    """Conductors that enter a box together and leave it together."""

    name: Name = Field(description="Its name, by which the entries speak of it.", examples=["feeder 1"])
    cables: Omissible[PulledLines] = Field(
        default=None,
        description="Its cables, all of those in one raceway; needed over the threshold voltage.",
        json_schema_extra=by_rule("to the threshold voltage conductors of 4 AWG or larger, which ask for more room"),
    )
    spliced: Omissible[bool] = Field(
        default=None,
        description="Whether it is spliced or tapped in the box.",
        examples=[False],
        json_schema_extra=SPLICED.stated,
    )


Entries = Annotated[list[BoxEntry], Field(min_length=1, max_length=MOST_ENTRIES)]
Circuits = Annotated[list[BoxCircuit], Field(min_length=1, max_length=MOST_CIRCUITS)]
