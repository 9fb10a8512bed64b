"""The cable to order for a pull: route, tails, racking and splices, waste, and whether it comes off a reel."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import round_down, round_up
from ductrun.kit import answers
from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number, quantity
from ductrun.kit.forms import CableTail, Form, Omissible, Percent, ReelLength
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.cable_set import CableSet
from ductrun.units import Length

TAIL = quantity("cable_order.tail", Length)
RACKING = quantity("cable_order.racking_length", Length)
SPLICE = quantity("cable_order.splice", Length)
WASTE = number("cable_order.waste_percent")
INCREMENT = quantity("cable_order.increment", Length)


class CableOrder(Form):
    """What is added to the route at each of its two ends, and how the cable comes."""

    tail: Omissible[CableTail] = Field(
        default=None,
        description="Cable beyond the conduit at each end, for grip, pull-through and termination.",
        examples=[{"value": 10, "unit": "ft"}],
        json_schema_extra=TAIL.stated,
    )
    racking_length: Omissible[CableTail] = Field(
        default=None,
        description="Cable around the walls of a manhole or vault, at each end.",
        examples=[{"value": 12, "unit": "ft"}],
        json_schema_extra=RACKING.stated,
    )
    splice: Omissible[CableTail] = Field(
        default=None,
        description="Cable cut away at a splice, at each end.",
        examples=[{"value": 3, "unit": "ft"}],
        json_schema_extra=SPLICE.stated,
    )
    waste_percent: Omissible[Percent] = Field(
        default=None, description="Waste added to the length.", examples=[2], json_schema_extra=WASTE.stated
    )
    reel_length: Omissible[ReelLength] = Field(
        default=None, description="Cable on one reel.", examples=[{"value": 1000, "unit": "ft"}]
    )


class OrderedLine(NamedTuple):
    """What to order of one line of so many cables: the `length` of one [m], without waste as `exact_length` [m], what
    is ordered of each, and the reels.
    """

    cable_count: int
    exact_length: float
    waste_percent: float
    length: float
    order_length: Length
    reel_count: int | None


class OrderedCable(Struct, frozen=True, gc=False):
    """What to order of one line of cables."""

    count: Annotated[int, Meta(description="Cables of this line.")]
    length: Annotated[answers.Length, Meta(description="One cable: route, tails, racking, splices and waste.")]
    order_length: Annotated[answers.Length, Meta(description="One cable, rounded up to a length that is sold.")]
    total_order_length: Annotated[answers.Length, Meta(description="All cables of the line.")]
    reel_count: Annotated[
        int | UnsetType, Meta(description="Reels, if their length was given and holds one cable.")
    ] = UNSET


def cables_to_order(
    given: CableOrder,
    cables: CableSet,
    route_length: float,
    sheet: Worksheet,
    allowances: Sequence[Length | None] = (None, None),
) -> list[OrderedLine]:
    """Give what to order of each line of cables for a route of some length [m].

    `allowances` are what cable needs beyond either end, where that is known as a whole.
    """
    beyond = sum([_beyond(given, sheet) if allowance is None else allowance.si for allowance in allowances])
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE)
    length = (route_length + beyond) * (1 + waste / 100)
    order = Length(round_up(length / INCREMENT.value.si) * INCREMENT.value.value, INCREMENT.value.unit)
    reels = None if given.reel_length is None else round_down(given.reel_length.si / order.si)
    if reels == 0 and given.reel_length is not None:
        told, most = sheet.tell.given(order), sheet.tell.given(given.reel_length)
        sheet.find(
            Severity.CAUTION,
            "longer_than_a_reel",
            f"One cable takes {text_of(told)}; a reel holds {text_of(most)}. Order longer reels, or divide the run by "
            "a splice.",
            PRACTICE,
            told,
            most,
            member="reel_length",
        )
    return [
        OrderedLine(
            line.cable_count,
            route_length + beyond,
            waste,
            length,
            order,
            round_up(line.cable_count / reels) if reels else None,
        )
        for line in cables.lines
    ]


def _beyond(given: CableOrder, sheet: Worksheet) -> float:
    """Give the cable beyond an end [m]."""
    tail = sheet.settle("tail", given.tail, TAIL).si
    racking = sheet.settle("racking_length", given.racking_length, RACKING).si
    return tail + racking + sheet.settle("splice", given.splice, SPLICE).si


def told_order(lines: list[OrderedLine] | None, telling: Telling) -> list[OrderedCable] | UnsetType:
    """Tell what to order, if it was asked for."""
    if lines is None:
        return UNSET
    return [
        OrderedCable(
            count=line.cable_count,
            length=telling.distance(line.length),
            order_length=telling.given(line.order_length),
            total_order_length=telling.given(
                Length(line.order_length.value * line.cable_count, line.order_length.unit)
            ),
            reel_count=UNSET if line.reel_count is None else line.reel_count,
        )
        for line in lines
    ]
