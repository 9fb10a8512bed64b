"""A stretch in a bore: whether its ducts fit, and how hard they float in its fluid."""

from __future__ import annotations

from ductrun.engineering.packing import least_circle
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import PRACTICE, WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.wording import text_of, without_noise
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import DuctContents
from ductrun.subjects.bank.duct_masses import walls_of
from ductrun.subjects.bank.floating import CONTENTS_IN_WORDS, uplift_in_fluid
from ductrun.subjects.bank.flotation_practice import CONTENTS
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.settings import BoredSetting
from ductrun.units import Length

BORE_RATIO = number("duct_run.bore_ratio")


def find_bore(setting: BoredSetting, bank: RunBank, here: Worksheet) -> None:
    """Say that the drawing-in of ducts is not judged, and caution against a bore that is tight for them; refuses one
    that cannot hold them.
    """
    place = here.within("setting", about=here.place)
    _refuse_too_small(setting, bank, place)
    place.judge(None)
    place.find(
        Severity.CAUTION,
        "drawing_in_not_judged",
        "How the ducts are drawn into the bore, and what they bear then, was not judged: that is the driller's plan, "
        "by the makers of ducts and fluid.",
        PRACTICE,
    )
    bore, bundle = setting.bore_diameter, setting.bundle_diameter
    if bore is None or bundle is None or not under(bore.si, BORE_RATIO.value * bundle.si):
        return
    told, least = place.tell.given(bore), place.tell.size(BORE_RATIO.value * bundle.si)
    place.find(
        Severity.CAUTION,
        "bore_is_tight",
        f"The bore of {text_of(told)} is tight for the ducts; {text_of(least)} is the usual least, "
        f"{BORE_RATIO.value:g} times their bundle. Ream it wider.",
        BORE_RATIO.backing,
        told,
        least,
    )


def _refuse_too_small(setting: BoredSetting, bank: RunBank, place: Worksheet) -> None:
    """Refuse a bundle wider than the bore, and bundle and bore that are narrower than the ducts can be."""
    bore, bundle = setting.bore_diameter, setting.bundle_diameter
    faults: list[Fault] = []
    if bore is not None and bundle is not None and over(bundle.si, bore.si):
        words = "The bundle is wider than the bore it is drawn into."
        faults.append(place.fault("bundle_diameter/value", "bundle_wider_than_bore", words, maximum=bore))
    ducts = () if bank.placed is None else bank.placed.ducts
    need = least_circle([duct.diameter for duct in ducts])
    for member, given in (("bundle_diameter", bundle), ("bore_diameter", bore)):
        if given is not None and under(given.si, need):
            least = Length(without_noise(given.unit.from_si(need)), given.unit)
            words = f"{len(ducts)} ducts of this size take more."
            faults.append(place.fault(f"{member}/value", "narrower_than_the_ducts", words, minimum=least))
    if faults:
        raise UnanswerableError(*faults)


def floated_in_fluid(setting: BoredSetting, bank: RunBank, here: Worksheet, asked: Asked) -> float | None:
    """Give how hard the ducts of a bore push up in its fluid [N/m], negative if they sink; None without its density."""
    density = setting.drilling_fluid_density
    if density is None:
        return None
    given, sheet = asked.floating(here)
    place = here.within("setting", about=here.place)
    contents = place.settle("duct_contents", setting.duct_contents, CONTENTS)
    uplift = uplift_in_fluid(given, walls_of(bank.given, bank.sheet), contents, density.si, sheet)
    told = place.tell.force_per_length(uplift)
    if over(uplift, 0.0):
        place.find(
            Severity.NOTE,
            "ducts_float_in_fluid",
            f"In the fluid of the bore the ducts ({CONTENTS_IN_WORDS[contents]}) push up against its crown with "
            f"{text_of(told)}: reckon with the drag of that when they are drawn in{_filled(contents)}.",
            WORKED_OUT,
            told,
        )
    return uplift


def _filled(contents: DuctContents) -> str:
    return ", or fill them with water" if contents is DuctContents.EMPTY else ""
