from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.temperature import Temperature
    from ..models.temperature_range import TemperatureRange
    from ..models.temperature_spread import TemperatureSpread
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="Site")


@_attrs_define
class Site:
    """The place, once.

    Attributes:
        earth_temperature (Temperature | Unset): A temperature with its unit.
        earth_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        groundwater_depth (Length | Unset): A length with its unit.
        temperatures (TemperatureRange | TemperatureSpread | Unset):
    """

    earth_temperature: Temperature | Unset = UNSET
    earth_thermal_resistivity: ThermalResistivity | Unset = UNSET
    groundwater_depth: Length | Unset = UNSET
    temperatures: TemperatureRange | TemperatureSpread | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415

        earth_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_temperature, Unset):
            earth_temperature = self.earth_temperature.to_dict()

        earth_thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_thermal_resistivity, Unset):
            earth_thermal_resistivity = self.earth_thermal_resistivity.to_dict()

        groundwater_depth: dict[str, Any] | Unset = UNSET
        if not isinstance(self.groundwater_depth, Unset):
            groundwater_depth = self.groundwater_depth.to_dict()

        temperatures: dict[str, Any] | Unset
        if isinstance(self.temperatures, Unset):
            temperatures = UNSET
        elif isinstance(self.temperatures, TemperatureRange):
            temperatures = self.temperatures.to_dict()
        else:
            temperatures = self.temperatures.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if earth_temperature is not UNSET:
            field_dict["earth_temperature"] = earth_temperature
        if earth_thermal_resistivity is not UNSET:
            field_dict["earth_thermal_resistivity"] = earth_thermal_resistivity
        if groundwater_depth is not UNSET:
            field_dict["groundwater_depth"] = groundwater_depth
        if temperatures is not UNSET:
            field_dict["temperatures"] = temperatures

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415
        from ..models.temperature_spread import TemperatureSpread  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        _earth_temperature = d.pop("earth_temperature", UNSET)
        earth_temperature: Temperature | Unset
        if isinstance(_earth_temperature, Unset):
            earth_temperature = UNSET
        else:
            earth_temperature = Temperature.from_dict(_earth_temperature)

        _earth_thermal_resistivity = d.pop("earth_thermal_resistivity", UNSET)
        earth_thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_earth_thermal_resistivity, Unset):
            earth_thermal_resistivity = UNSET
        else:
            earth_thermal_resistivity = ThermalResistivity.from_dict(_earth_thermal_resistivity)

        _groundwater_depth = d.pop("groundwater_depth", UNSET)
        groundwater_depth: Length | Unset
        if isinstance(_groundwater_depth, Unset):
            groundwater_depth = UNSET
        else:
            groundwater_depth = Length.from_dict(_groundwater_depth)

        def _parse_temperatures(data: object) -> TemperatureRange | TemperatureSpread | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_temperatures_type_0 = TemperatureRange.from_dict(data)

                return componentsschemas_temperatures_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_temperatures_type_1 = TemperatureSpread.from_dict(data)

            return componentsschemas_temperatures_type_1

        temperatures = _parse_temperatures(d.pop("temperatures", UNSET))

        site = cls(
            earth_temperature=earth_temperature,
            earth_thermal_resistivity=earth_thermal_resistivity,
            groundwater_depth=groundwater_depth,
            temperatures=temperatures,
        )

        return site
