"""The earth over a stretch, held against the least that the code asks for."""

from __future__ import annotations

from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import Service
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.settings import LOCATION, DirectBuriedSetting, EncasedSetting
from ductrun.subjects.ground.choices import VoltageClass, WiringMethod
from ductrun.subjects.ground.cover import Cover, judge_cover
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.ground.least_cover import Buried, Places
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.envelope import AskedPour, need_of
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
_TO_LIST = (
    "ask its maker for the listing, encase it, or take conduit of a type for direct burial, such as pvc_schedule_40"
)


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
    buried = Buried(method, location, voltage, encased, listed, _IN_SETTING, above, around, _TO_LIST)
    # of duct for concrete the envelope tells that it has none or too little, voltage known or not
    return judge_cover(buried, least, place, concrete_told=envelope is not None)


def least_over(setting: EncasedSetting | DirectBuriedSetting, earth: EarthCover) -> Length:
    """Give the least earth over a stretch as given, or by the shortest way up to the ground of the profile."""
    if setting.cover is not None:
        return setting.cover
    return Length(without_noise(LengthUnit.FT.from_si(earth.shortest)), LengthUnit.FT)


def _method(bank: RunBank) -> WiringMethod | None:
    """Say what is buried, for its cover: of several kinds the one that asks for more."""
    kinds = {conduit.type for conduit in bank.conduits}
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
