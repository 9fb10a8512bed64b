"""Ducts as they lie under earth: the bank, each kind of duct in each of its tiers, and the concrete around them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.bank import Bank, Envelope
from ductrun.subjects.ground.loaded_ducts import LoadedDuct


class LaidKind(NamedTuple):
    """The like ducts of a `tier` (index): the `duct`, how much deeper its top lies than that of the bank [m], and how
    high its bottom lies above that of the bank [m].
    """

    tier: int
    duct: LoadedDuct
    deeper: float
    bottom: float


class Laid(NamedTuple):
    """Ducts as they lie: the bank, every kind of duct in its tiers, the one that each duct of the bank is (index), and
    the concrete around them, None where they are bare.
    """

    bank: Bank
    kinds: list[LaidKind]
    kind_of: list[int]
    concrete: Envelope | None

    @property
    def concrete_above(self) -> float:
        """Concrete [m] over the top of the ducts."""
        return 0.0 if self.concrete is None or self.concrete.concrete is None else self.concrete.concrete.top


def lay(bank: Bank, ducts: Sequence[LoadedDuct], concrete: Envelope | None) -> Laid:
    """Lay the ducts of a bank, in the order of their places: those of one tier that differ only in where they are given
    are of one kind.
    """
    known: dict[tuple[object, ...], int] = {}
    kinds: list[LaidKind] = []
    kind_of = []
    for place, duct in zip(bank.ducts, ducts, strict=True):
        key = (place.tier, *duct._replace(place=None))  # type: ignore[arg-type]
        if key not in known:
            known[key] = len(kinds)
            bottom = bank.tier_bottoms[place.tier]
            kinds.append(LaidKind(place.tier, duct, bank.height - (bottom + place.diameter), bottom))
        kind_of.append(known[key])
    return Laid(bank, kinds, kind_of, concrete)
