"""The warning tape of a trench: how deep it lies where there is room for it, and where there is less."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import trench as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.filling import EarthCover
from ductrun.units import Length

TAPE_DEPTH = quantity("trench.tape_depth", Length)
_ABOVE = TAPE_DEPTH.value.si  # the bank, as far as below grade
_MOST_NAMED = 3  # places of a run that one sentence names


class Tape(NamedTuple):
    """How deep the tape lies below grade [m]: where the cover is greatest, and where it is least."""

    depth: float
    least_depth: float


def tape_of(given: Length | None, earth: EarthCover, paved: float, sheet: Worksheet) -> Tape:
    """Give how deep the tape lies, below a pavement of a thickness [m] and as far above the bank as there is room."""
    wanted = sheet.settle("warning_tape_depth", given, TAPE_DEPTH).si
    depth = max(wanted, paved)
    if over(paved, wanted):
        tell = sheet.tell.size
        sheet.find(
            Severity.NOTE,
            "tape_under_the_pavement",
            f"The pavement is {text_of(tell(paved))} thick: the tape lies right under it, not "
            f"{text_of(tell(wanted))} below grade.",
            TAPE_DEPTH.backing,
            tell(wanted),
            tell(paved),
            member="warning_tape_depth",
        )
    if not under(earth.least, depth + _ABOVE):
        return Tape(depth, depth)
    greatest, least = (engineering.tape_depth(cover, paved, depth, _ABOVE) for cover in (earth.greatest, earth.least))
    _find_little_room(earth, paved, depth, least, sheet)
    return Tape(greatest, least)


def _find_little_room(earth: EarthCover, paved: float, depth: float, least: float, sheet: Worksheet) -> None:
    """Caution where the tape cannot lie as deep as wanted and clear of the bank, and say where that is."""
    tell = sheet.tell
    where = _where(earth, depth + _ABOVE, sheet)
    if under(paved, earth.least):
        down, up = text_of(tell.size(least)), text_of(tell.size(earth.least - least))
        deeper = f", and deeper as the cover grows, to {text_of(tell.size(depth))}" if where else ""
        words = f"lay it {down} below grade and {up} above the bank{' there' if where else ''}{deeper}."
    else:
        words = "no earth lies over the bank to put it in. Mark the bank by other means" + (" there." if where else ".")
    sheet.find(
        Severity.CAUTION,
        "tape_close_to_the_bank",
        f"With {text_of(tell.size(earth.least))} of cover{where} the tape cannot lie both "
        f"{text_of(tell.size(depth))} below grade and {text_of(tell.size(_ABOVE))} above the bank: {words}",
        TAPE_DEPTH.backing,
        tell.size(earth.least),
        tell.size(depth + _ABOVE),
        member="warning_tape_depth",
    )


def _where(earth: EarthCover, room: float, sheet: Worksheet) -> str:
    """Say along which parts of a run the cover is less than the room asked for; nothing of an even cover."""
    if not over(earth.greatest, earth.least):
        return ""
    told = sheet.tell.distance
    parts = engineering.shallower(earth.along, room)
    named = [f"{text_of(told(start))} to {text_of(told(end))}" for start, end in parts[:_MOST_NAMED]]
    more = f" and {len(parts) - _MOST_NAMED} more" if len(parts) > _MOST_NAMED else ""
    return f" at the least, and less than {text_of(sheet.tell.size(room))} from {', from '.join(named)}{more},"
