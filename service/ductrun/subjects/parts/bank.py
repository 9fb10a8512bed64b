"""The duct bank of a request, and the one geometry made of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import bank as engineering
from ductrun.kit import answers
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, choice
from ductrun.kit.forms import Clearance, Form, Omissible
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.choices import BankAlignment, SeparationMeasure
from ductrun.subjects.parts.conduit import Conduit, ListedConduit, MeasuredConduit, outside_diameter
from ductrun.subjects.parts.separations import (
    HORIZONTAL_SEPARATION,
    POWER_SIGNAL_SEPARATION,
    VERTICAL_SEPARATION,
    caution_separations,
    refuse_overlaps,
)

SEPARATION_MEASURE = choice("bank.separation_measure", SeparationMeasure)
ALIGNMENT = choice("bank.alignment", BankAlignment)

MOST_TIERS, MOST_IN_A_TIER = 30, 40
TierCount = Annotated[int, Field(ge=1, le=MOST_IN_A_TIER)]
Tiers = Annotated[list[TierCount], Field(min_length=1, max_length=MOST_TIERS)]


class DuctsBeside(Form):
    """Like ducts beside each other in a tier."""

    count: TierCount = Field(description="How many ducts.", examples=[2])
    conduit: Omissible[Conduit] = Field(
        default=None, description="The duct.", json_schema_extra=by_rule("the conduit of the bank")
    )


TierDucts = Annotated[
    list[Annotated[list[DuctsBeside], Field(min_length=1, max_length=MOST_IN_A_TIER)]], Field(max_length=MOST_TIERS)
]


class DuctBank(Form):
    """Ducts in tiers: of one kind (tiers), or of several (tier_ducts)."""

    conduit: Conduit = Field(description="The duct; every one, but those of tier_ducts that have their own.")
    tiers: Omissible[Tiers] = Field(
        default=None, description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 3]]
    )
    tier_ducts: Omissible[TierDucts] = Field(
        default=None,
        description="In place of tiers, where ducts differ: those of each tier from left to right, the bottom tier "
        "first. The ducts of a tier stand on one level.",
        examples=[[[{"count": 3}], [{"count": 2}, {"count": 1}]]],
    )
    signal_ducts: Omissible[
        Annotated[list[Annotated[int, Field(ge=0, le=MOST_IN_A_TIER)]], Field(max_length=MOST_TIERS)]
    ] = Field(
        default=None,
        description="How many ducts of each tier, the last ones, carry signals beside power.",
        examples=[[0, 0, 1]],
    )
    horizontal_separation: Omissible[Clearance] = Field(
        default=None,
        description="Distance between ducts of a tier.",
        examples=[{"value": 2, "unit": "in"}],
        json_schema_extra=HORIZONTAL_SEPARATION.stated,
    )
    vertical_separation: Omissible[Clearance] = Field(
        default=None,
        description="Distance between tiers.",
        examples=[{"value": 2, "unit": "in"}],
        json_schema_extra=VERTICAL_SEPARATION.stated,
    )
    power_signal_separation: Omissible[Clearance] = Field(
        default=None,
        description="Distance between a power and a signal duct.",
        examples=[{"value": 4, "unit": "in"}],
        json_schema_extra=POWER_SIGNAL_SEPARATION.stated,
    )
    separation_measure: Omissible[SeparationMeasure] = Field(
        default=None,
        description="Whether the distances are clear or between centers.",
        examples=["clear"],
        json_schema_extra=SEPARATION_MEASURE.stated,
    )
    alignment: Omissible[BankAlignment] = Field(
        default=None,
        description="How tiers of different width stand on each other.",
        examples=["centered"],
        json_schema_extra=ALIGNMENT.stated,
    )


def duct_count(bank: DuctBank) -> int:
    """Count the ducts of a bank as given."""
    return sum(bank.tiers or ()) + sum(beside.count for tier in bank.tier_ducts or () for beside in tier)


def kind_count(bank: DuctBank) -> int:
    """Count the kinds of duct that a bank may have."""
    return sum(map(len, bank.tier_ducts or ())) or 1


class PlacedDuct(Struct, frozen=True, gc=False):
    """One duct of the bank, from the lower left corner of the bank without its cover."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.", ge=1)]
    x: Annotated[answers.Length, Meta(description="Distance of its center to the right.")]
    y: Annotated[answers.Length, Meta(description="Distance of its center upward.")]
    outside_diameter: Annotated[answers.Length, Meta(description="Outside diameter of the duct.")]
    signal: Annotated[bool, Meta(description="Whether it carries signals.")]


class DuctLine(NamedTuple):
    """Like ducts beside each other: the index of their tier, their number, their conduit and the sheet of its place."""

    tier: int
    duct_count: int
    conduit: ListedConduit | MeasuredConduit
    place: Worksheet


def counts_of(bank: DuctBank, sheet: Worksheet) -> list[int]:
    """Give the ducts of every tier, the bottom tier first; refuses a bank without tiers, and one with two of them."""
    if bank.tier_ducts and bank.tiers is None:
        return [sum([line.count for line in tier]) for tier in bank.tier_ducts]
    if bank.tiers is None or bank.tier_ducts:
        member, words = ("tiers", "") if bank.tiers is None else ("tier_ducts", ", not both")
        raise UnanswerableError(sheet.fault(member, "one_of_two", f"Give either tiers or tier_ducts{words}."))
    return bank.tiers


def caution_overhang(tiers: Sequence[int], sheet: Worksheet, member: str = "tiers") -> None:
    """Caution where a tier has more ducts than the one below it."""
    for index in range(1, len(tiers)):
        if tiers[index] > tiers[index - 1]:
            sheet.find(
                Severity.CAUTION,
                "tier_overhangs",
                f"Tier {index + 1} has {tiers[index]} ducts above {tiers[index - 1]}: the outer ducts have nothing to "
                "stand on. Tiers are given from the bottom.",
                WORKED_OUT,
                tiers[index],
                tiers[index - 1],
                member=f"{member}/{index}",
            )


def check_lists(bank: DuctBank, counts: Sequence[int], sheet: Worksheet) -> None:
    """Refuse tiers with more ducts than a tier holds, and signals that do not fit the tiers."""
    faults = [
        sheet.fault(
            f"tier_ducts/{index}",
            "more_than_a_tier",
            f"A tier holds {MOST_IN_A_TIER} ducts at most.",
            maximum=MOST_IN_A_TIER,
        )
        for index, count in enumerate(counts)
        if count > MOST_IN_A_TIER
    ]
    if bank.signal_ducts and len(bank.signal_ducts) != len(counts):
        words = f"Give one for each of the {len(counts)} tiers."
        faults.append(sheet.fault("signal_ducts", "one_for_each_tier", words, minimum=len(counts), maximum=len(counts)))
    faults += [
        sheet.fault(
            f"signal_ducts/{index}",
            "more_than_the_tier",
            f"Ducts of the tier: {ducts}; no more can carry signals.",
            maximum=ducts,
        )
        for index, (signal, ducts) in enumerate(zip(bank.signal_ducts or (), counts, strict=False))
        if signal > ducts
    ]
    if faults:
        raise UnanswerableError(*faults)


def lines_of(bank: DuctBank, sheet: Worksheet) -> list[DuctLine]:
    """Give the ducts of a bank that has its tiers, each kind of each tier in a line, the bottom tier first."""
    whole = sheet.within("conduit")
    if not bank.tier_ducts:
        return [DuctLine(tier, count, bank.conduit, whole) for tier, count in enumerate(bank.tiers or ())]
    return [
        DuctLine(tier, line.count, bank.conduit, whole)
        if line.conduit is None
        else DuctLine(tier, line.count, line.conduit, sheet.within(f"tier_ducts/{tier}/{index}/conduit"))
        for tier, lines in enumerate(bank.tier_ducts)
        for index, line in enumerate(lines)
    ]


def conduits_of(bank: DuctBank, sheet: Worksheet) -> list[tuple[ListedConduit | MeasuredConduit, Worksheet]]:
    """Give every conduit of a bank that is given, each once, with the sheet of its place."""
    if not bank.tier_ducts:
        return [(bank.conduit, sheet.within("conduit"))]
    return [(line.conduit, line.place) for line in {id(line.conduit): line for line in lines_of(bank, sheet)}.values()]


def tiers_of(bank: DuctBank, sheet: Worksheet) -> list[engineering.Tier]:
    """Give the tiers to place, the bottom one first; refuses every duct whose outside diameter is not known."""
    counts = counts_of(bank, sheet)
    if bank.tier_ducts or bank.signal_ducts:
        check_lists(bank, counts, sheet)
    caution_overhang(counts, sheet, "tier_ducts" if bank.tier_ducts else "tiers")
    signal = bank.signal_ducts or [0] * len(counts)
    if not bank.tier_ducts:
        diameter = outside_diameter(bank.conduit, sheet.within("conduit"))
        return [engineering.Tier((diameter,) * ducts, last) for ducts, last in zip(counts, signal, strict=True)]
    faults = Gathering()
    outside: dict[int, float] = {}
    for conduit, place in conduits_of(bank, sheet):
        with faults:
            outside[id(conduit)] = outside_diameter(conduit, place)
    faults.stop()
    diameters: list[list[float]] = [[] for _ in counts]
    for line in lines_of(bank, sheet):
        diameters[line.tier] += [outside[id(line.conduit)]] * line.duct_count
    return [engineering.Tier(tuple(ducts), last) for ducts, last in zip(diameters, signal, strict=True)]


def bank_of(bank: DuctBank, sheet: Worksheet) -> engineering.Bank:
    """Place the ducts of a bank; refuses separations in which ducts would overlap."""
    tiers = tiers_of(bank, sheet)
    across = sheet.settle("horizontal_separation", bank.horizontal_separation, HORIZONTAL_SEPARATION).si
    between = sheet.settle("vertical_separation", bank.vertical_separation, VERTICAL_SEPARATION).si
    mixed = across
    signals = any(bank.signal_ducts or ())
    if signals:
        mixed = sheet.settle("power_signal_separation", bank.power_signal_separation, POWER_SIGNAL_SEPARATION).si
    measure = sheet.settle("separation_measure", bank.separation_measure, SEPARATION_MEASURE)
    alignment = ALIGNMENT.value
    if signals or len(set(tiers)) > 1:
        alignment = sheet.settle("alignment", bank.alignment, ALIGNMENT)
    placed = engineering.place(
        tiers,
        across,
        between,
        mixed,
        engineering.Alignment(alignment),
        center_to_center=measure is SeparationMeasure.CENTER_TO_CENTER,
    )
    refuse_overlaps(placed, sheet)
    caution_separations(placed.gaps, sheet)
    return placed


def told_ducts(bank: engineering.Bank, tell: Telling) -> list[PlacedDuct]:
    """Tell where every duct lies."""
    size = tell.size
    return [
        PlacedDuct(tier + 1, size(x), size(y), size(diameter), signal) for x, y, diameter, tier, signal in bank.ducts
    ]
