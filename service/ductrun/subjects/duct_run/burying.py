"""A stretch in earth: its envelope, how deep it lies, what is dug, poured, tied down and held apart."""

from __future__ import annotations

from ductrun.engineering.bank import Envelope, bare
from ductrun.engineering.rounding import over
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.choices import FlotationMedium
from ductrun.subjects.bank.duct_masses import walls_of
from ductrun.subjects.bank.encasing import encase
from ductrun.subjects.bank.floating import Flotation, float_bank
from ductrun.subjects.bank.flotation_practice import DENSITIES
from ductrun.subjects.bank.spacing import Spacers, runs_of, space
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import Burial
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import PourPractice
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.groundwater import water_depth
from ductrun.subjects.duct_run.laid import LaidStretch
from ductrun.subjects.duct_run.practice import laid_over
from ductrun.subjects.duct_run.settings import POUR, SPACERS
from ductrun.subjects.ground.digging import dig, poured_as_dug
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.parts.envelope import AskedPour, buried_directly, concrete_of, poured


def envelope_of(stretch: Stretch, bank: RunBank, here: Worksheet, asked: Asked) -> Envelope:
    """Give the envelope of a stretch in earth."""
    setting, place = stretch.setting, here.within("setting")
    if setting.kind != "encased":
        shape = place.within("pour_shape")
        pour = AskedPour(bank.given, bank.sheet, None, place.within("concrete_cover"), None, shape)
        return buried_directly(bank.in_its_place, pour._replace(bank_place=bank.sheet.within("", about=here.place)))
    pour = AskedPour(
        bank.given,
        bank.sheet,
        setting.concrete_cover,
        place.within("concrete_cover"),
        setting.pour_shape,
        place.within("pour_shape"),
    )
    concrete = concrete_of(pour)
    if place.settle("pour", setting.pour, POUR) is PourPractice.FORMED:
        return poured(bank.in_its_place, pour, concrete)
    given, sheet = asked.digging(stretch, here)
    return poured_as_dug(given, bank.in_its_place, pour, concrete, sheet)


def bury(
    stretch: Stretch,
    bank: RunBank,
    envelope: Envelope,
    earth: EarthCover,
    laid: LaidStretch,
    here: Worksheet,
    asked: Asked,
) -> Burial:
    """Give what a stretch in earth takes: it is dug in plan, and poured, reinforced and held along its ducts."""
    digging, dug_on = asked.digging(stretch, here)
    trench = dig(digging, envelope, earth, laid.plan_length, dug_on)
    length = laid.duct_length
    spacers = encasement = flotation = None
    if stretch.setting.kind == "encased":
        concrete, poured_on = asked.concrete(stretch, here)
        encasement = encase(concrete, envelope, length, poured_on)
        floating, floated_on = asked.floating(here)
        flotation = float_bank(
            floating, bare(bank.in_its_place), walls_of(bank.given, bank.sheet), None, length, floated_on
        )
    if _is_spaced(stretch, bank, here):
        spacers = _spaced(stretch, bank, length, here, asked)
    return Burial(
        envelope,
        earth,
        trench,
        spacers,
        encasement,
        flotation,
        _in_groundwater(envelope, bank, earth, trench.depth - trench.bedding, here, asked),
    )


def _is_spaced(stretch: Stretch, bank: RunBank, here: Worksheet) -> bool:
    """Say whether spacers hold the ducts of a stretch apart."""
    setting = stretch.setting
    if setting.kind != "direct_buried":
        return True
    return len(bank.ducts) > 1 and here.within("setting").settle("on_spacers", setting.on_spacers, SPACERS)


def _spaced(stretch: Stretch, bank: RunBank, length: float, here: Worksheet, asked: Asked) -> Spacers:
    given, sheet = asked.spacing(stretch, here)
    by_tier: list[list[float]] = [[] for _ in bank.in_its_place.tier_tops]
    for duct in bank.in_its_place.ducts:
        by_tier[duct.tier].append(duct.diameter)
    return space(given, runs_of(by_tier), length, sheet)


def _in_groundwater(
    envelope: Envelope,
    bank: RunBank,
    earth: EarthCover,
    bottom: float,
    here: Worksheet,
    asked: Asked,
) -> Flotation | None:
    """Float the finished bank, empty, where its `bottom` [m below grade] lies under the groundwater."""
    depth = water_depth(asked.request)
    if depth is None or not over(bottom, depth.si):
        return None
    given, sheet = asked.floating(here)
    water = DENSITIES[FlotationMedium.GROUNDWATER]
    sheet.cite(water.backing.source_id)
    own = {"medium": FlotationMedium.GROUNDWATER, "fluid_density": water.value, "lift_height": None}
    return float_bank(laid_over(given, own), envelope, walls_of(bank.given, bank.sheet), earth.shortest, None, sheet)
