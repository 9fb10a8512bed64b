"""The names of the ducts of a bank: `tier-position`, tier 1 at the bottom, position 1 at the left."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from pydantic import Field

from ductrun.engineering.bank import Bank
from ductrun.kit.texts import PlainText
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.bank import MOST_IN_A_TIER, MOST_TIERS

_LONGEST = len(f"{MOST_TIERS}-{MOST_IN_A_TIER}")
DuctName = Annotated[str, Field(min_length=3, max_length=_LONGEST, examples=["1-1"]), PlainText()]


def duct_names(bank: Bank) -> list[str]:
    """Give the name of every duct of a bank, in the order of its ducts."""
    names: list[str] = []
    tier, position = -1, 0
    for duct in bank.ducts:
        position = position + 1 if duct.tier == tier else 1
        tier = duct.tier
        names.append(f"{tier + 1}-{position}")
    return names


def ducts_of(names: Sequence[str], bank: Bank, sheet: Worksheet) -> list[int]:
    """Give the ducts that are named, as indices into the ducts of the bank; the sheet is that of the list of names."""
    known = {name: index for index, name in enumerate(duct_names(bank))}
    faults = [
        sheet.fault(
            str(index),
            "no_such_duct",
            "The bank has no duct of this name: a name is tier-position, tier 1 at the bottom, position 1 at the left. "
            f"It has {listing(list(known)[:40])}{' and more' if len(known) > 40 else ''}.",
            list(known)[:40],
        )
        for index, name in enumerate(names)
        if name not in known
    ]
    if faults:
        raise UnanswerableError(*faults)
    return [known[name] for name in names]
