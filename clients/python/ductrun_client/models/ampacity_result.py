from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.ampacity_method import AmpacityMethod
from ..models.conductor_size import ConductorSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.ampacity_sensitivity import AmpacitySensitivity
    from ..models.circuit_ampacity import CircuitAmpacity
    from ..models.current import Current
    from ..models.duct_heat import DuctHeat
    from ..models.length import Length
    from ..models.other_method import OtherMethod
    from ..models.temperature import Temperature
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="AmpacityResult")


@_attrs_define
class AmpacityResult:
    """What the bank may carry, and how warm it becomes.

    Attributes:
        ampacity (Current): An electric current with its unit.
        center_depth (Length): A length with its unit.
        circuits (list[CircuitAmpacity]): As in the request.
        ducts (list[DuctHeat]): Loaded ducts, circuit by circuit.
        envelope_height (Length): A length with its unit.
        envelope_width (Length): A length with its unit.
        governing_duct (str): The duct whose conductor is nearest to its limit.
        governing_temperature (Temperature): A temperature with its unit.
        method (AmpacityMethod): Methods of calculating ampacity; both asks for the one that allows less, with the other
            beside it.
        single_duct_ampacity (Current): An electric current with its unit.
        single_duct_ratio (float): What it may carry here over what it could alone.
        current_factor (float | Unset): By which all currents may be multiplied, where all are given.
        largest_earth_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        other_method (OtherMethod | Unset): The method that allows more, where both were asked.
        sensitivities (list[AmpacitySensitivity] | Unset): If asked.
        smallest_separation (Length | Unset): A length with its unit.
        smallest_size (ConductorSize | Unset): Sizes of conductors.
    """

    ampacity: Current
    center_depth: Length
    circuits: list[CircuitAmpacity]
    ducts: list[DuctHeat]
    envelope_height: Length
    envelope_width: Length
    governing_duct: str
    governing_temperature: Temperature
    method: AmpacityMethod
    single_duct_ampacity: Current
    single_duct_ratio: float
    current_factor: float | Unset = UNSET
    largest_earth_resistivity: ThermalResistivity | Unset = UNSET
    other_method: OtherMethod | Unset = UNSET
    sensitivities: list[AmpacitySensitivity] | Unset = UNSET
    smallest_separation: Length | Unset = UNSET
    smallest_size: ConductorSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ampacity = self.ampacity.to_dict()

        center_depth = self.center_depth.to_dict()

        circuits = []
        for circuits_item_data in self.circuits:
            circuits_item = circuits_item_data.to_dict()
            circuits.append(circuits_item)

        ducts = []
        for ducts_item_data in self.ducts:
            ducts_item = ducts_item_data.to_dict()
            ducts.append(ducts_item)

        envelope_height = self.envelope_height.to_dict()

        envelope_width = self.envelope_width.to_dict()

        governing_duct = self.governing_duct

        governing_temperature = self.governing_temperature.to_dict()

        method = self.method.value

        single_duct_ampacity = self.single_duct_ampacity.to_dict()

        single_duct_ratio = self.single_duct_ratio

        current_factor = self.current_factor

        largest_earth_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.largest_earth_resistivity, Unset):
            largest_earth_resistivity = self.largest_earth_resistivity.to_dict()

        other_method: dict[str, Any] | Unset = UNSET
        if not isinstance(self.other_method, Unset):
            other_method = self.other_method.to_dict()

        sensitivities: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.sensitivities, Unset):
            sensitivities = []
            for sensitivities_item_data in self.sensitivities:
                sensitivities_item = sensitivities_item_data.to_dict()
                sensitivities.append(sensitivities_item)

        smallest_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.smallest_separation, Unset):
            smallest_separation = self.smallest_separation.to_dict()

        smallest_size: str | Unset = UNSET
        if not isinstance(self.smallest_size, Unset):
            smallest_size = self.smallest_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ampacity": ampacity,
                "center_depth": center_depth,
                "circuits": circuits,
                "ducts": ducts,
                "envelope_height": envelope_height,
                "envelope_width": envelope_width,
                "governing_duct": governing_duct,
                "governing_temperature": governing_temperature,
                "method": method,
                "single_duct_ampacity": single_duct_ampacity,
                "single_duct_ratio": single_duct_ratio,
            }
        )
        if current_factor is not UNSET:
            field_dict["current_factor"] = current_factor
        if largest_earth_resistivity is not UNSET:
            field_dict["largest_earth_resistivity"] = largest_earth_resistivity
        if other_method is not UNSET:
            field_dict["other_method"] = other_method
        if sensitivities is not UNSET:
            field_dict["sensitivities"] = sensitivities
        if smallest_separation is not UNSET:
            field_dict["smallest_separation"] = smallest_separation
        if smallest_size is not UNSET:
            field_dict["smallest_size"] = smallest_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.ampacity_sensitivity import AmpacitySensitivity  # noqa: PLC0415
        from ..models.circuit_ampacity import CircuitAmpacity  # noqa: PLC0415
        from ..models.current import Current  # noqa: PLC0415
        from ..models.duct_heat import DuctHeat  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.other_method import OtherMethod  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        ampacity = Current.from_dict(d.pop("ampacity"))

        center_depth = Length.from_dict(d.pop("center_depth"))

        circuits = []
        _circuits = d.pop("circuits")
        for circuits_item_data in _circuits:
            circuits_item = CircuitAmpacity.from_dict(circuits_item_data)

            circuits.append(circuits_item)

        ducts = []
        _ducts = d.pop("ducts")
        for ducts_item_data in _ducts:
            ducts_item = DuctHeat.from_dict(ducts_item_data)

            ducts.append(ducts_item)

        envelope_height = Length.from_dict(d.pop("envelope_height"))

        envelope_width = Length.from_dict(d.pop("envelope_width"))

        governing_duct = d.pop("governing_duct")

        governing_temperature = Temperature.from_dict(d.pop("governing_temperature"))

        method = AmpacityMethod(d.pop("method"))

        single_duct_ampacity = Current.from_dict(d.pop("single_duct_ampacity"))

        single_duct_ratio = d.pop("single_duct_ratio")

        current_factor = d.pop("current_factor", UNSET)

        _largest_earth_resistivity = d.pop("largest_earth_resistivity", UNSET)
        largest_earth_resistivity: ThermalResistivity | Unset
        if isinstance(_largest_earth_resistivity, Unset):
            largest_earth_resistivity = UNSET
        else:
            largest_earth_resistivity = ThermalResistivity.from_dict(_largest_earth_resistivity)

        _other_method = d.pop("other_method", UNSET)
        other_method: OtherMethod | Unset
        if isinstance(_other_method, Unset):
            other_method = UNSET
        else:
            other_method = OtherMethod.from_dict(_other_method)

        _sensitivities = d.pop("sensitivities", UNSET)
        sensitivities: list[AmpacitySensitivity] | Unset = UNSET
        if _sensitivities is not UNSET:
            sensitivities = []
            for sensitivities_item_data in _sensitivities:
                sensitivities_item = AmpacitySensitivity.from_dict(sensitivities_item_data)

                sensitivities.append(sensitivities_item)

        _smallest_separation = d.pop("smallest_separation", UNSET)
        smallest_separation: Length | Unset
        if isinstance(_smallest_separation, Unset):
            smallest_separation = UNSET
        else:
            smallest_separation = Length.from_dict(_smallest_separation)

        _smallest_size = d.pop("smallest_size", UNSET)
        smallest_size: ConductorSize | Unset
        if isinstance(_smallest_size, Unset):
            smallest_size = UNSET
        else:
            smallest_size = ConductorSize(_smallest_size)

        ampacity_result = cls(
            ampacity=ampacity,
            center_depth=center_depth,
            circuits=circuits,
            ducts=ducts,
            envelope_height=envelope_height,
            envelope_width=envelope_width,
            governing_duct=governing_duct,
            governing_temperature=governing_temperature,
            method=method,
            single_duct_ampacity=single_duct_ampacity,
            single_duct_ratio=single_duct_ratio,
            current_factor=current_factor,
            largest_earth_resistivity=largest_earth_resistivity,
            other_method=other_method,
            sensitivities=sensitivities,
            smallest_separation=smallest_separation,
            smallest_size=smallest_size,
        )

        ampacity_result.additional_properties = d
        return ampacity_result

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
