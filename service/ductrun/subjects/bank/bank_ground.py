"""The ground of a bank: a bare conductor in its concrete, from end to end."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.kit import answers
from ductrun.kit.defaults import count, number, quantity
from ductrun.kit.forms import CableTail, Form, Omissible, Percent
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.choices import ConductorSize
from ductrun.units import Length

CONDUCTOR_COUNT = count("bank_ground.conductor_count")
END_LENGTH = quantity("bank_ground.end_length", Length)
WASTE_PERCENT = number("bank_ground.waste_percent")


class BankGround(Form):
    """Bare conductors in the envelope."""

    size: ConductorSize = Field(description="Size of the conductor.", examples=["4/0 AWG"])
    conductor_count: Omissible[Annotated[int, Field(ge=1, le=20)]] = Field(
        default=None,
        description="Conductors beside each other.",
        examples=[1],
        json_schema_extra=CONDUCTOR_COUNT.stated,
    )
    end_length: Omissible[CableTail] = Field(
        default=None,
        description="What each conductor needs beyond each end of the bank.",
        examples=[{"value": 5, "unit": "ft"}],
        json_schema_extra=END_LENGTH.stated,
    )
    waste_percent: Omissible[Percent] = Field(
        default=None,
        description="Waste on the length, in percent.",
        examples=[5],
        json_schema_extra=WASTE_PERCENT.stated,
    )


class Grounding(NamedTuple):
    """The conductors of a ground: their size, their length [m] together, and with waste."""

    size: ConductorSize
    length: float
    order: float


class BankGroundTakeoff(Struct, frozen=True, gc=False):
    """The conductors of the ground."""

    size: Annotated[ConductorSize, Meta(description="Size of the conductors.")]
    conductor_length: Annotated[answers.Length, Meta(description="All conductors with both their ends.")]
    order_length: Annotated[answers.Length, Meta(description="All conductors with both their ends, with waste.")]


def ground(given: BankGround, length: float, sheet: Worksheet) -> Grounding:
    """Give the conductors of the ground of a bank of a length [m]."""
    conductors = sheet.settle("conductor_count", given.conductor_count, CONDUCTOR_COUNT)
    beyond = sheet.settle("end_length", given.end_length, END_LENGTH).si
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE_PERCENT)
    laid = conductors * (length + 2 * beyond)
    sheet.show(
        "L_ground",
        "conductors x (L + 2 ends)",
        f"{conductors} x ({length:.6g} m + 2 x {beyond:.6g} m)",
        sheet.tell.distance(laid),
    )
    return Grounding(given.size, laid, laid * (1 + waste / 100))


def told_ground(found: Grounding, tell: Telling) -> BankGroundTakeoff:
    """Tell the conductors of a ground."""
    return BankGroundTakeoff(found.size, tell.distance(found.length), tell.distance(found.order))
