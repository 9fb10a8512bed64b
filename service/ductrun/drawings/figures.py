"""How a figure is written in a drawing: to be read at a glance, to four digits; the answer has them all."""

from __future__ import annotations

from ductrun.kit.wording import depth_text
from ductrun.units import AnyQuantity

_BY_TAPE = ("ft", "m")  # written to what a tape shows, however long
_SIGNS = {"degF": "\u00b0F", "degC": "\u00b0C", "delta_degF": "\u00b0F", "delta_degC": "\u00b0C"}


def figure(told: AnyQuantity) -> str:
    """Write a told quantity, not to be broken: lengths as a tape shows them, all else to four digits."""
    if told.unit not in _BY_TAPE:
        told = AnyQuantity(float(f"{told.value:.4g}"), told.unit)
    if told.unit in _SIGNS:
        return f"{told.value:g}\u00a0{_SIGNS[told.unit]}"
    return depth_text(told).replace(" ", "\u00a0")
