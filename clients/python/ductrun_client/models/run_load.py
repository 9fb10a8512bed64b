from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.circuit_conduit import CircuitConduit
from ..models.circuit_system import CircuitSystem
from ..models.shield_grounding import ShieldGrounding
from ..models.terminal_rating import TerminalRating
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.apparent_power import ApparentPower
    from ..models.current import Current
    from ..models.power import Power
    from ..models.resistance_per_length import ResistancePerLength
    from ..models.temperature import Temperature


T = TypeVar("T", bound="RunLoad")


@_attrs_define
class RunLoad:
    """What a circuit carries, at the voltage it has; its sets are those of its ducts.

    Attributes:
        apparent_power (ApparentPower | Unset): An apparent power with its unit.
        conductor_temperature (Temperature | Unset): A temperature with its unit.
        conduit_material (CircuitConduit | Unset): Conduits that Table 9 tells apart.
        current (Current | Unset): An electric current with its unit.
        hours_per_year (float | Unset): At this load, to tell what is lost in a year.
        limit_percent (float | Unset): Most that may be lost.
        load_factor_percent (float | Unset): Mean load of a day in percent of its peak.
        loaded_conductor_count (int | Unset): Conductors in each duct that carry the current; neutrals and grounds carry
            none here.
        overcurrent_device (Current | Unset): An electric current with its unit.
        power (Power | Unset): A power with its unit.
        power_factor (float | Unset): Of the load, which lags; of direct current there is none.
        reactance (ResistancePerLength | Unset): An electric resistance per length with its unit.
        resistance (ResistancePerLength | Unset): An electric resistance per length with its unit.
        shield_grounding (ShieldGrounding | Unset): Where shields are grounded.
        system (CircuitSystem | Unset): Kinds of circuit; of a single phase two wires carry the current.
        terminal_rating (TerminalRating | Unset): Temperatures that terminals are marked for.
    """

    apparent_power: ApparentPower | Unset = UNSET
    conductor_temperature: Temperature | Unset = UNSET
    conduit_material: CircuitConduit | Unset = UNSET
    current: Current | Unset = UNSET
    hours_per_year: float | Unset = UNSET
    limit_percent: float | Unset = UNSET
    load_factor_percent: float | Unset = UNSET
    loaded_conductor_count: int | Unset = UNSET
    overcurrent_device: Current | Unset = UNSET
    power: Power | Unset = UNSET
    power_factor: float | Unset = UNSET
    reactance: ResistancePerLength | Unset = UNSET
    resistance: ResistancePerLength | Unset = UNSET
    shield_grounding: ShieldGrounding | Unset = UNSET
    system: CircuitSystem | Unset = UNSET
    terminal_rating: TerminalRating | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        apparent_power: dict[str, Any] | Unset = UNSET
        if not isinstance(self.apparent_power, Unset):
            apparent_power = self.apparent_power.to_dict()

        conductor_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor_temperature, Unset):
            conductor_temperature = self.conductor_temperature.to_dict()

        conduit_material: str | Unset = UNSET
        if not isinstance(self.conduit_material, Unset):
            conduit_material = self.conduit_material.value

        current: dict[str, Any] | Unset = UNSET
        if not isinstance(self.current, Unset):
            current = self.current.to_dict()

        hours_per_year = self.hours_per_year

        limit_percent = self.limit_percent

        load_factor_percent = self.load_factor_percent

        loaded_conductor_count = self.loaded_conductor_count

        overcurrent_device: dict[str, Any] | Unset = UNSET
        if not isinstance(self.overcurrent_device, Unset):
            overcurrent_device = self.overcurrent_device.to_dict()

        power: dict[str, Any] | Unset = UNSET
        if not isinstance(self.power, Unset):
            power = self.power.to_dict()

        power_factor = self.power_factor

        reactance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reactance, Unset):
            reactance = self.reactance.to_dict()

        resistance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.resistance, Unset):
            resistance = self.resistance.to_dict()

        shield_grounding: str | Unset = UNSET
        if not isinstance(self.shield_grounding, Unset):
            shield_grounding = self.shield_grounding.value

        system: str | Unset = UNSET
        if not isinstance(self.system, Unset):
            system = self.system.value

        terminal_rating: str | Unset = UNSET
        if not isinstance(self.terminal_rating, Unset):
            terminal_rating = self.terminal_rating.value

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if apparent_power is not UNSET:
            field_dict["apparent_power"] = apparent_power
        if conductor_temperature is not UNSET:
            field_dict["conductor_temperature"] = conductor_temperature
        if conduit_material is not UNSET:
            field_dict["conduit_material"] = conduit_material
        if current is not UNSET:
            field_dict["current"] = current
        if hours_per_year is not UNSET:
            field_dict["hours_per_year"] = hours_per_year
        if limit_percent is not UNSET:
            field_dict["limit_percent"] = limit_percent
        if load_factor_percent is not UNSET:
            field_dict["load_factor_percent"] = load_factor_percent
        if loaded_conductor_count is not UNSET:
            field_dict["loaded_conductor_count"] = loaded_conductor_count
        if overcurrent_device is not UNSET:
            field_dict["overcurrent_device"] = overcurrent_device
        if power is not UNSET:
            field_dict["power"] = power
        if power_factor is not UNSET:
            field_dict["power_factor"] = power_factor
        if reactance is not UNSET:
            field_dict["reactance"] = reactance
        if resistance is not UNSET:
            field_dict["resistance"] = resistance
        if shield_grounding is not UNSET:
            field_dict["shield_grounding"] = shield_grounding
        if system is not UNSET:
            field_dict["system"] = system
        if terminal_rating is not UNSET:
            field_dict["terminal_rating"] = terminal_rating

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.apparent_power import ApparentPower  # noqa: PLC0415
        from ..models.current import Current  # noqa: PLC0415
        from ..models.power import Power  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        _apparent_power = d.pop("apparent_power", UNSET)
        apparent_power: ApparentPower | Unset
        if isinstance(_apparent_power, Unset):
            apparent_power = UNSET
        else:
            apparent_power = ApparentPower.from_dict(_apparent_power)

        _conductor_temperature = d.pop("conductor_temperature", UNSET)
        conductor_temperature: Temperature | Unset
        if isinstance(_conductor_temperature, Unset):
            conductor_temperature = UNSET
        else:
            conductor_temperature = Temperature.from_dict(_conductor_temperature)

        _conduit_material = d.pop("conduit_material", UNSET)
        conduit_material: CircuitConduit | Unset
        if isinstance(_conduit_material, Unset):
            conduit_material = UNSET
        else:
            conduit_material = CircuitConduit(_conduit_material)

        _current = d.pop("current", UNSET)
        current: Current | Unset
        if isinstance(_current, Unset):
            current = UNSET
        else:
            current = Current.from_dict(_current)

        hours_per_year = d.pop("hours_per_year", UNSET)

        limit_percent = d.pop("limit_percent", UNSET)

        load_factor_percent = d.pop("load_factor_percent", UNSET)

        loaded_conductor_count = d.pop("loaded_conductor_count", UNSET)

        _overcurrent_device = d.pop("overcurrent_device", UNSET)
        overcurrent_device: Current | Unset
        if isinstance(_overcurrent_device, Unset):
            overcurrent_device = UNSET
        else:
            overcurrent_device = Current.from_dict(_overcurrent_device)

        _power = d.pop("power", UNSET)
        power: Power | Unset
        if isinstance(_power, Unset):
            power = UNSET
        else:
            power = Power.from_dict(_power)

        power_factor = d.pop("power_factor", UNSET)

        _reactance = d.pop("reactance", UNSET)
        reactance: ResistancePerLength | Unset
        if isinstance(_reactance, Unset):
            reactance = UNSET
        else:
            reactance = ResistancePerLength.from_dict(_reactance)

        _resistance = d.pop("resistance", UNSET)
        resistance: ResistancePerLength | Unset
        if isinstance(_resistance, Unset):
            resistance = UNSET
        else:
            resistance = ResistancePerLength.from_dict(_resistance)

        _shield_grounding = d.pop("shield_grounding", UNSET)
        shield_grounding: ShieldGrounding | Unset
        if isinstance(_shield_grounding, Unset):
            shield_grounding = UNSET
        else:
            shield_grounding = ShieldGrounding(_shield_grounding)

        _system = d.pop("system", UNSET)
        system: CircuitSystem | Unset
        if isinstance(_system, Unset):
            system = UNSET
        else:
            system = CircuitSystem(_system)

        _terminal_rating = d.pop("terminal_rating", UNSET)
        terminal_rating: TerminalRating | Unset
        if isinstance(_terminal_rating, Unset):
            terminal_rating = UNSET
        else:
            terminal_rating = TerminalRating(_terminal_rating)

        run_load = cls(
            apparent_power=apparent_power,
            conductor_temperature=conductor_temperature,
            conduit_material=conduit_material,
            current=current,
            hours_per_year=hours_per_year,
            limit_percent=limit_percent,
            load_factor_percent=load_factor_percent,
            loaded_conductor_count=loaded_conductor_count,
            overcurrent_device=overcurrent_device,
            power=power,
            power_factor=power_factor,
            reactance=reactance,
            resistance=resistance,
            shield_grounding=shield_grounding,
            system=system,
            terminal_rating=terminal_rating,
        )

        return run_load
