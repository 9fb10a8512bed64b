"""Which of the known values a text that is none of them was probably meant to be: said, never taken.

A text means a value if it differs in capitals, blanks and marks alone, if it is another spelling of it that the trade
uses or, of a unit, that pint's registry knows, or if it is nearly spelled like it, with the same numbers in it. Where
two values could be meant, none is told.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from difflib import SequenceMatcher, get_close_matches
from functools import lru_cache
from typing import Any

from ductrun.subjects.spellings import SPELLINGS
from ductrun.units import UNIT_CODES
from ductrun.units.spellings import ways_to_write

_LONGEST = 60  # characters
_LARGEST = 1e9  # a whole number of thousands of digits cannot even be written
_SHORTEST = 5  # of two words that are shorter, one is nearly always nearly the other
_NEAR = 0.8  # a share of letters in common, of both spellings together
_APART = 0.12  # by so much the nearest must be nearer than the next
_MARKS = str.maketrans("\u2018\u2019\u2032\u201c\u201d\u2033", "'''\"\"\"")
_PASSED_OVER = re.compile(r"(?!^-\d)[\s\-\u2010-\u2015_.,()\u00b0]+")
_IDLE_BLANK = re.compile(r"(?<!\d) | (?!\d)")
_DECIMAL = re.compile(r"(?<![\w.])(\d*)\.(\d+)(?![\d.])")
_FRACTIONS = {"5": "1/2", "25": "1/4", "75": "3/4", "375": "3/8", "": ""}
_UNITS = {tuple(codes) for codes in UNIT_CODES.values()}
_WAYS = tuple((re.compile(value), ways) for value, ways in SPELLINGS)


def probably_meant(given: Any, known: Sequence[str]) -> str | None:
    """Give the one known value that a text, or a number in the place of a text, was probably meant to be."""
    text = _text_of(given)
    if text is None or len(text) > _LONGEST:
        return None
    key = _key(text)
    own, others = _spelled(tuple(known))
    meant = (
        own.get(key)
        or others.get(key)
        or _of_units(tuple(known)).get(key)
        or (_near(key, own, others) if key.isalnum() else set())
    )
    return next(iter(meant)) if len(meant) == 1 else None


def _text_of(given: Any) -> str | None:
    """Write what was given as a text; None for what is neither one nor a number that a person writes."""
    if isinstance(given, str):
        return given
    if isinstance(given, bool) or not isinstance(given, (int, float)) or abs(given) > _LARGEST:
        return None
    return f"{given:g}" if isinstance(given, float) else str(given)


def _key(text: str) -> str:
    """Give what spellings are compared by: a blank is left only between two numbers, as in 1 1/2."""
    plain = unicodedata.normalize("NFKC", text.translate(_MARKS)).casefold().replace("\u2044", "/").replace("''", '"')
    plain = _DECIMAL.sub(_as_fraction, plain)
    return _IDLE_BLANK.sub("", _PASSED_OVER.sub(" ", plain).strip())


def _as_fraction(number: re.Match[str]) -> str:
    """Write 1.5 as a size is written, 1 1/2; a decimal that is no such fraction stays one and is near to nothing."""
    whole, part = number[1].lstrip("0"), number[2].rstrip("0")
    if part not in _FRACTIONS or not whole + part:
        return f"{number[1]};{number[2]}"
    return f"{whole} {_FRACTIONS[part]}".strip()


@lru_cache(maxsize=1024)
def _spelled(known: tuple[str, ...]) -> tuple[dict[str, set[str]], dict[str, set[str]]]:
    """Give what each spelling means: those of the values themselves, and the other ways to write them."""
    own: dict[str, set[str]] = {}
    others: dict[str, set[str]] = {}
    for value in known:
        own.setdefault(_key(value), set()).add(value)
        for pattern, ways in _WAYS:
            match = pattern.fullmatch(value)
            for way in ways if match else ():
                others.setdefault(_key(match.expand(way)), set()).add(value)  # type: ignore[union-attr]
    return own, others


@lru_cache(maxsize=64)
def _of_units(known: tuple[str, ...]) -> dict[str, set[str]]:
    """Give what the spellings of pint's registry mean among the units of one dimension; nothing among other values."""
    found: dict[str, set[str]] = {}
    for value in known if known in _UNITS else ():
        for way in ways_to_write().get(value, ()):
            found.setdefault(_key(way), set()).add(value)
    return found


def _near(key: str, own: dict[str, set[str]], others: dict[str, set[str]]) -> set[str]:
    nearest: dict[str, float] = {}
    numbers = re.findall(r"\d+", key)
    for spelling in get_close_matches(key, {*own, *others}, n=10, cutoff=_NEAR - _APART):
        # a wrong number is no slip of the pen
        if max(len(key), len(spelling)) >= _SHORTEST and re.findall(r"\d+", spelling) == numbers:
            share = SequenceMatcher(None, spelling, key).ratio()
            for value in own.get(spelling, set()) | others.get(spelling, set()):
                nearest[value] = max(share, nearest.get(value, 0.0))
    best = max(nearest.values(), default=0.0)
    return {value for value, share in nearest.items() if share > best - _APART} if best >= _NEAR else set()
