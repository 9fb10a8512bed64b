"""How pint's registry writes each unit: names, symbols and aliases, in the plural, squared, cubed and per another.

It writes units/spellings.csv, from which the service says what was probably meant: nothing a client sends reaches pint.
"""

from __future__ import annotations

import csv
import io
import itertools
import re
from collections.abc import Iterable, Iterator

import pint
from ductrun.units import UNIT_CODES

_TWO_TONS = {"ton", "tons"}  # pint's ton is the short one; the trade's may be either, so that nobody can say
_POWERS = {2: ("square", "sq"), 3: ("cubic", "cu")}
_FEW = 4  # ways to write a unit that is written with others: its symbol, its name, its plural, one more


def written() -> str:
    """Write the file: a row for each way to write a unit, but for its code itself."""
    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    rows: dict[tuple[str, str], None] = {}
    for codes in UNIT_CODES.values():
        for code in codes:
            for spelling in spellings(code.pint, registry):
                if spelling.lower() != code.text.lower() and spelling not in _TWO_TONS:
                    rows[code.text, spelling] = None
    text = io.StringIO()
    table = csv.writer(text, lineterminator="\n")
    table.writerows([("unit", "spelling"), *sorted(rows)])
    return text.getvalue()


def spellings(expression: str, registry: pint.UnitRegistry[float]) -> Iterator[str]:
    """Give every way to write a unit that pint has an expression for."""
    units = registry.Unit(re.sub(r"1000 \* ", "kilo", expression))._units
    terms = {name: int(float(str(power))) for name, power in units.items()}
    above = [(name, power) for name, power in terms.items() if power > 0]
    below = [(name, -power) for name, power in terms.items() if power < 0]
    if len(terms) == 1 and above:
        yield from _powered(*above[0], registry, most=100)
        return
    tops = list(_products(above, registry)) or ["1"]
    for top, bottom in itertools.product(tops, list(_products(below, registry)) or [""]):
        yield f"{top}/{bottom}" if bottom else top
        if bottom:
            yield f"per {bottom}" if top == "1" else f"{top} per {bottom}"


def _products(terms: list[tuple[str, int]], registry: pint.UnitRegistry[float]) -> Iterator[str]:
    ways = [list(_powered(name, power, registry, most=_FEW)) for name, power in terms]
    for parts in itertools.product(*ways) if terms else ():
        yield " ".join(parts)
        if len(parts) > 1:
            yield "*".join(parts)


def _powered(name: str, power: int, registry: pint.UnitRegistry[float], most: int) -> Iterator[str]:
    words = list(dict.fromkeys(_words(name, registry)))[:most]
    if power == 1:
        yield from words
        return
    for word in words:
        yield from (f"{word}^{power}", f"{word}**{power}", f"{word}{power}")
        yield from (f"{before} {word}" for before in _POWERS[power])


def _words(name: str, registry: pint.UnitRegistry[float]) -> Iterable[str]:
    """Give symbol, name, plural and aliases of a unit, with its prefix in full or as its symbol."""
    [(prefix, base, _), *_] = registry.parse_unit_name(name)
    unit = registry._units[base]
    short = registry._prefixes[prefix].symbol if prefix else ""
    if unit.has_symbol and unit.symbol.isascii():
        yield short + unit.symbol
    names = [unit.name, *(one for one in unit.aliases if one.isascii())]
    for one in names:
        long = len(one) > 3
        whole = (prefix if long else short) + one.replace("_", " ")
        yield whole
        if long and not whole.endswith(("s", "feet", "hertz")):
            yield (
                f"{whole[:-4]}feet" if whole.endswith("foot") else f"{whole}es" if whole.endswith("ch") else f"{whole}s"
            )
