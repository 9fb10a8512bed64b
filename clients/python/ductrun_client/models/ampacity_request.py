from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.ampacity_method import AmpacityMethod
from ..models.ampacity_study import AmpacityStudy
from ..models.bank_setting import BankSetting
from ..models.code_edition import CodeEdition
from ..models.wall_material import WallMaterial
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.concrete_cover import ConcreteCover
    from ..models.duct_bank import DuctBank
    from ..models.frequency import Frequency
    from ..models.length import Length
    from ..models.loaded_circuit import LoadedCircuit
    from ..models.temperature import Temperature
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="AmpacityRequest")


@_attrs_define
class AmpacityRequest:
    """A bank in the earth, and the circuits in its ducts.

    Attributes:
        bank (DuctBank): Ducts in tiers: of one kind (tiers), or of several (tier_ducts).
        circuits (list[LoadedCircuit]): The circuits. One without a current is looked for: all of them carry alike in
            every conductor.
        setting (BankSetting): Whether a bank is encased in concrete or its ducts are buried directly.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        concrete_cover (ConcreteCover | Unset): Concrete outside the ducts.
        concrete_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        cover (Length | Unset): A length with its unit.
        depth (Length | Unset): A length with its unit.
        duct_air_temperature (Temperature | Unset): A temperature with its unit.
        duct_material (WallMaterial | Unset): What a duct is made of, for the heat that crosses it.
        duct_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        earth_temperature (Temperature | Unset): A temperature with its unit.
        earth_thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        frequency (Frequency | Unset): A frequency with its unit.
        method (AmpacityMethod | Unset): Methods of calculating ampacity; both asks for the one that allows less, with
            the other beside it.
        studies (list[AmpacityStudy] | Unset): What is asked beside the ampacity.
    """

    bank: DuctBank
    circuits: list[LoadedCircuit]
    setting: BankSetting
    code_edition: CodeEdition | Unset = UNSET
    concrete_cover: ConcreteCover | Unset = UNSET
    concrete_thermal_resistivity: ThermalResistivity | Unset = UNSET
    cover: Length | Unset = UNSET
    depth: Length | Unset = UNSET
    duct_air_temperature: Temperature | Unset = UNSET
    duct_material: WallMaterial | Unset = UNSET
    duct_thermal_resistivity: ThermalResistivity | Unset = UNSET
    earth_temperature: Temperature | Unset = UNSET
    earth_thermal_resistivity: ThermalResistivity | Unset = UNSET
    frequency: Frequency | Unset = UNSET
    method: AmpacityMethod | Unset = UNSET
    studies: list[AmpacityStudy] | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bank = self.bank.to_dict()

        circuits = []
        for circuits_item_data in self.circuits:
            circuits_item = circuits_item_data.to_dict()
            circuits.append(circuits_item)

        setting = self.setting.value

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        concrete_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_cover, Unset):
            concrete_cover = self.concrete_cover.to_dict()

        concrete_thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_thermal_resistivity, Unset):
            concrete_thermal_resistivity = self.concrete_thermal_resistivity.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        depth: dict[str, Any] | Unset = UNSET
        if not isinstance(self.depth, Unset):
            depth = self.depth.to_dict()

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

        studies: list[str] | Unset = UNSET
        if not isinstance(self.studies, Unset):
            studies = []
            for studies_item_data in self.studies:
                studies_item = studies_item_data.value
                studies.append(studies_item)

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "bank": bank,
                "circuits": circuits,
                "setting": setting,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if concrete_cover is not UNSET:
            field_dict["concrete_cover"] = concrete_cover
        if concrete_thermal_resistivity is not UNSET:
            field_dict["concrete_thermal_resistivity"] = concrete_thermal_resistivity
        if cover is not UNSET:
            field_dict["cover"] = cover
        if depth is not UNSET:
            field_dict["depth"] = depth
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
        if studies is not UNSET:
            field_dict["studies"] = studies

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.concrete_cover import ConcreteCover  # noqa: PLC0415
        from ..models.duct_bank import DuctBank  # noqa: PLC0415
        from ..models.frequency import Frequency  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.loaded_circuit import LoadedCircuit  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        bank = DuctBank.from_dict(d.pop("bank"))

        circuits = []
        _circuits = d.pop("circuits")
        for circuits_item_data in _circuits:
            circuits_item = LoadedCircuit.from_dict(circuits_item_data)

            circuits.append(circuits_item)

        setting = BankSetting(d.pop("setting"))

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _concrete_cover = d.pop("concrete_cover", UNSET)
        concrete_cover: ConcreteCover | Unset
        if isinstance(_concrete_cover, Unset):
            concrete_cover = UNSET
        else:
            concrete_cover = ConcreteCover.from_dict(_concrete_cover)

        _concrete_thermal_resistivity = d.pop("concrete_thermal_resistivity", UNSET)
        concrete_thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_concrete_thermal_resistivity, Unset):
            concrete_thermal_resistivity = UNSET
        else:
            concrete_thermal_resistivity = ThermalResistivity.from_dict(
                _concrete_thermal_resistivity
            )

        _cover = d.pop("cover", UNSET)
        cover: Length | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = Length.from_dict(_cover)

        _depth = d.pop("depth", UNSET)
        depth: Length | Unset
        if isinstance(_depth, Unset):
            depth = UNSET
        else:
            depth = Length.from_dict(_depth)

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

        _studies = d.pop("studies", UNSET)
        studies: list[AmpacityStudy] | Unset = UNSET
        if _studies is not UNSET:
            studies = []
            for studies_item_data in _studies:
                studies_item = AmpacityStudy(studies_item_data)

                studies.append(studies_item)

        ampacity_request = cls(
            bank=bank,
            circuits=circuits,
            setting=setting,
            code_edition=code_edition,
            concrete_cover=concrete_cover,
            concrete_thermal_resistivity=concrete_thermal_resistivity,
            cover=cover,
            depth=depth,
            duct_air_temperature=duct_air_temperature,
            duct_material=duct_material,
            duct_thermal_resistivity=duct_thermal_resistivity,
            earth_temperature=earth_temperature,
            earth_thermal_resistivity=earth_thermal_resistivity,
            frequency=frequency,
            method=method,
            studies=studies,
        )

        return ampacity_request
