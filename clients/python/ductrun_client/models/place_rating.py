from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.ampacity_method import AmpacityMethod
from ..models.wall_material import WallMaterial
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.frequency import Frequency
    from ..models.temperature import Temperature
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="PlaceRating")


@_attrs_define
class PlaceRating:
    """The place a bank lies in, and the method it is rated by.

    Attributes:
        concrete_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        duct_air_temperature (Temperature | Unset): A temperature with its unit.
        duct_material (WallMaterial | Unset): What a duct is made of, for the heat that crosses it.
        duct_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        earth_temperature (Temperature | Unset): A temperature with its unit.
        earth_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        frequency (Frequency | Unset): A frequency with its unit.
        method (AmpacityMethod | Unset): Methods of calculating ampacity; both asks for the one that allows less, with
            the other beside it.
    """

    concrete_thermal_resistivity: ThermalResistivity | Unset = UNSET
    duct_air_temperature: Temperature | Unset = UNSET
    duct_material: WallMaterial | Unset = UNSET
    duct_thermal_resistivity: ThermalResistivity | Unset = UNSET
    earth_temperature: Temperature | Unset = UNSET
    earth_thermal_resistivity: ThermalResistivity | Unset = UNSET
    frequency: Frequency | Unset = UNSET
    method: AmpacityMethod | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        concrete_thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_thermal_resistivity, Unset):
            concrete_thermal_resistivity = self.concrete_thermal_resistivity.to_dict()

        duct_air_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_air_temperature, Unset):
            duct_air_temperature = self.duct_air_temperature.to_dict()

        duct_material: str | Unset = UNSET
        if not isinstance(self.duct_material, Unset):
            duct_material = self.duct_material.value

        duct_thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_thermal_resistivity, Unset):
            duct_thermal_resistivity = self.duct_thermal_resistivity.to_dict()

        earth_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_temperature, Unset):
            earth_temperature = self.earth_temperature.to_dict()

        earth_thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_thermal_resistivity, Unset):
            earth_thermal_resistivity = self.earth_thermal_resistivity.to_dict()

        frequency: dict[str, Any] | Unset = UNSET
        if not isinstance(self.frequency, Unset):
            frequency = self.frequency.to_dict()

        method: str | Unset = UNSET
        if not isinstance(self.method, Unset):
            method = self.method.value

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if concrete_thermal_resistivity is not UNSET:
            field_dict["concrete_thermal_resistivity"] = concrete_thermal_resistivity
        if duct_air_temperature is not UNSET:
            field_dict["duct_air_temperature"] = duct_air_temperature
        if duct_material is not UNSET:
            field_dict["duct_material"] = duct_material
        if duct_thermal_resistivity is not UNSET:
            field_dict["duct_thermal_resistivity"] = duct_thermal_resistivity
        if earth_temperature is not UNSET:
            field_dict["earth_temperature"] = earth_temperature
        if earth_thermal_resistivity is not UNSET:
            field_dict["earth_thermal_resistivity"] = earth_thermal_resistivity
        if frequency is not UNSET:
            field_dict["frequency"] = frequency
        if method is not UNSET:
            field_dict["method"] = method

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.frequency import Frequency  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        _concrete_thermal_resistivity = d.pop("concrete_thermal_resistivity", UNSET)
        concrete_thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_concrete_thermal_resistivity, Unset):
            concrete_thermal_resistivity = UNSET
        else:
            concrete_thermal_resistivity = ThermalResistivity.from_dict(
                _concrete_thermal_resistivity
            )

        _duct_air_temperature = d.pop("duct_air_temperature", UNSET)
        duct_air_temperature: Temperature | Unset
        if isinstance(_duct_air_temperature, Unset):
            duct_air_temperature = UNSET
        else:
            duct_air_temperature = Temperature.from_dict(_duct_air_temperature)

        _duct_material = d.pop("duct_material", UNSET)
        duct_material: WallMaterial | Unset
        if isinstance(_duct_material, Unset):
            duct_material = UNSET
        else:
            duct_material = WallMaterial(_duct_material)

        _duct_thermal_resistivity = d.pop("duct_thermal_resistivity", UNSET)
        duct_thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_duct_thermal_resistivity, Unset):
            duct_thermal_resistivity = UNSET
        else:
            duct_thermal_resistivity = ThermalResistivity.from_dict(_duct_thermal_resistivity)

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

        _frequency = d.pop("frequency", UNSET)
        frequency: Frequency | Unset
        if isinstance(_frequency, Unset):
            frequency = UNSET
        else:
            frequency = Frequency.from_dict(_frequency)

        _method = d.pop("method", UNSET)
        method: AmpacityMethod | Unset
        if isinstance(_method, Unset):
            method = UNSET
        else:
            method = AmpacityMethod(_method)

        place_rating = cls(
            concrete_thermal_resistivity=concrete_thermal_resistivity,
            duct_air_temperature=duct_air_temperature,
            duct_material=duct_material,
            duct_thermal_resistivity=duct_thermal_resistivity,
            earth_temperature=earth_temperature,
            earth_thermal_resistivity=earth_thermal_resistivity,
            frequency=frequency,
            method=method,
        )

        return place_rating
