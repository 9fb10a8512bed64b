"""What a driller works by: how long, how wide, at which angles a bore begins and ends, and how deep it lies."""

from __future__ import annotations

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.readable import quantity_text
from ductrun.drawings.stations import angle_text, station_text
from ductrun.engineering.rounding import TIE
from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run.assessment import AssessedStretch, DuctRun
from ductrun.units import AnyQuantity, Quantity


def bore_table(run: DuctRun, telling: Telling) -> Markup:
    """Give every bore of a run in a row."""
    rows = [_row(one, telling) for one in run.stretches if one.laid.given.setting.kind == "bored"]
    if not rows:
        return NOTHING
    header = ("Stretch", "Stations", "Drilled length", "Reamed to", "Goes in", "Comes out", "Cover at least", "Uplift")
    return joined([element("h2", "Bore"), table(header, rows, kind="dense")])


def _row(one: AssessedStretch, telling: Telling) -> tuple[str, ...]:
    laid, setting = one.laid, one.laid.given.setting
    uplift = None if one.bore_uplift is None else telling.force_per_length(one.bore_uplift)
    return (
        laid.name,
        f"{station_text(laid.station, telling)} to {station_text(laid.end, telling)}",
        quantity_text(telling.distance(laid.length)),
        _given(getattr(setting, "bore_diameter", None), telling),
        _slope(laid.sections[0].element.entry_grade),
        _slope(laid.sections[-1].element.exit_grade),
        _given(getattr(setting, "cover", None), telling),
        _not_given(uplift),
    )


def _given(size: Quantity | None, telling: Telling) -> str:
    return _not_given(None if size is None else telling.given(size))


def _not_given(told: AnyQuantity | None) -> str:
    return "not given: ask" if told is None else quantity_text(told)


def _slope(grade: float) -> str:
    """Write the angle of a bore [rad] at one of its ends."""
    return "level" if abs(grade) < TIE else f"{angle_text(abs(grade))} {'up' if grade > 0.0 else 'down'}"
