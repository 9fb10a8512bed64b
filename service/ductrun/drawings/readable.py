"""What a person reads of a told value and its member: rounded, with the signs of the trade, feet with their inches."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Annotated, Any, Final, get_args, get_origin, get_type_hints

from msgspec import UNSET, Meta, Struct

from ductrun.kit.wording import text_of
from ductrun.units import AnyQuantity, Code

_SIGNS: Final = {
    "deg": "°",
    "degF": "°F",
    "degC": "°C",
    "delta_degF": "°F difference",
    "delta_degC": "°C difference",
    "percent": "%",
    "gal_us": "US gal",
    "qt_us": "US qt",
    "1/degF": "1/°F",
    "1/degC": "1/°C",
    "ohm/km": "Ω/km",
    "ohm/1000ft": "Ω/1000 ft",
    "1": "",
}
_POWER: Final = re.compile(r"(?<=[a-z])([23])\b")
_NOISE: Final = 1e-10  # what a difference of like figures leaves; no figure of the trade is as small
_TIMES_TEN: Final = " \u00d7 10"
_RAISED: Final = str.maketrans("-0123456789", "⁻⁰¹²³⁴⁵⁶⁷⁸⁹")
_POWERS: Final = {"2": "²", "3": "³"}
_NUMBERED: Final = re.compile(r"\bno (?=\d)")
_SHORT: Final = {"id": "id", "pvc": "PVC", "rmc": "RMC", "imc": "IMC", "emt": "EMT", "hdpe": "HDPE", "rtrc": "RTRC"}


def unit_sign(unit: str) -> str:
    """Write a unit as it is printed: `yd³` for yd3."""
    return _SIGNS[unit] if unit in _SIGNS else _POWER.sub(lambda found: _POWERS[found[1]], unit)


def quantity_text(told: AnyQuantity) -> str:
    """Write a told quantity, rounded for reading."""
    if told.unit == "ft":
        return text_of(told)
    figure, sign = figure_text(told.value), unit_sign(told.unit)
    return f"{figure}{'' if sign in ('°', '') else ' '}{sign}"


def by_tape(size: AnyQuantity) -> str:
    """Write a size as a tape shows it: in feet, inches and eighths, or whole millimeters."""
    if size.unit == "in" and size.value < 1 / 16:
        return "0 in"
    if size.unit == "in":
        return text_of(AnyQuantity(size.value / 12, "ft"))
    return f"{size.value:,.0f} mm" if size.unit == "mm" else quantity_text(size)


def figure_text(value: float) -> str:
    """Write a bare figure: whole ones whole, others to five digits."""
    if abs(value) < _NOISE:
        return "0"
    if isinstance(value, int) or (value == round(value) and abs(value) < 1e15):
        return f"{value:,.0f}"
    text = f"{value:,.5g}" if abs(value) < 1e5 else f"{value:,.0f}"
    figure, _, exponent = text.partition("e")
    return f"{figure}{_TIMES_TEN}{str(int(exponent)).translate(_RAISED)}" if exponent else text


def shown(value: Any, member: str = "") -> str:
    """Write a told value that is no record of its own; of a list, one after the other."""
    if isinstance(value, (list, tuple)):
        return "; ".join([shown(one, member) for one in value]) if value else "none"
    if isinstance(value, AnyQuantity):
        return quantity_text(value)
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (int, float)):
        return figure_text(value) + (" %" if member.endswith("_percent") else "")
    return words_of(value) if isinstance(value, Code) else str(value)


def words_of(code: str) -> str:
    """Write a code in words: `not judged` for not_judged, `no. 4` for no_4."""
    return _NUMBERED.sub("no. ", " ".join([_SHORT.get(word, word) for word in code.split("_")]))


def conduit_text(told: Any) -> str:
    """Write trade size and type of a conduit as told; one that was measured has no size, and may have no type."""
    size, kind = (getattr(told, name, UNSET) for name in ("trade_size", "conduit_type"))
    words = [f"{size} in" if size else "measured", words_of(kind) if kind else ""]
    return " ".join(filter(None, words))


def titled(member: str) -> str:
    """Write the name of a member as a title: `Fill percent`."""
    words = words_of(member)
    return words[:1].upper() + words[1:]


def place_of(pointer: str) -> str:
    """Write a JSON pointer as a place in the request: items are numbered from 1."""
    parts = [part.replace("~1", "/").replace("~0", "~") for part in pointer.removeprefix("#").split("/") if part]
    said = [f"no. {int(part) + 1}" if part.isdigit() else words_of(part) for part in parts]
    return ", ".join(said).replace(", no.", " no.") or "the whole request"


@cache
def meanings_of(record: type[Struct]) -> Mapping[str, str]:
    """Give what the contract says of each member of a record."""
    return {name: _meaning(hint) for name, hint in get_type_hints(record, include_extras=True).items()}


def _meaning(hint: Any) -> str:
    if get_origin(hint) is Annotated:
        told = [part.description for part in get_args(hint)[1:] if isinstance(part, Meta) and part.description]
        return told[0] if told else ""
    return ""
