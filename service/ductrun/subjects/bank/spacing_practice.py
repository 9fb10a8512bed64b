"""How spacers are specified: their interval, and the pieces at a station."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.kit.defaults import choice, count, number, quantity
from ductrun.kit.forms import Form, Interval, Offset, Omissible, Percent
from ductrun.subjects.bank.choices import PieceSystem, SpacerPreset, TopClosure
from ductrun.units import Length

INTERVAL = quantity("spacers.interval", Length).written_as(lambda value: {"kind": "distance", "distance": value})
END_OFFSET = quantity("spacers.end_offset", Length)
DUCTS_PER_SPACER = count("spacers.ducts_per_spacer")
TOP_CLOSURE = choice("spacers.top_closure", TopClosure)
WASTE_PERCENT = number("spacers.waste_percent")
PIECE_SYSTEM = choice("spacers.piece_system", PieceSystem)
SHARED_END_COUNT = count("spacers.shared_end_count")


class DistanceInterval(Form):
    """Stations no more than a distance apart, ends included."""

    kind: Literal["distance"] = Field(description="Fixed text that says: by distance.")
    distance: Interval = Field(description="Greatest distance between stations.", examples=[{"value": 8, "unit": "ft"}])


class PerStickInterval(Form):
    """So many stations for each stick of duct."""

    kind: Literal["per_stick"] = Field(description="Fixed text that says: by stick.")
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="Stations for each stick.", examples=[2])
    stick_length: Interval = Field(description="Length of a stick.", examples=[{"value": 10, "unit": "ft"}])


class PresetInterval(Form):
    """The interval of a published specification or of the trade, by name."""

    kind: Literal["preset"] = Field(description="Fixed text that says: by a specification.")
    preset: SpacerPreset = Field(description="The specification.", examples=["cegs_4ft"])


SpacerInterval = TypeAliasType(
    "SpacerInterval",
    Annotated[
        DistanceInterval | PerStickInterval | PresetInterval,
        Field(
            discriminator="kind",
            description="How far apart spacers stand: a distance, so many a stick, or the interval of a specification.",
        ),
    ],
)


class Spacing(Form):
    """How spacers are specified."""

    interval: Omissible[SpacerInterval] = Field(
        default=None,
        description="How far apart the stations stand.",
        json_schema_extra=INTERVAL.stated,
    )
    end_offset: Omissible[Offset] = Field(
        default=None,
        description="Distance of the first and last station from the ends, for an interval by distance.",
        examples=[{"value": 1, "unit": "ft"}],
        json_schema_extra=END_OFFSET.stated,
    )
    duct_count_per_spacer: Omissible[Annotated[int, Field(ge=1, le=20)]] = Field(
        default=None,
        description="Ducts that one piece carries side by side.",
        examples=[1],
        json_schema_extra=DUCTS_PER_SPACER.stated,
    )
    piece_system: Omissible[PieceSystem] = Field(
        default=None,
        description="Whether a piece carries a few ducts, a whole tier or the whole bank.",
        examples=["pieces"],
        json_schema_extra=PIECE_SYSTEM.stated,
    )
    shared_end_count: Omissible[Annotated[int, Field(ge=0, le=2)]] = Field(
        default=None,
        description="Ends of this segment whose station belongs to the segment it meets; 0 between manholes.",
        examples=[0],
        json_schema_extra=SHARED_END_COUNT.stated,
    )
    stick_length: Omissible[Interval] = Field(
        default=None,
        description="Length of a stick, to keep stations clear of the joints.",
        examples=[{"value": 20, "unit": "ft"}],
    )
    top_closure: Omissible[TopClosure] = Field(
        default=None,
        description="What closes each stack above the top ducts.",
        examples=["none"],
        json_schema_extra=TOP_CLOSURE.stated,
    )
    waste_percent: Omissible[Percent] = Field(
        default=None,
        description="Extra pieces to order, in percent.",
        examples=[5],
        json_schema_extra=WASTE_PERCENT.stated,
    )
