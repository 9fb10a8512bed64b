"""The ducts of a stretch joined: a piece for every conduit in it, and one for each riser of another conduit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple, cast

from ductrun.engineering.joints import developed_length
from ductrun.engineering.pulling import Straight
from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.conduit.elbows import TANGENT, Elbows
from ductrun.subjects.conduit.joining import Ducts, Joined, join, known_method
from ductrun.subjects.duct_run.assessment import Piece
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import RunJoining
from ductrun.subjects.duct_run.laid import LaidSection, LaidStretch
from ductrun.subjects.duct_run.practice import laid_over
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.duct_run.transitions import Beside, Conduits, Transition, before_to_after, transition_to
from ductrun.subjects.parts.conduit import find_row


class Around(NamedTuple):
    """What is at the ends of a stretch: a stop, or the stretch in which its ducts go on."""

    start: Stop | Beside
    end: Stop | Beside


def pieces_of(laid: LaidStretch, bank: RunBank, around: Around, practice: tuple[RunJoining, Worksheet]) -> list[Piece]:
    """Join the ducts of a stretch. Plugs are counted at stops."""
    found = []
    alike = _alike(bank, around)
    of_stretch = laid.given.joining
    own_bells = of_stretch is not None and of_stretch.ends is not None
    asked = own_bells and len({conduit.type for conduit, *_ in alike}) == 1
    for conduit, sheet, ducts, transitions in alike:
        for sections, riser, ends in _parts(laid, conduit, around, transitions):
            own = conduit if riser is None else conduit_of_riser(riser, conduit)
            finishes = (_finish(ends[0], own), _finish(ends[1], own))
            fitting = practice if asked and riser is None else _fitting(own, practice)
            joined = _joined(own, len(ducts), sections, finishes, sheet, fitting)
            placed = [(finish, _where(end)) for finish, end in zip(finishes, ends, strict=True)]
            found.append(Piece(own, len(ducts), sections, joined, riser, ducts, placed))
    return found


def _fitting(conduit: Conduits, practice: tuple[RunJoining, Worksheet]) -> tuple[RunJoining, Worksheet]:
    """Give the joining of one conduit among several: the ends of sticks are those of what is cemented."""
    given, sheet = practice
    if given.ends is None or known_method(conduit.type) is JoiningMethod.CEMENTED:
        return practice
    return laid_over(given, {"ends": None}), sheet


_Transitions = tuple[Transition | None, Transition | None]


def _alike(bank: RunBank, around: Around) -> list[tuple[Conduits, Worksheet, list[int], _Transitions]]:
    """Give every conduit of a bank with the sheet of its place, the ducts that are of it and go on alike, and how."""
    found: dict[tuple[object, ...], tuple[Conduits, Worksheet, list[int], _Transitions]] = {}
    known: dict[tuple[int, ...], list[int]] = {}  # by the conduit of a duct and those it goes on in: few of many
    behind, ahead = (None if isinstance(one, Stop) else one for one in around)
    beside = [one.bank.ducts for one in (behind, ahead) if one is not None]
    for index, duct in enumerate(bank.ducts):
        conduit = duct.conduit
        same = (id(conduit), *[id(ducts[index].conduit) for ducts in beside])
        if same not in known:
            transitions = (
                transition_to(behind, index, conduit, ahead=False),
                transition_to(ahead, index, conduit, ahead=True),
            )
            key = (
                (conduit.type, conduit.trade_size, transitions)
                if conduit.kind == "listed"
                else (conduit.type, conduit.trade_size, conduit.inside_diameter.si, id(conduit), transitions)
            )
            known[same] = found.setdefault(key, (conduit, duct.sheet, [], transitions))[2]
        known[same].append(index)
    return list(found.values())


_Ends = tuple[Stop | Transition, Stop | Transition]


def _parts(
    laid: LaidStretch, conduit: Conduits, around: Around, transitions: _Transitions
) -> list[tuple[list[LaidSection], Stop | None, _Ends]]:
    """Cut a stretch where its risers are of another conduit than it is, and say how each part ends.

    A joint to the part before is counted by the part after it.
    """
    sections = list(laid.sections)
    start, end = around
    first = start if transitions[0] is None else transitions[0]
    last = end if transitions[1] is None else transitions[1]
    parts: list[tuple[list[LaidSection], Stop | None, _Ends]] = []
    behind: list[tuple[list[LaidSection], Stop | None, _Ends]] = []
    if isinstance(start, Stop) and sections[0].riser is not None:
        own = conduit_of_riser(start, conduit)
        if own is not conduit:
            leaves, first = before_to_after(own, conduit)
            parts.append((sections[:2], start, (start, leaves)))
            sections = sections[2:]
    if isinstance(end, Stop) and sections[-1].riser is not None:
        own = conduit_of_riser(end, conduit)
        if own is not conduit:
            last, enters = before_to_after(conduit, own)
            behind.append((sections[-2:], end, (enters, end)))
            sections = sections[:-2]
    return [*parts, (sections, None, (cast(Stop | Transition, first), cast(Stop | Transition, last))), *behind]


def _finish(end: Stop | Transition, conduit: Conduits) -> RunEnd:
    if isinstance(end, Transition):
        return end.finish
    return end.finish(belled=known_method(conduit.type) is JoiningMethod.CEMENTED)


def _where(end: Stop | Transition) -> str:
    """Say in words where ducts end."""
    return f"at the change to {end.to}" if isinstance(end, Transition) else f"at {end.name}"


def _joined(
    conduit: Conduits,
    count: int,
    sections: Sequence[LaidSection],
    finishes: tuple[RunEnd, RunEnd],
    sheet: Worksheet,
    practice: tuple[RunJoining, Worksheet],
) -> Joined | None:
    """Join alike ducts; None where nothing is on file of how such conduit is joined, which is found."""
    given, joining = practice
    method = known_method(conduit.type)
    if method is None:
        joining.find(
            Severity.NOTE,
            "joints_not_counted",
            f"How {conduit.type or 'this conduit'} is joined is not on file: its length is taken off, its joints are "
            "not counted. Count them by its maker's list.",
            PRACTICE,
        )
        return None
    bends = [one.element for one in sections if one.is_elbow and not isinstance(one.element, Straight)]
    tangent = joining.settle("elbow_tangent", given.elbow_tangent, TANGENT).si if bends else 0.0
    elbows = sum([developed_length(bend.radius, bend.angle, tangent) for bend in bends], start=0.0)
    length = sum([one.element.developed_length for one in sections])
    size, bore = _size_and_bore(conduit, sheet)
    outside = conduit.outside_diameter if conduit.kind == "measured" else None
    ducts = Ducts(
        size,
        bore,
        method,
        count,
        length,
        Elbows(len(bends), elbows, joining),
        finishes,
        0,
        sheet,
        None if outside is None else outside.si,
    )
    return join(given, ducts, joining)


def _size_and_bore(conduit: Conduits, sheet: Worksheet) -> tuple[str | None, float | None]:
    if conduit.kind == "measured":
        return conduit.trade_size, conduit.inside_diameter.si
    row = find_row(conduit, sheet)
    return row.trade_size, None if row.inside_diameter is None else row.inside_diameter.si
