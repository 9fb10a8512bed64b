"""A stretch in earth: its envelope, how deep it lies, what is dug, poured, tied down and held apart."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.alignment import Line
from ductrun.engineering.bank import Envelope, bare
from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import FlotationMedium
from ductrun.subjects.bank.duct_masses import DuctWall, walls_of
from ductrun.subjects.bank.encasing import Encasing, encase
from ductrun.subjects.bank.floating import Flotation, float_bank
from ductrun.subjects.bank.flotation_practice import DENSITIES, Floating
from ductrun.subjects.bank.spacing import Spacers, runs_of, space
from ductrun.subjects.bank.spacing_practice import Spacing
from ductrun.subjects.duct_run.assessment import Burial
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import PourPractice, ProfileReference, Service
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.practice import laid_over, practice_of
from ductrun.subjects.duct_run.settings import LOCATION, POUR, SPACERS, DirectBuriedSetting, EncasedSetting
from ductrun.subjects.ground.choices import VoltageClass, WiringMethod
from ductrun.subjects.ground.cover import Cover, judge_cover
from ductrun.subjects.ground.digging import Digging, dig, poured_as_dug
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.ground.least_cover import Buried, Places
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.envelope import AskedPour, buried_directly, concrete_of, need_of, poured
from ductrun.units import Length, LengthUnit, Voltage

_CLASSES = (
    (Voltage.parse(1, "kV").si, VoltageClass.UP_TO_1000_V),
    (Voltage.parse(22, "kV").si, VoltageClass.OVER_1_KV_TO_22_KV),
    (Voltage.parse(40, "kV").si, VoltageClass.OVER_22_KV_TO_40_KV),
)
_STEEL = {ConduitType.RMC, ConduitType.IMC}
_NONMETALLIC = {
    kind for kind in ConduitType if kind.startswith("pvc_") or kind in (ConduitType.HDPE_SCHEDULE_40, ConduitType.RTRC)
}
_HERE = "setting"
_IN_SETTING = Places(method=_HERE, voltage=_HERE, encased=_HERE, listed=_HERE, concrete=_HERE, around=_HERE)


class Practices(NamedTuple):
    """What the run says of all its stretches, each with its sheet: those of digging a stretch are laid over it."""

    request: DuctRunRequest
    sheet: Worksheet

    def digging(self, stretch: Stretch, here: Worksheet) -> tuple[Digging, Worksheet]:
        """Give how a stretch is dug."""
        return practice_of(Digging, "digging", self.request.digging, stretch.digging, self.sheet, here)

    def concrete(self, stretch: Stretch, here: Worksheet) -> tuple[Encasing, Worksheet]:
        """Give how its concrete is mixed and bought."""
        return practice_of(Encasing, "concrete", self.request.concrete, stretch.concrete, self.sheet, here)

    def spacing(self, stretch: Stretch, here: Worksheet) -> tuple[Spacing, Worksheet]:
        """Give how its ducts are held apart."""
        return practice_of(Spacing, "spacing", self.request.spacing, stretch.spacing, self.sheet, here)

    def floating(self, here: Worksheet) -> tuple[Floating, Worksheet]:
        """Give how ducts are held down in a pour."""
        return practice_of(Floating, "flotation", self.request.flotation, None, self.sheet, here)


def envelope_of(stretch: Stretch, bank: RunBank, here: Worksheet, practices: Practices) -> Envelope:
    """Give the envelope of a stretch in earth."""
    setting, place = stretch.setting, here.within("setting")
    if setting.kind != "encased":
        shape = place.within("pour_shape")
        asked = AskedPour(bank.given, bank.sheet, None, place.within("concrete_cover"), None, shape)
        return buried_directly(bank.in_its_place, asked)
    asked = AskedPour(
        bank.given,
        bank.sheet,
        setting.concrete_cover,
        place.within("concrete_cover"),
        setting.pour_shape,
        place.within("pour_shape"),
    )
    concrete = concrete_of(asked)
    if place.settle("pour", setting.pour, POUR) is PourPractice.FORMED:
        return poured(bank.in_its_place, asked, concrete)
    given, sheet = practices.digging(stretch, here)
    return poured_as_dug(given, bank.in_its_place, asked, concrete, sheet)


def above_ducts(envelope: Envelope) -> float:
    """Give the concrete above the ducts [m]."""
    return 0.0 if envelope.concrete is None else envelope.concrete.top


class Heights(NamedTuple):
    """Ground and line of a profile over the stations [m], what the line is, and the sheet of the profile."""

    ground: Line
    line: Line
    reference: ProfileReference
    sheet: Worksheet

    def over(self, envelope: Envelope, station: float) -> float:
        """Give the earth over an envelope at a station [m]; the invert is taken as the bottom of the lowest duct."""
        top = self.line.height(station)
        if self.reference is not ProfileReference.TOP_OF_ENVELOPE:
            top += above_ducts(envelope)
        if self.reference is ProfileReference.DUCT_INVERT:
            top += envelope.bank.height
        return self.ground.height(station) - top


def earth_of(
    setting: EncasedSetting | DirectBuriedSetting,
    envelope: Envelope,
    start: float,
    length: float,
    heights: Heights | None,
    place: Worksheet,
) -> EarthCover:
    """Give the earth over the envelope of a stretch from a station on [m], over a length in plan [m]."""
    if heights is None:
        if setting.cover is None:
            raise UnanswerableError(place.fault("cover", "missing", "Give the cover, or a profile of the run."))
        cover = setting.cover.si
        return EarthCover(cover, cover, ((0.0, cover), (length, cover)), place.within("cover"))
    if setting.cover is not None:
        raise UnanswerableError(
            place.fault("cover", "given_by_the_profile", "The profile gives the cover: leave it out.")
        )
    stations = sorted({*heights.line.between(start, start + length), *heights.ground.between(start, start + length)})
    along = tuple((at - start, heights.over(envelope, at)) for at in stations)
    covers = [cover for _, cover in along]
    if min(covers) < 0.0:
        at = stations[covers.index(min(covers))]
        where = heights.sheet.tell.distance(at)
        raise UnanswerableError(
            heights.sheet.fault(
                "points",
                "above_the_ground",
                f"{without_noise(where.value):g} {where.unit} from the start, what is buried stands above the ground.",
            )
        )
    return EarthCover(min(covers), max(covers), along, heights.sheet.within("points"))


def judged_cover(
    stretch: Stretch,
    bank: RunBank,
    envelope: Envelope | None,
    least: Length | None,
    circuits: list[PlacedCircuit],
    here: Worksheet,
) -> Cover | None:
    """Hold the least earth over a stretch against the code; None where voltage or rule is not known, which is found."""
    setting = stretch.setting
    assert setting.kind in {"encased", "direct_buried", "bored"}  # noqa: S101
    place = here.within("setting", about=here.place)
    method = _method(bank)
    voltage = _voltage_class(circuits)
    if least is None or method is None or voltage is None:
        what = (
            "the cover is not given"
            if least is None
            else "the table does not know this conduit"
            if method is None
            else "the voltage of its circuits is not given"
        )
        place.find(
            Severity.CAUTION,
            "cover_not_judged",
            f"The cover was not judged, for {what}.",
            place.rule("cover_to_1000_v"),
        )
        place.judge(None)
        return None
    location = place.settle("location", setting.location, LOCATION)
    encased = envelope is not None and envelope.concrete is not None
    asked = AskedPour(bank.given, bank.sheet, None, place, None, place)
    need = need_of(asked).encased_only
    above = around = None
    if envelope is not None and envelope.concrete is not None:
        top, *others = envelope.concrete
        above, around = (
            Length(without_noise(LengthUnit.INCH.from_si(one)), LengthUnit.INCH) for one in (top, min(others))
        )
    listed = None if need is None else not need
    buried = Buried(method, location, voltage, encased, listed, _IN_SETTING, above, around)
    return judge_cover(buried, least, place)


def least_over(setting: EncasedSetting | DirectBuriedSetting, earth: EarthCover) -> Length:
    """Give the least earth over a stretch as given, or as the profile gives it."""
    if setting.cover is not None:
        return setting.cover
    return Length(without_noise(LengthUnit.FT.from_si(earth.least)), LengthUnit.FT)


def _method(bank: RunBank) -> WiringMethod | None:
    """Say what is buried, for its cover: of several kinds the one that asks for more."""
    kinds = {duct.conduit.type for duct in bank.ducts}
    if kinds <= _STEEL:
        return WiringMethod.RMC_IMC
    return WiringMethod.NONMETALLIC_RACEWAY if kinds <= _STEEL | _NONMETALLIC else None


def _voltage_class(circuits: list[PlacedCircuit]) -> VoltageClass | None:
    """Give the class of the highest voltage; None where there is no power, or its voltage is not known."""
    power = [circuit for circuit in circuits if circuit.service is Service.POWER]
    voltages = [circuit.voltage.si for circuit in power if circuit.voltage is not None]
    if not power or len(voltages) < len(power):
        return None
    highest = max(voltages)
    return next((one for most, one in _CLASSES if not over(highest, most)), VoltageClass.OVER_40_KV)


def bury(
    stretch: Stretch,
    bank: RunBank,
    envelope: Envelope,
    earth: EarthCover,
    length: float,
    here: Worksheet,
    practices: Practices,
) -> Burial:
    """Give what a stretch in earth takes over a length in plan [m]."""
    digging, dug_on = practices.digging(stretch, here)
    trench = dig(digging, envelope, earth, length, dug_on)
    walls = walls_of(bank.given, bank.sheet)
    spacers = encasement = flotation = None
    if stretch.setting.kind == "encased":
        concrete, poured_on = practices.concrete(stretch, here)
        encasement = encase(concrete, envelope, length, poured_on)
        floating, floated_on = practices.floating(here)
        flotation = float_bank(floating, bare(bank.in_its_place), walls, None, length, floated_on)
    if _is_spaced(stretch, bank, here):
        spacers = _spaced(stretch, bank, length, here, practices)
    return Burial(
        envelope,
        earth,
        trench,
        spacers,
        encasement,
        flotation,
        _in_groundwater(envelope, walls, earth, trench.depth - trench.bedding, here, practices),
    )


def _is_spaced(stretch: Stretch, bank: RunBank, here: Worksheet) -> bool:
    """Say whether spacers hold the ducts of a stretch apart."""
    setting = stretch.setting
    if setting.kind != "direct_buried":
        return True
    return len(bank.ducts) > 1 and here.within("setting").settle("spacers", setting.spacers, SPACERS)


def _spaced(stretch: Stretch, bank: RunBank, length: float, here: Worksheet, practices: Practices) -> Spacers:
    given, sheet = practices.spacing(stretch, here)
    by_tier: list[list[float]] = [[] for _ in bank.in_its_place.tier_tops]
    for duct in bank.in_its_place.ducts:
        by_tier[duct.tier].append(duct.diameter)
    return space(given, runs_of(by_tier), length, sheet)


def _in_groundwater(
    envelope: Envelope,
    walls: list[DuctWall],
    earth: EarthCover,
    bottom: float,
    here: Worksheet,
    practices: Practices,
) -> Flotation | None:
    """Float the finished bank, empty, where its `bottom` [m below grade] lies under the groundwater."""
    site = practices.request.site
    if site is None or site.groundwater_depth is None or not over(bottom, site.groundwater_depth.si):
        return None
    given, sheet = practices.floating(here)
    water = DENSITIES[FlotationMedium.GROUNDWATER]
    sheet.cite(water.backing.source_id)
    own = {"medium": FlotationMedium.GROUNDWATER, "fluid_density": water.value, "lift_height": None}
    return float_bank(laid_over(given, own), envelope, walls, earth.least, None, sheet)
