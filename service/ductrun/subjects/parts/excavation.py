"""The usual caution of whatever is dug."""

from __future__ import annotations

from typing import Final

EXCAVATION_SAFETY: Final = (
    "Have utilities located before digging, keep spoil back from the edge, and let nobody into an unprotected trench: "
    "a competent person and the adopted excavation rules decide on protection."
)
