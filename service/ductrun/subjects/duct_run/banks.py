"""The bank of every stretch: that of the run, with other conduit or in other tiers, or the stretch's own."""

from __future__ import annotations

from typing import Any, NamedTuple

from ductrun.engineering.bank import Bank
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over
from ductrun.subjects.parts.bank import DuctBank, DuctLine, bank_of, counts_of, lines_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit


class DuctPlace(NamedTuple):
    """A duct of a bank: its name, its conduit, and the sheet of that."""

    name: str
    conduit: ListedConduit | MeasuredConduit
    sheet: Worksheet


class RunBank(NamedTuple):
    """The bank of a stretch: as given with its sheet, its ducts placed, and each in order from the bottom left."""

    given: DuctBank
    sheet: Worksheet
    placed: Bank
    lines: list[DuctLine]
    ducts: list[DuctPlace]

    @property
    def below_the_top(self) -> float:
        """How far the center of the lowest duct lies below the top of the ducts [m]."""
        return self.placed.height - min(duct.y for duct in self.placed.ducts)


def bank_here(request: DuctRunRequest, stretch: Stretch, index: int, sheet: Worksheet) -> tuple[DuctBank, Worksheet]:
    """Give the bank of a stretch and its sheet; refuses a stretch without one, and with two."""
    here = sheet.within(f"stretches/{index}")
    _refuse_two(stretch, here)
    if stretch.bank is not None:
        return stretch.bank, here.within("bank")
    if request.bank is None:
        words = "Give the bank of the run, or one of the stretch."
        raise UnanswerableError(sheet.fault("bank", "missing", words))
    shared, place = request.bank, sheet.within("bank")
    own: dict[str, Any] = {}
    redirected: dict[str, str] = {}
    if stretch.tiers is not None:
        own |= {"tiers": _rearranged(shared, stretch, place, here), "tier_ducts": None, "signal_ducts": None}
        redirected["tiers"] = here.pointer("tiers")
    if stretch.conduit is not None:
        own |= _of_conduit(shared, stretch.conduit)
        redirected["conduit"] = here.pointer("conduit")
    if stretch.conduit_type is not None:
        own["conduit"] = _of_type(shared.conduit, stretch.conduit_type, here)
        if shared.tier_ducts:
            own["tier_ducts"] = _tiers_of_type(shared, stretch.conduit_type, here)
    if not own:
        return shared, place
    return laid_over(shared, own), LayeredSheet(place, here, redirected, here.place)


def place_bank(given: DuctBank, sheet: Worksheet) -> RunBank:
    """Place the ducts of a bank, and name each."""
    placed = bank_of(given, sheet)
    lines = lines_of(given, sheet)
    ducts: list[DuctPlace] = []
    for line in lines:
        before = sum(duct.name.startswith(f"{line.tier + 1}-") for duct in ducts)
        ducts += [
            DuctPlace(f"{line.tier + 1}-{before + position}", line.conduit, line.place)
            for position in range(1, line.duct_count + 1)
        ]
    return RunBank(given, sheet, placed, lines, ducts)


def _refuse_two(stretch: Stretch, here: Worksheet) -> None:
    given = [name for name in ("bank", "conduit", "conduit_type") if getattr(stretch, name) is not None]
    if len(given) > 1:
        raise UnanswerableError(here.fault(given[1], "one_of_two", f"Give either {given[0]} or {given[1]}, not both."))
    if stretch.bank is not None and stretch.tiers is not None:
        raise UnanswerableError(here.fault("tiers", "one_of_two", "Give either bank or tiers, not both."))


def _rearranged(shared: DuctBank, stretch: Stretch, place: Worksheet, here: Worksheet) -> list[int]:
    """Give the tiers of a stretch; refuses another number of ducts, and ducts that differ."""
    tiers = stretch.tiers or []
    count = sum(counts_of(shared, place))
    if sum(tiers) != count:
        raise UnanswerableError(
            here.fault(
                "tiers",
                "other_number_of_ducts",
                f"The bank has {count} ducts, these tiers {sum(tiers)}.",
                maximum=count,
            )
        )
    if shared.tier_ducts or any(shared.signal_ducts or ()):
        raise UnanswerableError(
            here.fault("tiers", "ducts_differ", "Where ducts differ, give the bank of this stretch as a whole.")
        )
    return tiers


def _of_conduit(shared: DuctBank, conduit: ListedConduit | MeasuredConduit) -> dict[str, Any]:
    if not shared.tier_ducts:
        return {"conduit": conduit}
    alike = [[laid_over(line, {"conduit": None}) for line in tier] for tier in shared.tier_ducts]
    return {"conduit": conduit, "tier_ducts": alike}


def _of_type(conduit: ListedConduit | MeasuredConduit, kind: ConduitType, here: Worksheet) -> ListedConduit:
    """Give a conduit of the same size and another type; refuses a size that is not known or that the type lacks."""
    size = conduit.trade_size
    if size is None or size not in SIZES[kind]:
        what = "no trade size to keep" if size is None else f"trade size {size}, which {kind} has not on file"
        raise UnanswerableError(
            here.fault(
                "conduit_type",
                "trade_size_not_listed",
                f"The duct has {what}: give the conduit of this stretch instead.",
                [other for other, sizes in SIZES.items() if size in sizes],
            )
        )
    return ListedConduit(kind="listed", type=kind, trade_size=size)


def _tiers_of_type(shared: DuctBank, kind: ConduitType, here: Worksheet) -> list[list[Any]]:
    return [
        [
            line if line.conduit is None else laid_over(line, {"conduit": _of_type(line.conduit, kind, here)})
            for line in tier
        ]
        for tier in shared.tier_ducts or ()
    ]
