"""The bank of every stretch: that of the run, with other conduit or in other tiers, or the stretch's own."""

from __future__ import annotations

from collections import Counter
from typing import Any, NamedTuple

from ductrun.engineering.bank import Bank
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.bank.duct_masses import walls_of
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.practice import LayeredSheet, MemberSheet, laid_over
from ductrun.subjects.duct_run.settings import BURIED
from ductrun.subjects.parts.bank import DuctBank, DuctLine, bank_of, check_lists, counts_of, lines_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit, find_row


class DuctPlace(NamedTuple):
    """A duct of a bank: its name, its conduit, and the sheet of that."""

    name: str
    tier: int
    conduit: ListedConduit | MeasuredConduit
    sheet: Worksheet


class RunBank(NamedTuple):
    """The bank of a stretch: as given with its sheet, its ducts placed, and each in order from the bottom left.

    `placed` is None where the ducts take no room and no outside diameter of some is known; `conduits` are those of the
    ducts, each once.
    """

    given: DuctBank
    sheet: Worksheet
    placed: Bank | None
    ducts: list[DuctPlace]
    conduits: list[ListedConduit | MeasuredConduit]

    @property
    def in_its_place(self) -> Bank:
        """The ducts placed, where they take room."""
        assert self.placed is not None  # noqa: S101  (what takes room was placed, or refused)
        return self.placed

    @property
    def below_the_top(self) -> float:
        """How far the center of the lowest duct lies below the top of the ducts [m]."""
        return self.in_its_place.height - min(duct.y for duct in self.in_its_place.ducts)

    @property
    def wall_below(self) -> float:
        """The wall under the bore of the lowest ducts [m]: the thinnest of them, none where a bore is not on file."""
        walls = walls_of(self.given, self.sheet)
        return min([wall.wall or 0.0 for wall in walls if wall.tier == 0])


def banks_of(request: DuctRunRequest, sheet: Worksheet) -> list[RunBank]:
    """Place the bank of every stretch, alike ones once; refuses stretches of another number of ducts."""
    faults = Gathering()
    known: dict[tuple[object, ...], RunBank] = {}
    banks = []
    for index, stretch in enumerate(request.stretches):
        room = _takes_room(stretch)
        key = (room, id(stretch.bank), id(stretch.conduit), stretch.conduit_type, tuple(stretch.tiers or ()))
        with faults:
            if key not in known:
                known[key] = _place_bank(*_bank_here(request, stretch, index, sheet), takes_room=room)
            banks.append(known[key])
            count = len(banks[0].ducts)
            if len(known[key].ducts) != count:
                words = f"The first stretch has {count} ducts, this one {len(known[key].ducts)}: give as many."
                raise UnanswerableError(sheet.fault(f"stretches/{index}/bank", "other_number_of_ducts", words))
    faults.stop()
    return banks


def _takes_room(stretch: Stretch) -> bool:
    """Say whether the outside of its ducts counts in a stretch: in what is dug, poured, or floats."""
    setting = stretch.setting
    return setting.kind in BURIED or (setting.kind == "bored" and setting.drilling_fluid_density is not None)


def _bank_here(request: DuctRunRequest, stretch: Stretch, index: int, sheet: Worksheet) -> tuple[DuctBank, Worksheet]:
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
    kind: Worksheet | None = None
    if stretch.conduit_type is not None:
        kind = MemberSheet(here, "conduit_type")
        own["conduit"] = _of_type(shared.conduit, stretch.conduit_type, here)
        if shared.tier_ducts:
            own["tier_ducts"] = _tiers_of_type(shared, stretch.conduit_type, here)
    if not own:
        return shared, place
    return laid_over(shared, own), _BankSheet(place, here, redirected, kind)


class _BankSheet(LayeredSheet):
    """The sheet of the bank of the run with what a stretch lays over it; of a type of its own every conduit is that."""

    __slots__ = ("_kind",)

    def __init__(self, shared: Worksheet, here: Worksheet, redirected: dict[str, str], kind: Worksheet | None) -> None:
        """Lay the members of a stretch over a bank; `kind` is the sheet of its type of conduit, if it has one."""
        super().__init__(shared, here, redirected, here.place)
        self._kind = kind

    def within(self, member: str, about: str | None = None) -> Worksheet:
        """Give the sheet of a part of the bank."""
        if self._kind is not None and member.rsplit("/", maxsplit=1)[-1] == "conduit":
            return self._kind
        return super().within(member, about)


def _place_bank(given: DuctBank, sheet: Worksheet, *, takes_room: bool) -> RunBank:
    """Place the ducts of a bank, and name each; where they take no room, as far as their outside diameters are known.

    What stands above ground or is there already may be conduit of which no outside diameter is on file.
    """
    lines = _checked_lines(given, sheet)
    placed = None
    if takes_room or all(_is_known(line.conduit) for line in lines):
        placed = bank_of(given, sheet)
    ducts: list[DuctPlace] = []
    named: Counter[int] = Counter()  # ducts of a tier
    for line in lines:
        ducts += [
            DuctPlace(f"{line.tier + 1}-{named[line.tier] + position}", line.tier, line.conduit, line.place)
            for position in range(1, line.duct_count + 1)
        ]
        named[line.tier] += line.duct_count
    conduits = list({id(line.conduit): line.conduit for line in lines}.values())
    return RunBank(given, sheet, placed, ducts, conduits)


def _checked_lines(given: DuctBank, sheet: Worksheet) -> list[DuctLine]:
    """Give the ducts of a bank by kind and tier; refuses lists that part and sizes that are not in the tables."""
    counts = counts_of(given, sheet)
    if given.tier_ducts or given.signal_ducts:
        check_lists(given, counts, sheet)
    lines = lines_of(given, sheet)
    faults = Gathering()
    for conduit, place in {id(line.conduit): (line.conduit, line.place) for line in lines}.values():
        with faults:
            if conduit.kind == "listed":
                find_row(conduit, place)
    faults.stop()
    return lines


def _is_known(conduit: ListedConduit | MeasuredConduit) -> bool:
    """Say whether the outside diameter of a conduit that is on file is known."""
    if conduit.kind == "measured":
        return conduit.outside_diameter is not None
    return SIZES[conduit.type][conduit.trade_size].outside_diameter_in is not None


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
