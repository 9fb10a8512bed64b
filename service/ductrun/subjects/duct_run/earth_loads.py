"""Earth and traffic on every buried stretch, where they are asked: with practice said once, and what differs there."""

from __future__ import annotations

import math
from typing import Any

from ductrun.engineering.bank import encased
from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.choices import FlotationMedium
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import Burial
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.groundwater import water_depth
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over, members_of
from ductrun.subjects.ground.choices import EarthLoadMethod
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.ground.laid_ducts import lay
from ductrun.subjects.ground.loaded_ducts import MADE_OF, ducts_of_bank
from ductrun.subjects.ground.under_load import UnderLoad, bear, unloaded
from ductrun.subjects.parts.envelope import AskedPour, need_of
from ductrun.units import Length, LengthUnit

_IN_EARTH = {"encased", "direct_buried", "bored", "existing"}


def earth_loads_of(
    stretch: Stretch, bank: RunBank, burial: Burial | None, asked: Asked, here: Worksheet
) -> list[UnderLoad]:
    """Give what earth and traffic do to a stretch at the covers that ask most. `here` is the sheet of the stretch."""
    if (asked.request.earth_load is None and stretch.earth_load is None) or stretch.setting.kind not in _IN_EARTH:
        return []
    why = _not_judged(bank, burial)
    if burial is None or why is not None:
        here.judge(None)
        here.find(
            Severity.CAUTION,
            "earth_load_not_judged",
            f"What earth and traffic do to the ducts was not judged, for {why}: ask a structural engineer.",
            PRACTICE,
            member="",
        )
        return []
    given, place = _practice(stretch, asked, here)
    earth = burial.earth
    given = _square_to_the_ground(_in_its_trench(given, burial), earth)
    forbidden = burial.envelope.concrete is None and need_of(_asked(bank, here)).encased_only is True
    if forbidden:
        return [unloaded(earth.shortest, place)]
    concrete = burial.envelope.concrete
    around = None if concrete is None else encased(bank.in_its_place, concrete, stepped=False)
    ducts = ducts_of_bank(bank.given, bank.sheet, given, place, encased=concrete is not None)
    laid = lay(bank.in_its_place, ducts, around)
    return [bear(given, laid, cover, earth.deepest, place) for cover in _covers(earth, given)]


def _square_to_the_ground(given: Any, earth: EarthCover) -> Any:
    """Give the depth of groundwater, which is sounded plumb, as cover is measured: where the ducts are steepest."""
    depth, steep = given.groundwater_depth, math.cos(earth.steepest)
    return given if steep == 1.0 else laid_over(given, {"groundwater_depth": Length(depth.value * steep, depth.unit)})


def _covers(earth: EarthCover, given: Any) -> list[float]:
    """Give the covers that ask most [m], square to the ground: traffic presses most under the least, earth under the
    greatest, and groundwater lifts most for the earth that lies on what it just covers.
    """
    least, greatest = earth.shortest, earth.farthest
    if not over(greatest, least):
        return [least]
    water = 0.0 if given.groundwater_depth is None else given.groundwater_depth.si
    between = [water] if over(water, least) and over(greatest, water) else []
    return [least, *between, greatest]


def _not_judged(bank: RunBank, burial: Burial | None) -> str | None:
    """Say why ducts cannot be judged under earth; None where they can."""
    if burial is None:
        return "its ducts do not lie in a trench"
    kinds = {conduit.type for conduit in bank.conduits if conduit.type is not None}
    return None if kinds <= MADE_OF.keys() else "these formulas give the deflection of plastic duct alone"


def _asked(bank: RunBank, here: Worksheet) -> AskedPour:
    place = here.within("setting")
    return AskedPour(bank.given, bank.sheet, None, place, None, place)


def _practice(stretch: Stretch, asked: Asked, here: Worksheet) -> tuple[Any, Worksheet]:
    """Give how a stretch is loaded and its sheet: what the run says, the groundwater of its place, its own over it."""
    request, sheet = asked.request, asked.sheet
    mine = here.within("earth_load")
    if request.earth_load is None:
        shared, common, own = stretch.earth_load, mine, {}
    else:
        shared, common, own = request.earth_load, sheet.within("earth_load"), members_of(stretch.earth_load)
    redirected = {member: mine.pointer(member) for member in own}
    own["groundwater_depth"] = water_depth(request)
    redirected["groundwater_depth"] = sheet.pointer("site/groundwater_depth")
    lift = _poured_lift(request)
    if lift is not None and own.get("lift_height", shared.lift_height) is None:  # type: ignore[union-attr]
        own["lift_height"] = lift
        redirected["lift_height"] = sheet.pointer("flotation/lift_height")
    # a stretch that says nothing of its own cannot be given a part of it: it would have to say its traffic too
    told = None if stretch.earth_load is None else mine
    return laid_over(shared, own), LayeredSheet(common, told, redirected, here.place)


def _poured_lift(request: DuctRunRequest) -> Length | None:
    """Give the lifts in which the run is poured, as what holds its ducts down in the pour says them."""
    floating = request.flotation
    if floating is None or floating.medium not in (None, FlotationMedium.CONCRETE):
        return None
    return floating.lift_height


def _in_its_trench(given: Any, burial: Burial) -> Any:
    """Give the trench that earth arches in, at the top of what is buried, where its width is needed and not given."""
    if given.trench_width is not None or given.earth_load_method is not EarthLoadMethod.TRENCH:
        return given
    trench = burial.trench
    width = trench.width + 2.0 * trench.side_slope * (trench.bedding + burial.envelope.height)
    return laid_over(given, {"trench_width": Length(LengthUnit.FT.from_si(width), LengthUnit.FT)})
