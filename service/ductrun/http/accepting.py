"""Which of several media types an Accept header asks for (RFC 9110): by weight, that of the range nearest to each."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

_WEIGHT: Final = re.compile(r"(0(\.[0-9]{0,3})?|1(\.0{0,3})?)\Z")
_MOST_KNOWN, _LONGEST_KNOWN = 256, 500  # headers that are remembered: callers send few different ones


def weight_of(accepted: str, media_type: str) -> float:
    """Give the weight that an Accept header gives to a media type, by the range that is nearest to it."""
    nearest = ["*/*", f"{media_type.partition('/')[0]}/*", media_type]
    found = (-1, 0.0)
    for one in accepted.lower().split(","):
        offered, *parameters = (part.strip() for part in one.split(";"))
        weights = [part[2:] for part in parameters if part.startswith("q=")]
        if offered in nearest:
            found = max(found, (nearest.index(offered), _weight(weights[0]) if weights else 1.0))
    return found[1]


def _weight(text: str) -> float:
    return float(text) if _WEIGHT.match(text) else 0.0


def preferred(accepted: str, offered: Sequence[str]) -> str | None:
    """Give the media type of those offered that a header prefers, the first of like ones; None where it takes none.

    No header, or an empty one, takes any.
    """
    return (_remembered if len(accepted) <= _LONGEST_KNOWN else _preferred)(accepted, offered)


def _preferred(accepted: str, offered: Sequence[str]) -> str | None:
    if not accepted.strip():
        return offered[0]
    weights = [weight_of(accepted, media_type) for media_type in offered]
    best = max(weights)
    return offered[weights.index(best)] if best > 0.0 else None


_remembered = lru_cache(maxsize=_MOST_KNOWN)(_preferred)
