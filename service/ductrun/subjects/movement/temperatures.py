"""The temperatures a run of conduit sees: a range or a difference, the sun allowance added once."""

from __future__ import annotations

from typing import Annotated, Literal, NamedTuple

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering.rounding import over, under
from ductrun.kit.defaults import by_rule, flag, quantity
from ductrun.kit.forms import ConduitTemperature, Form, Omissible, SunAllowance, TemperatureSpan
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import RunSetting
from ductrun.units import Temperature, TemperatureDifference, TemperatureDifferenceUnit, TemperatureUnit

DIRECT_SUN = {
    setting: flag("expansion.direct_sun_" + ("above_ground" if setting is RunSetting.ABOVE_GROUND else "held"))
    for setting in RunSetting
}
SUN_ALLOWANCE = quantity("expansion.sun_allowance", TemperatureDifference)


class TemperatureRange(Form):
    """The lowest and highest temperature of the conduit itself, which in the sun is not that of the air."""

    kind: Literal["range"] = Field(description="Fixed text that says: by lowest and highest.")
    lowest: ConduitTemperature = Field(description="Lowest temperature.", examples=[{"value": 0, "unit": "degF"}])
    highest: ConduitTemperature = Field(description="Highest temperature.", examples=[{"value": 110, "unit": "degF"}])
    installation: Omissible[ConduitTemperature] = Field(
        default=None,
        description="Temperature of the conduit when the fitting is set; needed for the piston opening.",
        examples=[{"value": 60, "unit": "degF"}],
    )
    direct_sun: Omissible[bool] = Field(
        default=None,
        description="Whether the run lies in direct sun and the highest temperature does not include that yet.",
        examples=[True],
        json_schema_extra=by_rule("true above ground, false where the run is buried or encased"),
    )
    sun_allowance: Omissible[SunAllowance] = Field(
        default=None,
        description="What direct sun adds to the highest temperature.",
        examples=[{"value": 30, "unit": "delta_degF"}],
        json_schema_extra=SUN_ALLOWANCE.stated,
    )


class TemperatureSpread(Form):
    """The difference between the highest and lowest temperature of the conduit, sun included."""

    kind: Literal["difference"] = Field(description="Fixed text that says: by the difference.")
    difference: TemperatureSpan = Field(
        description="Highest less lowest temperature.", examples=[{"value": 100, "unit": "delta_degF"}]
    )


Temperatures = TypeAliasType(
    "Temperatures",
    Annotated[
        TemperatureRange | TemperatureSpread,
        Field(
            discriminator="kind",
            description="The temperatures the conduit passes through: lowest and highest, or their difference.",
        ),
    ],
)


class Span(NamedTuple):
    """Lowest and highest temperature of the conduit [K], the allowance for sun included."""

    lowest: float
    highest: float

    def refuse_outside(self, given: Temperature, member: str, sheet: Worksheet) -> None:
        """Refuse a temperature at which nobody can set a fitting made for this span."""
        si = given.si
        if self.lowest <= si <= self.highest or not (under(si, self.lowest) or over(si, self.highest)):
            return
        unit = given.unit
        lowest, highest = (Temperature(unit.from_si(bound), unit) for bound in (self.lowest, self.highest))
        raise UnanswerableError(
            sheet.fault(
                member,
                "installation_outside_range",
                "The installation temperature of the conduit must lie between the lowest and the highest: "
                f"{lowest.value:g} to {highest.value:g} {unit.value}.",
                minimum=lowest,
                maximum=highest,
            )
        )


class Seen(NamedTuple):
    """What a conduit sees: a difference of temperature and, where a range was given, its span and the installation.

    `setting` is where the run lies, `highest` the highest temperature as given, `is_air` whether that is surely of the
    air and not of a conduit in the sun, `place` the sheet of the temperatures; `sun` what of the difference is that of
    the sun [K].
    """

    setting: RunSetting
    difference: TemperatureDifference
    span: Span | None
    installation: Temperature | None
    highest: Temperature | None
    is_air: bool
    place: Worksheet
    sun: float = 0.0


def seen_by(temperatures: TemperatureRange | TemperatureSpread, setting: RunSetting, sheet: Worksheet) -> Seen:
    """Give what a conduit sees, the sun allowance of a range added once: above ground, unless told otherwise.

    The difference of a range is taken in the unit of the lowest temperature, so that whole degrees stay whole.
    """
    if temperatures.kind == "difference":
        whole = temperatures.difference
        sun = min(SUN_ALLOWANCE.value.si, whole.si) if setting is RunSetting.ABOVE_GROUND else 0.0
        return Seen(setting, whole, None, None, None, False, sheet, sun)
    lowest, highest = temperatures.lowest.si, temperatures.highest.si
    unit = temperatures.lowest.unit
    degrees = (
        TemperatureDifferenceUnit.DELTA_DEG_F
        if unit is TemperatureUnit.DEG_F
        else TemperatureDifferenceUnit.DELTA_DEG_C
    )
    difference = temperatures.highest.in_unit(unit) - temperatures.lowest.value
    allowance = _sun_allowance(temperatures, setting, sheet)
    is_air = allowance is not None or setting is not RunSetting.ABOVE_GROUND
    hottest = highest
    if allowance is not None:
        hottest += allowance.si
        difference += allowance.in_unit(degrees)
    if highest < lowest or hottest == lowest:
        raise UnanswerableError(
            sheet.fault(
                "highest/value",
                "highest_not_above_lowest",
                f"The highest temperature must be above the lowest, {temperatures.lowest}.",
                minimum=temperatures.lowest,
            )
        )
    span = Span(lowest, hottest)
    if temperatures.installation is not None:
        span.refuse_outside(temperatures.installation, "installation/value", sheet)
    whole = TemperatureDifference(difference, degrees)
    sun = 0.0 if allowance is None else allowance.si
    return Seen(setting, whole, span, temperatures.installation, temperatures.highest, is_air, sheet, sun)


def _sun_allowance(
    temperatures: TemperatureRange, setting: RunSetting, sheet: Worksheet
) -> TemperatureDifference | None:
    if temperatures.sun_allowance is None:
        in_sun = sheet.settle("direct_sun", temperatures.direct_sun, DIRECT_SUN[setting])
        return sheet.settle("sun_allowance", None, SUN_ALLOWANCE) if in_sun else None
    if temperatures.direct_sun is False:
        raise UnanswerableError(
            sheet.fault("sun_allowance", "contradiction", "A sun allowance contradicts direct_sun false.")
        )
    return temperatures.sun_allowance
