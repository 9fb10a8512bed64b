"""The duct bank of a request, and the one geometry made of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import bank as engineering
from ductrun.engineering.rounding import TIE, under
from ductrun.kit import answers
from ductrun.kit.backing import WORKED_OUT, backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, choice, quantity
from ductrun.kit.forms import Clearance, Form, Omissible
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.choices import BankAlignment, SeparationMeasure
from ductrun.subjects.parts.conduit import Conduit, ListedConduit, MeasuredConduit, outside_diameter
from ductrun.tables import TABLES
from ductrun.units import Length

_PUBLISHED = {
    services: sorted(
        (row for row in TABLES["duct_separations"] if row.services == services), key=lambda row: row.separation_in
    )
    for services in ("like_services", "power_to_signal")
}


def _with_spread(default: Default[Length], services: str) -> Default[Length]:
    """Tell the published spread with the default."""
    low, *_, high = _PUBLISHED[services]
    spread = f"published from {low.separation_in:g} to {high.separation_in:g} in"
    return default.noting(spread)


HORIZONTAL_SEPARATION = _with_spread(quantity("bank.horizontal_separation", Length), "like_services")
VERTICAL_SEPARATION = _with_spread(quantity("bank.vertical_separation", Length), "like_services")
POWER_SIGNAL_SEPARATION = _with_spread(quantity("bank.power_signal_separation", Length), "power_to_signal")
_LEAST = {services: Length.parse(rows[0].separation_in, "in") for services, rows in _PUBLISHED.items()}
SEPARATION_MEASURE = choice("bank.separation_measure", SeparationMeasure)
ALIGNMENT = choice("bank.alignment", BankAlignment)

MOST_TIERS, MOST_IN_A_TIER = 30, 40
Tiers = Annotated[list[Annotated[int, Field(ge=1, le=MOST_IN_A_TIER)]], Field(min_length=1, max_length=MOST_TIERS)]


class DuctBank(Form):
    """Ducts in tiers."""

    conduit: Conduit = Field(description="The duct; of every tier, unless tier_conduits says otherwise.")
    tiers: Tiers = Field(description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 3]])
    tier_conduits: Omissible[Annotated[list[Conduit], Field(max_length=MOST_TIERS)]] = Field(
        default=None, description="The duct of each tier, the bottom tier first, where they differ."
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


class PlacedDuct(Struct, frozen=True, gc=False):
    """One duct of the bank, from the lower left corner of the bank without its cover."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.")]
    x: Annotated[answers.Length, Meta(description="Distance of its center to the right.")]
    y: Annotated[answers.Length, Meta(description="Distance of its center upward.")]
    outside_diameter: answers.Length
    signal: Annotated[bool, Meta(description="Whether it carries signals.")]


def caution_overhang(tiers: Sequence[int], sheet: Worksheet) -> None:
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
                member=f"tiers/{index}",
            )


def _check_lists(bank: DuctBank, sheet: Worksheet) -> None:
    if not bank.tier_conduits and not bank.signal_ducts:
        return
    faults = [
        sheet.fault(
            name,
            "one_for_each_tier",
            f"Give one for each of the {len(bank.tiers)} tiers.",
            minimum=len(bank.tiers),
            maximum=len(bank.tiers),
        )
        for name, given in (("tier_conduits", bank.tier_conduits), ("signal_ducts", bank.signal_ducts))
        if given and len(given) != len(bank.tiers)
    ]
    faults += [
        sheet.fault(
            f"signal_ducts/{index}",
            "more_than_the_tier",
            f"Ducts of the tier: {ducts}; no more can carry signals.",
            maximum=ducts,
        )
        for index, (signal, ducts) in enumerate(zip(bank.signal_ducts or (), bank.tiers, strict=False))
        if signal > ducts
    ]
    if faults:
        raise UnanswerableError(*faults)


def conduits_of(bank: DuctBank, sheet: Worksheet) -> list[tuple[ListedConduit | MeasuredConduit, Worksheet]]:
    """Give the conduit of every tier with the sheet of its place, or the one of all tiers alone."""
    if not bank.tier_conduits:
        return [(bank.conduit, sheet.within("conduit"))]
    return [(conduit, sheet.within(f"tier_conduits/{index}")) for index, conduit in enumerate(bank.tier_conduits)]


def _diameters(bank: DuctBank, sheet: Worksheet) -> list[float]:
    """Give the outside diameter of the ducts of every tier [m]."""
    if not bank.tier_conduits:
        return [outside_diameter(bank.conduit, sheet.within("conduit"))] * len(bank.tiers)
    faults = Gathering()
    diameters: list[float] = []
    for conduit, place in conduits_of(bank, sheet):
        with faults:
            diameters.append(outside_diameter(conduit, place))
    faults.stop()
    return diameters


def _caution_separations(gaps: engineering.Gaps, sheet: Worksheet) -> None:
    """Caution where ducts lie closer than any publication on file has them."""
    for member, gap, services in (
        ("horizontal_separation", gaps.across, "like_services"),
        ("vertical_separation", gaps.between, "like_services"),
        ("power_signal_separation", gaps.power_signal, "power_to_signal"),
    ):
        if under(gap, _LEAST[services].si):
            row, told, least = _PUBLISHED[services][0], sheet.tell.size(gap), sheet.tell.given(_LEAST[services])
            sheet.cite(row.source)
            sheet.find(
                Severity.CAUTION,
                "closer_than_published",
                f"Ducts lie {text_of(told)} clear of each other, less than the {text_of(least)} that is the least on "
                f"file for {services.replace('_', ' ')}: what is placed around them may not fill the gap, and they "
                "warm each other.",
                backing_of(row),
                told,
                least,
                member=member,
            )


def _refuse_overlaps(gaps: engineering.Gaps, diameter: float, sheet: Worksheet) -> None:
    """Refuse separations between centers that are smaller than the ducts, each by its member."""
    members = zip(gaps, ("horizontal_separation", "vertical_separation", "power_signal_separation"), strict=True)
    least = sheet.tell.size(diameter)
    faults = [
        sheet.fault(
            member,
            "ducts_overlap",
            "Measured between centers, the separation is smaller than the ducts: they would overlap.",
            minimum=least,
        )
        for gap, member in members
        if gap < -TIE
    ]
    if faults:
        raise UnanswerableError(*faults)


def bank_of(bank: DuctBank, sheet: Worksheet) -> engineering.Bank:
    """Place the ducts of a bank; refuses separations in which ducts would overlap."""
    _check_lists(bank, sheet)
    diameters = _diameters(bank, sheet)
    signal = bank.signal_ducts or [0] * len(bank.tiers)
    across = sheet.settle("horizontal_separation", bank.horizontal_separation, HORIZONTAL_SEPARATION).si
    between = sheet.settle("vertical_separation", bank.vertical_separation, VERTICAL_SEPARATION).si
    mixed = across
    if any(signal):
        mixed = sheet.settle("power_signal_separation", bank.power_signal_separation, POWER_SIGNAL_SEPARATION).si
    measure = sheet.settle("separation_measure", bank.separation_measure, SEPARATION_MEASURE)
    alignment = ALIGNMENT.value
    if len(set(bank.tiers)) > 1 or len(set(diameters)) > 1 or any(signal):
        alignment = sheet.settle("alignment", bank.alignment, ALIGNMENT)
    placed = engineering.place(
        [engineering.Tier(*tier) for tier in zip(bank.tiers, diameters, signal, strict=True)],
        across,
        between,
        mixed,
        engineering.Alignment(alignment),
        center_to_center=measure is SeparationMeasure.CENTER_TO_CENTER,
    )
    _refuse_overlaps(placed.gaps, max(diameters), sheet)
    caution_overhang(bank.tiers, sheet)
    _caution_separations(placed.gaps, sheet)
    return placed


def told_ducts(bank: engineering.Bank, tell: Telling) -> list[PlacedDuct]:
    """Tell where every duct lies."""
    size = tell.size
    return [
        PlacedDuct(duct.tier + 1, size(duct.x), size(duct.y), size(duct.diameter), duct.signal) for duct in bank.ducts
    ]
