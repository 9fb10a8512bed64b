"""What a run may cost: known from its form before it is worked on, and bounded where few words ask for much.

Every circuit is pulled through every section that it passes, and told with each: a run of 50 stretches and 200 circuits
is written in some kilobytes, and could take an hour. What a run on a drawing has lies far below the bounds.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.boxes.entries import MOST_ENTRIES
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.comparing.form import NamedRun
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.rated_stretches import MOST_RATED
from ductrun.subjects.feeder.circuits import MOST_LOADED
from ductrun.subjects.feeder.rating import rating_steps
from ductrun.subjects.ground.loaded_ducts import loading_steps
from ductrun.subjects.movement.fittings import MOST_FITTINGS_TOGETHER, most_laid_out
from ductrun.subjects.movement.spacing import CLOSEST
from ductrun.subjects.movement.strapping import MOST_STRAPS, supporting_steps
from ductrun.subjects.parts.bank import duct_count, kind_count
from ductrun.subjects.pulling.cuts import MOST_POSITIONS

MOST_PULLS: Final = 4_000
MOST_PULLED_SECTIONS: Final = 20_000
MOST_JOINED_SECTIONS: Final = 20_000
MOST_HELD: Final = 20_000  # straps and expansion fittings
MOST_SEARCHED: Final = 100_000  # places, each with every place and section
MOST_COMPARED_STEPS: Final = 400_000
MOST_TRIAL_STEPS: Final = 300_000
# steps, as measured with room to spare
_ALWAYS, _A_STRETCH, _A_SECTION, _A_SECTION_ABOVE, _A_JOINT = 100.0, 80.0, 2.0, 18.0, 14.0
_A_DUCT, _A_POINT = 0.5, 0.6  # of every stretch, and of the profile in every stretch
_A_DUCT_PLACED, _A_DUCT_TAKEN = 1.2, 0.06  # of every bank; of the bank, by every circuit that looks for its own
_A_PULL, _A_PULLED_SECTION = 45.0, 5.0
_A_PULL_TOLD, _A_SECTION_TOLD = 12.0, 1.0  # of a pull like another that was worked out
_A_SEARCHED = 0.6
_A_BOX, _AN_ENTRY, _A_BOX_SIZE = 40.0, 8.0, 6.0


def steps(request: Any) -> float:
    """Bound the steps of ten microseconds that a run takes: those of its stretches, of its pulls and the searches for
    pull points along those that break a limit, of its loads, its boxes, and the earth on it.
    """
    kinds, ducts = _ducts(request)
    circuits = [len(circuit.ducts or ()) or circuit.duct_count or 1 for circuit in request.circuits or ()]
    return (
        _ALWAYS
        + _of_stretches(request, kinds, ducts)
        + _of_pulls(request, kinds, circuits)
        + _of_loads(request, circuits)
        + _of_boxes(request, min(sum(circuits), ducts))
        + _of_earth(request, kinds, ducts)
    )


def _ducts(request: Any) -> tuple[int, int]:
    """Give how many kinds of duct there are at most, and how many ducts."""
    banks = [bank for bank in (request.bank, *(stretch.bank for stretch in request.stretches)) if bank is not None]
    kinds = max([1, *map(kind_count, banks)])
    return kinds, max([1, *map(duct_count, banks)])


def _sections(stretch: Any) -> int:
    return len(stretch.sections or (0,))


def _of_stretches(request: Any, kinds: int, ducts: int) -> float:
    points = 0 if request.profile is None else len(request.profile.points)
    each = _A_STRETCH + _A_DUCT * ducts + _A_POINT * points
    sections = _A_SECTION * kinds * points
    for stretch in request.stretches:
        if stretch.setting.kind == "above_ground":
            joints = len(stretch.setting.structure_joints or ())
            sections += _A_SECTION_ABOVE * kinds * _sections(stretch) + _A_JOINT * joints * min(kinds, 4)
        else:
            sections += _A_SECTION * kinds * _sections(stretch)
    banks = 1 + sum(map(_has_its_own_bank, request.stretches))
    placing = ducts * (_A_DUCT_PLACED * banks + _A_DUCT_TAKEN * len(request.circuits or ()))
    return each * len(request.stretches) + sections + placing + _of_straps(request)


def _has_its_own_bank(stretch: Any) -> bool:
    return any(one is not None for one in (stretch.bank, stretch.conduit, stretch.conduit_type, stretch.tiers))


def _of_straps(request: Any) -> float:
    """Bound the straps and the fittings of all that lies above ground, as if they stood as close as any rule has them;
    of those that are refused for their number no more than are placed before.
    """
    practice = request.movement
    travel = engagement = None
    if practice is not None:
        travel, engagement = practice.fitting_travel, practice.piston_engagement
    needed = 0.0
    for stretch in request.stretches:
        setting = stretch.setting
        if setting.kind != "above_ground":
            continue
        spacing = CLOSEST if setting.support_spacing is None else min(CLOSEST, setting.support_spacing.si)
        length = _length(stretch)
        fittings = most_laid_out(length, setting.fitting_travel or travel, engagement)
        needed += supporting_steps(length, spacing, fittings)
    return min(needed, supporting_steps(MOST_HELD + MOST_STRAPS, 1.0, MOST_FITTINGS_TOGETHER))


def _length(stretch: Any) -> float:
    if stretch.length is not None:
        return float(stretch.length.si)
    return float(sum([section.length.si for section in stretch.sections or () if section.kind == "straight"]))


def _of_pulls(request: Any, kinds: int, ducts: Sequence[int]) -> float:
    """Bound the pulls; of those that are refused for their number no more than are answered for."""
    cuts = 0 if request.profile is None else len(request.profile.points)  # each cuts a section in two
    sections = cuts + sum(map(_sections, request.stretches))
    spans = 1 + sum(stretch.pull_point is not None for stretch in request.stretches)
    given = request.circuits or ()
    ways = [min(kinds, count) for count in ducts]
    own = [kinds > 1 or one.same_as is None or one.pulling is not None for one in given]
    worked = sum(way for way, is_own in zip(ways, own, strict=True) if is_own)
    told = sum(ways) - worked
    searched = kinds * sum(one.same_as is None or one.pulling is not None for one in given)
    return (
        _A_PULL * min(worked * spans, MOST_PULLS)
        + _A_PULL_TOLD * min(told * spans, MOST_PULLS)
        + _A_PULLED_SECTION * min(worked * sections, MOST_PULLED_SECTIONS)
        + _A_SECTION_TOLD * min(told * sections, MOST_PULLED_SECTIONS)
        + _A_SEARCHED * min(2 * searched * _squared(request, cuts), MOST_SEARCHED)
    )


def _of_loads(request: Any, ducts: Sequence[int]) -> float:
    """Bound the ratings: every stretch may be rated anew, in which the loaded ducts warm each other."""
    given = request.circuits or ()
    if all(circuit.load is None for circuit in given):
        return 0.0
    stretches = len(request.stretches)
    loaded = sum(ducts)
    rated = min(MOST_RATED, loaded * stretches)
    return 20.0 * len(given) + 5.0 * loaded * stretches + rating_steps(rated, min(loaded, MOST_LOADED), stretches)


def _of_boxes(request: Any, ducts: int) -> float:
    entries = min(MOST_ENTRIES, 2 * ducts)
    boxes = [stretch.pull_point for stretch in request.stretches if stretch.pull_point is not None]
    sizes = sum(len(box.box_sizes or ()) for box in boxes)
    return (_A_BOX + _AN_ENTRY * entries) * len(boxes) + _A_BOX_SIZE * sizes


def _of_earth(request: Any, kinds: int, ducts: int) -> float:
    needed = 0.0
    for stretch in request.stretches:
        practices = [one for one in (request.earth_load, stretch.earth_load) if one is not None]
        if practices and request.profile is None:
            needed += loading_steps(ducts, kinds)
        elif practices:  # the least, the greatest, and where groundwater stands between
            dry = request.site is None or request.site.groundwater_depth is None
            needed += loading_steps(ducts, kinds, 2 if dry else 3)
    return needed


def _squared(request: Any, cuts: int) -> int:
    """Give the squares of the sections between stops, all together, with the cuts where they make most."""
    total = here = most = 0
    for stretch in request.stretches:
        here += len(stretch.sections or (0,))
        if stretch.pull_point is not None:
            total, here, most = total + here * here, 0, max(most, here)
    return total + here * here + min(cuts, MOST_POSITIONS) * (min(cuts, MOST_POSITIONS) + 2 * max(most, here))


def check_pulled(pulls: int, sections: int, sheet: Worksheet) -> None:
    """Refuse a run of more pulls, or whose pulls pass more sections, than are answered for."""
    words = "pulls, one for each circuit from stop to stop"
    _check("circuits", pulls, MOST_PULLS, "too_many_pulls", words, sheet)
    words = "sections of pulls, one for each section that a circuit passes"
    _check("circuits", sections, MOST_PULLED_SECTIONS, "too_many_pulled_sections", words, sheet)


def check_joined(stretches: Sequence[Stretch], banks: Sequence[RunBank], sheet: Worksheet) -> None:
    """Refuse a run whose ducts are of so many kinds in so many sections that joining them takes too long."""
    known: dict[int, int] = {}
    count = 0
    for stretch, bank in zip(stretches, banks, strict=True):
        if id(bank) not in known:
            known[id(bank)] = len({id(duct.conduit) for duct in bank.ducts})
        count += known[id(bank)] * len(stretch.sections or (0,))
    words = "sections of ducts, one for each kind of duct in it"
    _check("stretches", count, MOST_JOINED_SECTIONS, "too_many_joined_sections", words, sheet)


def _check(member: str, count: int, most: int, code: str, what: str, sheet: Worksheet) -> None:
    if count > most:
        words = f"That makes {count:,} {what}; {most:,} are the most. Divide the run and ask for each part."
        raise UnanswerableError(sheet.fault(member, code, words, maximum=float(most)))


def check_compared(runs: Sequence[NamedRun], sheet: Worksheet) -> None:
    """Refuse runs that take too long together."""
    together = sum(steps(one.run) for one in runs)
    if together > MOST_COMPARED_STEPS:
        words = (
            f"These {len(runs)} runs take {together / MOST_COMPARED_STEPS:.1f} times the work that is done for one "
            "request: compare fewer, or leave out circuits that are the same in all."
        )
        raise UnanswerableError(sheet.fault("runs", "too_much_to_compare", words))


def most_trials(request: Any, most: int) -> int:
    """Give how many changes of a run are tried: fewer of one that takes long."""
    return max(1, min(most, int(MOST_TRIAL_STEPS / steps(request))))


def trial_steps(request: Any, most: int) -> float:
    """Bound the steps of trying changes of a run."""
    return steps(request) * most_trials(request, most)


class HoldingBudget:
    """How many straps and expansion fittings may be placed yet in a run; each straight takes its own."""

    def __init__(self) -> None:
        """Start with all of them."""
        self._left = MOST_HELD

    def take(self, count: int, place: Worksheet) -> None:
        """Take as many; refuse a run of more than are answered for at the straight that goes beyond, and end what
        comes after it without a word.
        """
        if self._left < 0:
            raise UnanswerableError
        self._left -= count
        if self._left < 0:
            words = (
                f"With this one the run has more than {MOST_HELD:,} straps and expansion fittings above ground. Divide "
                "the run and ask for each part."
            )
            raise UnanswerableError(place.fault("value", "too_many_supports", words))


class SearchBudget:
    """How much may be searched yet for pull points in a run; each search takes of it before it begins."""

    def __init__(self) -> None:
        """Start with all of them."""
        self._left = MOST_SEARCHED

    def takes(self, searched: int) -> bool:
        """Take what a search needs, if there is as much left."""
        if searched > self._left:
            return False
        self._left -= searched
        return True
