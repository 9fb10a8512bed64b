"""The stretches of a run, each assessed in its setting by the cores that it asks for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.kit.worksheet import Gathering
from ductrun.subjects.conduit.joining import CORD_TAIL
from ductrun.subjects.duct_run.above import assess_above, assess_riser
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AboveGround, AssessedStretch, Burial
from ductrun.subjects.duct_run.boring import find_bore, floated_in_fluid
from ductrun.subjects.duct_run.burying import bury
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.covering import judged_cover, least_over
from ductrun.subjects.duct_run.earth_loads import earth_loads_of
from ductrun.subjects.duct_run.groundwater import find_groundwater
from ductrun.subjects.duct_run.heights import Heights, earth_of
from ductrun.subjects.duct_run.joined import Around, pieces_of
from ductrun.subjects.duct_run.laid import LaidStretch
from ductrun.subjects.duct_run.laying import Outline
from ductrun.subjects.duct_run.site import Site
from ductrun.subjects.duct_run.transitions import Beside
from ductrun.subjects.duct_run.uses import judged_riser, judged_uses
from ductrun.subjects.ground.cover import Cover


def assess_stretches(
    outlines: Sequence[Outline],
    laid: Sequence[LaidStretch],
    circuits: Sequence[PlacedCircuit],
    heights: Heights | None,
    site: Site,
    asked: Asked,
) -> list[AssessedStretch]:
    """Assess every stretch, outlined and laid, with the circuits that pass it; all faults at once."""
    faults = Gathering()
    found = []
    for index, (outline, one) in enumerate(zip(outlines, laid, strict=True)):
        with faults, asked.names.about(outline.name, one.station):
            passing = [circuit for circuit in circuits if index in circuit.passes]
            around = _around(index, outlines)
            found.append(_stretch(outline, one, around, passing, heights, site, asked))
    faults.stop()
    return found


def _around(index: int, outlines: Sequence[Outline]) -> Around:
    """Give what is at the ends of a stretch: a stop, or the stretch beside it."""
    start, end = outlines[index].ends
    return Around(
        _beside(outlines[index - 1]) if start is None else start, _beside(outlines[index + 1]) if end is None else end
    )


def _beside(outline: Outline) -> Beside:
    return Beside(outline.bank, outline.stretch.setting.kind == "existing")


class _InSetting(NamedTuple):
    """What a stretch is asked for its setting alone; None of what belongs to another."""

    cover: Cover | None = None
    burial: Burial | None = None
    above: AboveGround | None = None
    bore_uplift: float | None = None


def _stretch(
    outline: Outline,
    laid: LaidStretch,
    around: Around,
    circuits: list[PlacedCircuit],
    heights: Heights | None,
    site: Site,
    asked: Asked,
) -> AssessedStretch:
    """Assess one stretch."""
    stretch, bank, here = outline.stretch, outline.bank, outline.sheet
    uses = judged_uses(stretch, bank, here)
    found = _in_setting(outline, laid, circuits, heights, site, asked)
    joining = asked.joining(stretch, here)
    tail = joining[1].settle("cord_tail", joining[0].cord_tail, CORD_TAIL).si
    pieces = [] if stretch.setting.kind == "existing" else pieces_of(laid, bank, around, joining)
    risers = []
    for riser, station in zip(outline.risers, (laid.station, laid.end), strict=True):
        if riser is not None:
            with asked.names.about(f"the riser at {riser.stop.name}", station):
                uses += judged_riser(bank, riser.stop)
                risers.append(assess_riser(riser.stop, bank, site))
    loads = earth_loads_of(stretch, bank, found.burial, asked, here)
    return AssessedStretch(
        laid, bank, uses, found.cover, found.burial, found.above, risers, pieces, found.bore_uplift, tail, loads
    )


def _in_setting(
    outline: Outline,
    laid: LaidStretch,
    circuits: list[PlacedCircuit],
    heights: Heights | None,
    site: Site,
    asked: Asked,
) -> _InSetting:
    stretch, bank, here, envelope = outline.stretch, outline.bank, outline.sheet, outline.envelope
    setting = stretch.setting
    if setting.kind == "above_ground":
        return _InSetting(above=assess_above(setting, laid, bank, site))
    if setting.kind == "bored":
        cover = judged_cover(stretch, bank, None, setting.cover, circuits, here)
        find_bore(setting, bank, here)
        return _InSetting(cover, bore_uplift=floated_in_fluid(setting, bank, here, asked))
    if setting.kind == "existing":
        return _InSetting()
    assert envelope is not None  # noqa: S101  (what is buried has one)
    earth = earth_of(setting, bank, envelope, laid, heights, here.within("setting"))
    burial = bury(stretch, bank, envelope, earth, laid, here, asked)
    find_groundwater(stretch, bank, burial, asked, here)
    return _InSetting(judged_cover(stretch, bank, envelope, least_over(setting, earth), circuits, here), burial)
