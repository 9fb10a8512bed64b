from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.current import Current
    from ..models.length import Length
    from ..models.power_per_length import PowerPerLength
    from ..models.resistance_per_length import ResistancePerLength
    from ..models.temperature import Temperature
    from ..models.temperature_difference import TemperatureDifference
    from ..models.thermal_resistance import ThermalResistance


T = TypeVar("T", bound="DuctHeat")


@_attrs_define
class DuctHeat:
    """One loaded duct: where it lies, how warm it is, and what its heat has to cross.

    Attributes:
        air_resistance (ThermalResistance): A thermal resistance of a length, as of a metre or a foot of a layer, with
            its unit.
        air_temperature (Temperature): A temperature with its unit.
        cable_temperature (Temperature): A temperature with its unit.
        circuit (int): Its circuit, from 1 in the order of the request.
        conductor_current (Current): An electric current with its unit.
        conductor_loss (PowerPerLength): A power per length with its unit; the heat that a cable gives off is one.
        conductor_resistance (ResistancePerLength): An electric resistance per length with its unit.
        conductor_temperature (Temperature): A temperature with its unit.
        depth (Length): A length with its unit.
        dielectric_loss (PowerPerLength): A power per length with its unit; the heat that a cable gives off is one.
        duct (str): Its name, as tier-position.
        duct_temperature (Temperature): A temperature with its unit.
        earth_resistance (ThermalResistance): A thermal resistance of a length, as of a metre or a foot of a layer, with
            its unit.
        heat (PowerPerLength): A power per length with its unit; the heat that a cable gives off is one.
        insulation_resistance (ThermalResistance): A thermal resistance of a length, as of a metre or a foot of a layer,
            with its unit.
        jacket_resistance (ThermalResistance): A thermal resistance of a length, as of a metre or a foot of a layer,
            with its unit.
        mutual_heating_factor (float): Product over the other loaded ducts of image distance over distance; 1 of a
            single one.
        mutual_rise (TemperatureDifference): A difference between two temperatures with its unit.
        shield_loss (PowerPerLength): A power per length with its unit; the heat that a cable gives off is one.
        temperature_limit (Temperature): A temperature with its unit.
        tier (int): Tier, from 1 at the bottom.
        wall_resistance (ThermalResistance): A thermal resistance of a length, as of a metre or a foot of a layer, with
            its unit.
        x (Length): A length with its unit.
    """

    air_resistance: ThermalResistance
    air_temperature: Temperature
    cable_temperature: Temperature
    circuit: int
    conductor_current: Current
    conductor_loss: PowerPerLength
    conductor_resistance: ResistancePerLength
    conductor_temperature: Temperature
    depth: Length
    dielectric_loss: PowerPerLength
    duct: str
    duct_temperature: Temperature
    earth_resistance: ThermalResistance
    heat: PowerPerLength
    insulation_resistance: ThermalResistance
    jacket_resistance: ThermalResistance
    mutual_heating_factor: float
    mutual_rise: TemperatureDifference
    shield_loss: PowerPerLength
    temperature_limit: Temperature
    tier: int
    wall_resistance: ThermalResistance
    x: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        air_resistance = self.air_resistance.to_dict()

        air_temperature = self.air_temperature.to_dict()

        cable_temperature = self.cable_temperature.to_dict()

        circuit = self.circuit

        conductor_current = self.conductor_current.to_dict()

        conductor_loss = self.conductor_loss.to_dict()

        conductor_resistance = self.conductor_resistance.to_dict()

        conductor_temperature = self.conductor_temperature.to_dict()

        depth = self.depth.to_dict()

        dielectric_loss = self.dielectric_loss.to_dict()

        duct = self.duct

        duct_temperature = self.duct_temperature.to_dict()

        earth_resistance = self.earth_resistance.to_dict()

        heat = self.heat.to_dict()

        insulation_resistance = self.insulation_resistance.to_dict()

        jacket_resistance = self.jacket_resistance.to_dict()

        mutual_heating_factor = self.mutual_heating_factor

        mutual_rise = self.mutual_rise.to_dict()

        shield_loss = self.shield_loss.to_dict()

        temperature_limit = self.temperature_limit.to_dict()

        tier = self.tier

        wall_resistance = self.wall_resistance.to_dict()

        x = self.x.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "air_resistance": air_resistance,
                "air_temperature": air_temperature,
                "cable_temperature": cable_temperature,
                "circuit": circuit,
                "conductor_current": conductor_current,
                "conductor_loss": conductor_loss,
                "conductor_resistance": conductor_resistance,
                "conductor_temperature": conductor_temperature,
                "depth": depth,
                "dielectric_loss": dielectric_loss,
                "duct": duct,
                "duct_temperature": duct_temperature,
                "earth_resistance": earth_resistance,
                "heat": heat,
                "insulation_resistance": insulation_resistance,
                "jacket_resistance": jacket_resistance,
                "mutual_heating_factor": mutual_heating_factor,
                "mutual_rise": mutual_rise,
                "shield_loss": shield_loss,
                "temperature_limit": temperature_limit,
                "tier": tier,
                "wall_resistance": wall_resistance,
                "x": x,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.current import Current  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.power_per_length import PowerPerLength  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.temperature_difference import TemperatureDifference  # noqa: PLC0415
        from ..models.thermal_resistance import ThermalResistance  # noqa: PLC0415

        d = dict(src_dict)
        air_resistance = ThermalResistance.from_dict(d.pop("air_resistance"))

        air_temperature = Temperature.from_dict(d.pop("air_temperature"))

        cable_temperature = Temperature.from_dict(d.pop("cable_temperature"))

        circuit = d.pop("circuit")

        conductor_current = Current.from_dict(d.pop("conductor_current"))

        conductor_loss = PowerPerLength.from_dict(d.pop("conductor_loss"))

        conductor_resistance = ResistancePerLength.from_dict(d.pop("conductor_resistance"))

        conductor_temperature = Temperature.from_dict(d.pop("conductor_temperature"))

        depth = Length.from_dict(d.pop("depth"))

        dielectric_loss = PowerPerLength.from_dict(d.pop("dielectric_loss"))

        duct = d.pop("duct")

        duct_temperature = Temperature.from_dict(d.pop("duct_temperature"))

        earth_resistance = ThermalResistance.from_dict(d.pop("earth_resistance"))

        heat = PowerPerLength.from_dict(d.pop("heat"))

        insulation_resistance = ThermalResistance.from_dict(d.pop("insulation_resistance"))

        jacket_resistance = ThermalResistance.from_dict(d.pop("jacket_resistance"))

        mutual_heating_factor = d.pop("mutual_heating_factor")

        mutual_rise = TemperatureDifference.from_dict(d.pop("mutual_rise"))

        shield_loss = PowerPerLength.from_dict(d.pop("shield_loss"))

        temperature_limit = Temperature.from_dict(d.pop("temperature_limit"))

        tier = d.pop("tier")

        wall_resistance = ThermalResistance.from_dict(d.pop("wall_resistance"))

        x = Length.from_dict(d.pop("x"))

        duct_heat = cls(
            air_resistance=air_resistance,
            air_temperature=air_temperature,
            cable_temperature=cable_temperature,
            circuit=circuit,
            conductor_current=conductor_current,
            conductor_loss=conductor_loss,
            conductor_resistance=conductor_resistance,
            conductor_temperature=conductor_temperature,
            depth=depth,
            dielectric_loss=dielectric_loss,
            duct=duct,
            duct_temperature=duct_temperature,
            earth_resistance=earth_resistance,
            heat=heat,
            insulation_resistance=insulation_resistance,
            jacket_resistance=jacket_resistance,
            mutual_heating_factor=mutual_heating_factor,
            mutual_rise=mutual_rise,
            shield_loss=shield_loss,
            temperature_limit=temperature_limit,
            tier=tier,
            wall_resistance=wall_resistance,
            x=x,
        )

        duct_heat.additional_properties = d
        return duct_heat

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
