"""The caution that three cables may wedge in a bend."""

from __future__ import annotations

from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.worksheet import Worksheet
from ductrun.tables import TABLES

OVALITY = number("jam.ovality").value
# the union of the published bands as a plain D/d; the gap one source leaves is not a published band
_BANDS: list[tuple[float, float]] = [
    (row.low / factor, row.high / factor)
    for row in TABLES["jam_ratio_bands"]
    if row.standing != "derived"
    for factor in (OVALITY if row.index == "with_ovality" else 1.0,)
]
JAM_LOW = min(low for low, _ in _BANDS)
JAM_HIGH = max(high for _, high in _BANDS)


def in_jam_band(ratio: float) -> bool:
    """Say whether a plain D/d lies in the union of the published bands."""
    return JAM_LOW <= ratio <= JAM_HIGH


def caution_in_jam_band(
    ratio: float, sheet: Worksheet, remedy: str = "Take another conduit size.", *, triplexed: bool = False
) -> None:
    """Caution where three cables may wedge, on the sheet of what is to blame, and say what would get them out.

    Cables twisted together at the factory do not change places in a bend, so for them it is a note.
    """
    if not in_jam_band(ratio):
        return
    message = (
        f"Three cables may wedge in a bend: conduit over cable diameter is {ratio:.2f} ({ratio * OVALITY:.2f} with "
        f"ovality), inside the jam band of {JAM_LOW:.2f} to {JAM_HIGH:.2f}. {remedy}"
    )
    if triplexed:
        message = (
            f"Conduit over cable diameter is {ratio:.2f}, inside the jam band of {JAM_LOW:.2f} to {JAM_HIGH:.2f}: "
            "three loose cables could wedge, triplexed ones hold together. Keep the twist up to the "
            "pulling eye."
        )
    sheet.find(
        Severity.NOTE if triplexed else Severity.CAUTION,
        "triplexed_in_jam_band" if triplexed else "jam_ratio_in_band",
        message,
        sheet.rule("jam").beside(published("anixter-seven-tips")),
        ratio,
        JAM_HIGH,
        member="",
    )
    sheet.cite("anixter-seven-tips")
