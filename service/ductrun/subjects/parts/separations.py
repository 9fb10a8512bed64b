"""How far ducts of a bank lie apart: what is published, what is closer, and what cannot be."""

from __future__ import annotations

from ductrun.engineering.bank import Bank, Gaps
from ductrun.engineering.rounding import TIE, under
from ductrun.kit.backing import backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, quantity
from ductrun.kit.wording import apart
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES
from ductrun.units import Length

_PUBLISHED = {
    services: sorted(
        (row for row in TABLES["duct_separations"] if row.services == services), key=lambda row: row.separation_in
    )
    for services in ("like_services", "power_to_signal")
}


def _with_spread(default: Default[Length], services: str) -> Default[Length]:
    """Tell the published spread with the default."""
    low, *_, high = _PUBLISHED[services]
    spread = f"published from {low.separation_in:g} to {high.separation_in:g} in"
    return default.noting(spread)


HORIZONTAL_SEPARATION = _with_spread(quantity("bank.horizontal_separation", Length), "like_services")
VERTICAL_SEPARATION = _with_spread(quantity("bank.vertical_separation", Length), "like_services")
POWER_SIGNAL_SEPARATION = _with_spread(quantity("bank.power_signal_separation", Length), "power_to_signal")
_LEAST = {services: Length.parse(rows[0].separation_in, "in") for services, rows in _PUBLISHED.items()}


def caution_separations(gaps: Gaps, sheet: Worksheet) -> None:
    """Caution where ducts lie closer than any publication on file has them."""
    for member, gap, services in (
        ("horizontal_separation", gaps.across, "like_services"),
        ("vertical_separation", gaps.between, "like_services"),
        ("power_signal_separation", gaps.power_signal, "power_to_signal"),
    ):
        if under(gap, _LEAST[services].si):
            row, told, least = _PUBLISHED[services][0], sheet.tell.size(gap), sheet.tell.given(_LEAST[services])
            lie, needed = apart(told, least)
            sheet.cite(row.source)
            sheet.find(
                Severity.CAUTION,
                "closer_than_published",
                f"Ducts lie {lie} clear of each other, less than the {needed} that is the least on "
                f"file for {services.replace('_', ' ')}: what is placed around them may not fill the gap, and they "
                "warm each other.",
                backing_of(row),
                told,
                least,
                member=member,
            )


def refuse_overlaps(bank: Bank, sheet: Worksheet) -> None:
    """Refuse separations between centers that are smaller than the ducts, each by its member."""
    if min(bank.gaps) >= -TIE:
        return
    members = zip(bank.gaps, ("horizontal_separation", "vertical_separation", "power_signal_separation"), strict=True)
    least = sheet.tell.size(max(duct.diameter for duct in bank.ducts))
    raise UnanswerableError(
        *(
            sheet.fault(
                member,
                "ducts_overlap",
                "Measured between centers, the separation is smaller than the ducts: they would overlap.",
                minimum=least,
            )
            for gap, member in members
            if gap < -TIE
        )
    )
