from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.circuit_conduit import CircuitConduit
from ..models.circuit_system import CircuitSystem
from ..models.code_edition import CodeEdition
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.apparent_power import ApparentPower
    from ..models.bare_cable import BareCable
    from ..models.compact_cable import CompactCable
    from ..models.current import Current
    from ..models.length import Length
    from ..models.listed_cable import ListedCable
    from ..models.measured_cable import MeasuredCable
    from ..models.multiconductor_cable import MulticonductorCable
    from ..models.power import Power
    from ..models.resistance_per_length import ResistancePerLength
    from ..models.temperature import Temperature
    from ..models.voltage import Voltage


T = TypeVar("T", bound="VoltageDropRequest")


@_attrs_define
class VoltageDropRequest:
    """A circuit and its length.

    Attributes:
        cable (BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable):
        length (Length): A length with its unit.
        voltage (Voltage): A voltage with its unit.
        apparent_power (ApparentPower | Unset): An apparent power with its unit.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        conductor_temperature (Temperature | Unset): A temperature with its unit.
        conduit_material (CircuitConduit | Unset): Conduits that Table 9 tells apart.
        current (Current | Unset): An electric current with its unit.
        hours_per_year (float | Unset): At this load, to tell what is lost in a year.
        limit_percent (float | Unset): Most that may be lost.
        parallel_count (int | Unset): Sets in parallel.
        power (Power | Unset): A power with its unit.
        power_factor (float | Unset): Of the load, which lags; of direct current there is none.
        reactance (ResistancePerLength | Unset): An electric resistance per length with its unit.
        resistance (ResistancePerLength | Unset): An electric resistance per length with its unit.
        system (CircuitSystem | Unset): Kinds of circuit; of a single phase two wires carry the current.
    """

    cable: BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable
    length: Length
    voltage: Voltage
    apparent_power: ApparentPower | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    conductor_temperature: Temperature | Unset = UNSET
    conduit_material: CircuitConduit | Unset = UNSET
    current: Current | Unset = UNSET
    hours_per_year: float | Unset = UNSET
    limit_percent: float | Unset = UNSET
    parallel_count: int | Unset = UNSET
    power: Power | Unset = UNSET
    power_factor: float | Unset = UNSET
    reactance: ResistancePerLength | Unset = UNSET
    resistance: ResistancePerLength | Unset = UNSET
    system: CircuitSystem | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.bare_cable import BareCable  # noqa: PLC0415
        from ..models.compact_cable import CompactCable  # noqa: PLC0415
        from ..models.listed_cable import ListedCable  # noqa: PLC0415
        from ..models.measured_cable import MeasuredCable  # noqa: PLC0415

        cable: dict[str, Any]
        if isinstance(self.cable, ListedCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, CompactCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, BareCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, MeasuredCable):
            cable = self.cable.to_dict()
        else:
            cable = self.cable.to_dict()

        length = self.length.to_dict()

        voltage = self.voltage.to_dict()

        apparent_power: dict[str, Any] | Unset = UNSET
        if not isinstance(self.apparent_power, Unset):
            apparent_power = self.apparent_power.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

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

        parallel_count = self.parallel_count

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

        system: str | Unset = UNSET
        if not isinstance(self.system, Unset):
            system = self.system.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "cable": cable,
                "length": length,
                "voltage": voltage,
            }
        )
        if apparent_power is not UNSET:
            field_dict["apparent_power"] = apparent_power
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
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
        if parallel_count is not UNSET:
            field_dict["parallel_count"] = parallel_count
        if power is not UNSET:
            field_dict["power"] = power
        if power_factor is not UNSET:
            field_dict["power_factor"] = power_factor
        if reactance is not UNSET:
            field_dict["reactance"] = reactance
        if resistance is not UNSET:
            field_dict["resistance"] = resistance
        if system is not UNSET:
            field_dict["system"] = system

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.apparent_power import ApparentPower  # noqa: PLC0415
        from ..models.bare_cable import BareCable  # noqa: PLC0415
        from ..models.compact_cable import CompactCable  # noqa: PLC0415
        from ..models.current import Current  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_cable import ListedCable  # noqa: PLC0415
        from ..models.measured_cable import MeasuredCable  # noqa: PLC0415
        from ..models.multiconductor_cable import MulticonductorCable  # noqa: PLC0415
        from ..models.power import Power  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.voltage import Voltage  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_cable(
            data: object,
        ) -> BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_0 = ListedCable.from_dict(data)

                return componentsschemas_cable_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_1 = CompactCable.from_dict(data)

                return componentsschemas_cable_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_2 = BareCable.from_dict(data)

                return componentsschemas_cable_type_2
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_3 = MeasuredCable.from_dict(data)

                return componentsschemas_cable_type_3
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_cable_type_4 = MulticonductorCable.from_dict(data)

            return componentsschemas_cable_type_4

        cable = _parse_cable(d.pop("cable"))

        length = Length.from_dict(d.pop("length"))

        voltage = Voltage.from_dict(d.pop("voltage"))

        _apparent_power = d.pop("apparent_power", UNSET)
        apparent_power: ApparentPower | Unset
        if isinstance(_apparent_power, Unset):
            apparent_power = UNSET
        else:
            apparent_power = ApparentPower.from_dict(_apparent_power)

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

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

        parallel_count = d.pop("parallel_count", UNSET)

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

        _system = d.pop("system", UNSET)
        system: CircuitSystem | Unset
        if isinstance(_system, Unset):
            system = UNSET
        else:
            system = CircuitSystem(_system)

        voltage_drop_request = cls(
            cable=cable,
            length=length,
            voltage=voltage,
            apparent_power=apparent_power,
            code_edition=code_edition,
            conductor_temperature=conductor_temperature,
            conduit_material=conduit_material,
            current=current,
            hours_per_year=hours_per_year,
            limit_percent=limit_percent,
            parallel_count=parallel_count,
            power=power,
            power_factor=power_factor,
            reactance=reactance,
            resistance=resistance,
            system=system,
        )

        return voltage_drop_request
