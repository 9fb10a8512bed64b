from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.circuit_system import CircuitSystem
from ..models.shield_grounding import ShieldGrounding
from ..models.terminal_rating import TerminalRating
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_line import CableLine
    from ..models.current import Current
    from ..models.temperature import Temperature
    from ..models.voltage import Voltage


T = TypeVar("T", bound="LoadedCircuit")


@_attrs_define
class LoadedCircuit:
    """A circuit in ducts of the bank.

    Attributes:
        cables (list[CableLine]): The cables in each of its ducts, grounding conductors included.
        ducts (list[str]): Its ducts, as tier-position: tier 1 at the bottom, position 1 at the left.
        conductor_temperature (Temperature | Unset): A temperature with its unit.
        current (Current | Unset): An electric current with its unit.
        load_factor_percent (float | Unset): Mean load of a day in percent of its peak.
        loaded_conductor_count (int | Unset): Conductors in each duct that carry the current; neutrals and grounds carry
            none here.
        name (str | Unset): What it is called.
        overcurrent_device (Current | Unset): An electric current with its unit.
        shield_grounding (ShieldGrounding | Unset): Where shields are grounded.
        system (CircuitSystem | Unset): Kinds of circuit; of a single phase two wires carry the current.
        terminal_rating (TerminalRating | Unset): Temperatures that terminals are marked for.
        voltage (Voltage | Unset): A voltage with its unit.
    """

    cables: list[CableLine]
    ducts: list[str]
    conductor_temperature: Temperature | Unset = UNSET
    current: Current | Unset = UNSET
    load_factor_percent: float | Unset = UNSET
    loaded_conductor_count: int | Unset = UNSET
    name: str | Unset = UNSET
    overcurrent_device: Current | Unset = UNSET
    shield_grounding: ShieldGrounding | Unset = UNSET
    system: CircuitSystem | Unset = UNSET
    terminal_rating: TerminalRating | Unset = UNSET
    voltage: Voltage | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        cables = []
        for cables_item_data in self.cables:
            cables_item = cables_item_data.to_dict()
            cables.append(cables_item)

        ducts = self.ducts

        conductor_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor_temperature, Unset):
            conductor_temperature = self.conductor_temperature.to_dict()

        current: dict[str, Any] | Unset = UNSET
        if not isinstance(self.current, Unset):
            current = self.current.to_dict()

        load_factor_percent = self.load_factor_percent

        loaded_conductor_count = self.loaded_conductor_count

        name = self.name

        overcurrent_device: dict[str, Any] | Unset = UNSET
        if not isinstance(self.overcurrent_device, Unset):
            overcurrent_device = self.overcurrent_device.to_dict()

        shield_grounding: str | Unset = UNSET
        if not isinstance(self.shield_grounding, Unset):
            shield_grounding = self.shield_grounding.value

        system: str | Unset = UNSET
        if not isinstance(self.system, Unset):
            system = self.system.value

        terminal_rating: str | Unset = UNSET
        if not isinstance(self.terminal_rating, Unset):
            terminal_rating = self.terminal_rating.value

        voltage: dict[str, Any] | Unset = UNSET
        if not isinstance(self.voltage, Unset):
            voltage = self.voltage.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "cables": cables,
                "ducts": ducts,
            }
        )
        if conductor_temperature is not UNSET:
            field_dict["conductor_temperature"] = conductor_temperature
        if current is not UNSET:
            field_dict["current"] = current
        if load_factor_percent is not UNSET:
            field_dict["load_factor_percent"] = load_factor_percent
        if loaded_conductor_count is not UNSET:
            field_dict["loaded_conductor_count"] = loaded_conductor_count
        if name is not UNSET:
            field_dict["name"] = name
        if overcurrent_device is not UNSET:
            field_dict["overcurrent_device"] = overcurrent_device
        if shield_grounding is not UNSET:
            field_dict["shield_grounding"] = shield_grounding
        if system is not UNSET:
            field_dict["system"] = system
        if terminal_rating is not UNSET:
            field_dict["terminal_rating"] = terminal_rating
        if voltage is not UNSET:
            field_dict["voltage"] = voltage

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_line import CableLine  # noqa: PLC0415
        from ..models.current import Current  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.voltage import Voltage  # noqa: PLC0415

        d = dict(src_dict)
        cables = []
        _cables = d.pop("cables")
        for cables_item_data in _cables:
            cables_item = CableLine.from_dict(cables_item_data)

            cables.append(cables_item)

        ducts = cast(list[str], d.pop("ducts"))

        _conductor_temperature = d.pop("conductor_temperature", UNSET)
        conductor_temperature: Temperature | Unset
        if isinstance(_conductor_temperature, Unset):
            conductor_temperature = UNSET
        else:
            conductor_temperature = Temperature.from_dict(_conductor_temperature)

        _current = d.pop("current", UNSET)
        current: Current | Unset
        if isinstance(_current, Unset):
            current = UNSET
        else:
            current = Current.from_dict(_current)

        load_factor_percent = d.pop("load_factor_percent", UNSET)

        loaded_conductor_count = d.pop("loaded_conductor_count", UNSET)

        name = d.pop("name", UNSET)

        _overcurrent_device = d.pop("overcurrent_device", UNSET)
        overcurrent_device: Current | Unset
        if isinstance(_overcurrent_device, Unset):
            overcurrent_device = UNSET
        else:
            overcurrent_device = Current.from_dict(_overcurrent_device)

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

        _voltage = d.pop("voltage", UNSET)
        voltage: Voltage | Unset
        if isinstance(_voltage, Unset):
            voltage = UNSET
        else:
            voltage = Voltage.from_dict(_voltage)

        loaded_circuit = cls(
            cables=cables,
            ducts=ducts,
            conductor_temperature=conductor_temperature,
            current=current,
            load_factor_percent=load_factor_percent,
            loaded_conductor_count=loaded_conductor_count,
            name=name,
            overcurrent_device=overcurrent_device,
            shield_grounding=shield_grounding,
            system=system,
            terminal_rating=terminal_rating,
            voltage=voltage,
        )

        return loaded_circuit
