"""How a figure is written in a drawing: as in a sentence of the answer, but sizes and temperatures at a glance.

Forces and pressures keep the digits they have in the answer, so that none reads as within a limit that it is over.
"""

from __future__ import annotations

from ductrun.kit.wording import depth_text
from ductrun.units import AnyQuantity

_DIGITS = {"in": 4, "mm": 4, "degF": 3, "degC": 3}
_SIGNS = {"degF": "\u00b0F", "degC": "\u00b0C"}


def figure(told: AnyQuantity) -> str:
    """Write a told quantity, not to be broken: lengths as a tape shows them, sizes to four digits."""
    digits = _DIGITS.get(told.unit)
    if digits is not None:
        told = AnyQuantity(float(f"{told.value:.{digits}g}"), told.unit)
    if told.unit in _SIGNS:
        return f"{told.value:g}\u00a0{_SIGNS[told.unit]}"
    return depth_text(told).replace(" ", "\u00a0")
