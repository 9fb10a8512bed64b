"""Groundwater on a buried stretch: water in its trench, and empty ducts that nothing was asked to hold down."""

from __future__ import annotations

from typing import Final

from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT, published
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.choices import FlotationMedium
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import Burial
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.settings import BURIED
from ductrun.subjects.ground.earth_loading import GROUNDWATER_DEPTH
from ductrun.subjects.ground.loaded_ducts import MADE_OF
from ductrun.units import Length

_EXCAVATIONS: Final = published("osha-1926-subpart-p")


def settle_groundwater(request: DuctRunRequest, sheet: Worksheet) -> None:
    """Settle how deep the groundwater stands, once for all that reads it, where an earth_load asks."""
    if _has_earth_load(request):
        given = None if request.site is None else request.site.groundwater_depth
        sheet.settle("site/groundwater_depth", given, GROUNDWATER_DEPTH)


def water_depth(request: DuctRunRequest) -> Length | None:
    """Give how deep the groundwater stands: as it was settled; None where it was not given and nothing asks."""
    site = request.site
    if site is not None and site.groundwater_depth is not None:
        return site.groundwater_depth
    return GROUNDWATER_DEPTH.value if _has_earth_load(request) else None


def _has_earth_load(request: DuctRunRequest) -> bool:
    return any(
        one.setting.kind in BURIED and (request.earth_load is not None or one.earth_load is not None)
        for one in request.stretches
    )


def stands_in_water(burial: Burial, request: DuctRunRequest) -> bool:
    """Say whether the floor of a trench lies under the groundwater of its place."""
    depth = water_depth(request)
    return depth is not None and over(burial.trench.depth, depth.si)


def find_groundwater(stretch: Stretch, bank: RunBank, burial: Burial, asked: Asked, here: Worksheet) -> None:
    """Caution of water in the trench, and of ducts whose flotation nothing judges, for want of an earth_load."""
    request = asked.request
    if stands_in_water(burial, request):
        asked.sheet.caution(
            "water_in_the_trench",
            "Groundwater stands above the floor of the trench: draw it down before digging and keep it down until the "
            "trench is filled. Nobody works in a trench in which water stands or rises, and a competent person looks "
            "at its walls after any of it.",
            _EXCAVATIONS,
        )
    if request.earth_load is not None or stretch.earth_load is not None:
        return
    floating, do = burial.in_groundwater, "give earth_load"
    if not {conduit.type for conduit in bank.conduits} <= {None, *MADE_OF}:
        do = "give duct_mass_per_length in flotation, and ask a structural engineer"  # of these an earth_load has none
    if floating is not None:
        if floating.full_uplift > 0.0:
            _find_unjudged("Groundwater stands above the bottom of this stretch: whether", do, here)
        return
    practice, site = request.flotation, request.site
    asks = practice is not None and practice.medium is FlotationMedium.GROUNDWATER
    if asks and (site is None or site.groundwater_depth is None):
        _find_unjudged("How deep the groundwater stands is not given: whether", f"give it in site, and {do}", here)


def _find_unjudged(why: str, do: str, here: Worksheet) -> None:
    here.judge(None)
    here.find(
        Severity.CAUTION,
        "flotation_not_judged",
        f"{why} the ducts float when they are empty was not judged; {do}.",
        WORKED_OUT,
        member="",
    )
