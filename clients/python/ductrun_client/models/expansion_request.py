from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..models.conduit_material import ConduitMaterial
from ..models.piston_convention import PistonConvention
from ..models.run_setting import RunSetting
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_coefficient import ExpansionCoefficient
    from ..models.length import Length
    from ..models.temperature import Temperature
    from ..models.temperature_range import TemperatureRange
    from ..models.temperature_spread import TemperatureSpread


T = TypeVar("T", bound="ExpansionRequest")


@_attrs_define
class ExpansionRequest:
    """Straight runs between securely mounted items, and the temperatures they see.

    Attributes:
        temperatures (TemperatureRange | TemperatureSpread):
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        coefficient (ExpansionCoefficient | Unset): A coefficient of linear thermal expansion with its unit.
        crosses_structural_joint (bool | Unset): Whether a run crosses a joint of the structure.
        emerges_from_grade (bool | Unset): Whether a run comes up out of the ground.
        fitting_travel (Length | Unset): A length with its unit.
        length (Length | Unset): A length with its unit.
        material (ConduitMaterial | Unset): Materials of conduit with a coefficient of expansion on file.
        opening_temperatures (list[Temperature] | Unset): Temperatures for which to give the opening, as a table the
            crew carries.
        piston_convention (PistonConvention | Unset): How far to open an expansion fitting: by its full travel, or
            centered on the movement it takes.
        piston_engagement (Length | Unset): A length with its unit.
        service_temperature (Temperature | Unset): A temperature with its unit.
        setting (RunSetting | Unset): Where a run lies, which decides whether it is free to move.
        straight_runs (list[Length] | Unset): Lengths of several straight runs, each judged on its own; this or length.
        usable_travel_percent (float | Unset): Most of the travel of a fitting that its share of the movement may use.
    """

    temperatures: TemperatureRange | TemperatureSpread
    code_edition: CodeEdition | Unset = UNSET
    coefficient: ExpansionCoefficient | Unset = UNSET
    crosses_structural_joint: bool | Unset = UNSET
    emerges_from_grade: bool | Unset = UNSET
    fitting_travel: Length | Unset = UNSET
    length: Length | Unset = UNSET
    material: ConduitMaterial | Unset = UNSET
    opening_temperatures: list[Temperature] | Unset = UNSET
    piston_convention: PistonConvention | Unset = UNSET
    piston_engagement: Length | Unset = UNSET
    service_temperature: Temperature | Unset = UNSET
    setting: RunSetting | Unset = UNSET
    straight_runs: list[Length] | Unset = UNSET
    usable_travel_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415

        temperatures: dict[str, Any]
        if isinstance(self.temperatures, TemperatureRange):
            temperatures = self.temperatures.to_dict()
        else:
            temperatures = self.temperatures.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        coefficient: dict[str, Any] | Unset = UNSET
        if not isinstance(self.coefficient, Unset):
            coefficient = self.coefficient.to_dict()

        crosses_structural_joint = self.crosses_structural_joint

        emerges_from_grade = self.emerges_from_grade

        fitting_travel: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_travel, Unset):
            fitting_travel = self.fitting_travel.to_dict()

        length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.length, Unset):
            length = self.length.to_dict()

        material: str | Unset = UNSET
        if not isinstance(self.material, Unset):
            material = self.material.value

        opening_temperatures: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.opening_temperatures, Unset):
            opening_temperatures = []
            for opening_temperatures_item_data in self.opening_temperatures:
                opening_temperatures_item = opening_temperatures_item_data.to_dict()
                opening_temperatures.append(opening_temperatures_item)

        piston_convention: str | Unset = UNSET
        if not isinstance(self.piston_convention, Unset):
            piston_convention = self.piston_convention.value

        piston_engagement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.piston_engagement, Unset):
            piston_engagement = self.piston_engagement.to_dict()

        service_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.service_temperature, Unset):
            service_temperature = self.service_temperature.to_dict()

        setting: str | Unset = UNSET
        if not isinstance(self.setting, Unset):
            setting = self.setting.value

        straight_runs: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.straight_runs, Unset):
            straight_runs = []
            for straight_runs_item_data in self.straight_runs:
                straight_runs_item = straight_runs_item_data.to_dict()
                straight_runs.append(straight_runs_item)

        usable_travel_percent = self.usable_travel_percent

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "temperatures": temperatures,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if coefficient is not UNSET:
            field_dict["coefficient"] = coefficient
        if crosses_structural_joint is not UNSET:
            field_dict["crosses_structural_joint"] = crosses_structural_joint
        if emerges_from_grade is not UNSET:
            field_dict["emerges_from_grade"] = emerges_from_grade
        if fitting_travel is not UNSET:
            field_dict["fitting_travel"] = fitting_travel
        if length is not UNSET:
            field_dict["length"] = length
        if material is not UNSET:
            field_dict["material"] = material
        if opening_temperatures is not UNSET:
            field_dict["opening_temperatures"] = opening_temperatures
        if piston_convention is not UNSET:
            field_dict["piston_convention"] = piston_convention
        if piston_engagement is not UNSET:
            field_dict["piston_engagement"] = piston_engagement
        if service_temperature is not UNSET:
            field_dict["service_temperature"] = service_temperature
        if setting is not UNSET:
            field_dict["setting"] = setting
        if straight_runs is not UNSET:
            field_dict["straight_runs"] = straight_runs
        if usable_travel_percent is not UNSET:
            field_dict["usable_travel_percent"] = usable_travel_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_coefficient import ExpansionCoefficient  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415
        from ..models.temperature_spread import TemperatureSpread  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_temperatures(data: object) -> TemperatureRange | TemperatureSpread:
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

        temperatures = _parse_temperatures(d.pop("temperatures"))

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _coefficient = d.pop("coefficient", UNSET)
        coefficient: ExpansionCoefficient | Unset
        if isinstance(_coefficient, Unset):
            coefficient = UNSET
        else:
            coefficient = ExpansionCoefficient.from_dict(_coefficient)

        crosses_structural_joint = d.pop("crosses_structural_joint", UNSET)

        emerges_from_grade = d.pop("emerges_from_grade", UNSET)

        _fitting_travel = d.pop("fitting_travel", UNSET)
        fitting_travel: Length | Unset
        if isinstance(_fitting_travel, Unset):
            fitting_travel = UNSET
        else:
            fitting_travel = Length.from_dict(_fitting_travel)

        _length = d.pop("length", UNSET)
        length: Length | Unset
        if isinstance(_length, Unset):
            length = UNSET
        else:
            length = Length.from_dict(_length)

        _material = d.pop("material", UNSET)
        material: ConduitMaterial | Unset
        if isinstance(_material, Unset):
            material = UNSET
        else:
            material = ConduitMaterial(_material)

        _opening_temperatures = d.pop("opening_temperatures", UNSET)
        opening_temperatures: list[Temperature] | Unset = UNSET
        if _opening_temperatures is not UNSET:
            opening_temperatures = []
            for opening_temperatures_item_data in _opening_temperatures:
                opening_temperatures_item = Temperature.from_dict(opening_temperatures_item_data)

                opening_temperatures.append(opening_temperatures_item)

        _piston_convention = d.pop("piston_convention", UNSET)
        piston_convention: PistonConvention | Unset
        if isinstance(_piston_convention, Unset):
            piston_convention = UNSET
        else:
            piston_convention = PistonConvention(_piston_convention)

        _piston_engagement = d.pop("piston_engagement", UNSET)
        piston_engagement: Length | Unset
        if isinstance(_piston_engagement, Unset):
            piston_engagement = UNSET
        else:
            piston_engagement = Length.from_dict(_piston_engagement)

        _service_temperature = d.pop("service_temperature", UNSET)
        service_temperature: Temperature | Unset
        if isinstance(_service_temperature, Unset):
            service_temperature = UNSET
        else:
            service_temperature = Temperature.from_dict(_service_temperature)

        _setting = d.pop("setting", UNSET)
        setting: RunSetting | Unset
        if isinstance(_setting, Unset):
            setting = UNSET
        else:
            setting = RunSetting(_setting)

        _straight_runs = d.pop("straight_runs", UNSET)
        straight_runs: list[Length] | Unset = UNSET
        if _straight_runs is not UNSET:
            straight_runs = []
            for straight_runs_item_data in _straight_runs:
                straight_runs_item = Length.from_dict(straight_runs_item_data)

                straight_runs.append(straight_runs_item)

        usable_travel_percent = d.pop("usable_travel_percent", UNSET)

        expansion_request = cls(
            temperatures=temperatures,
            code_edition=code_edition,
            coefficient=coefficient,
            crosses_structural_joint=crosses_structural_joint,
            emerges_from_grade=emerges_from_grade,
            fitting_travel=fitting_travel,
            length=length,
            material=material,
            opening_temperatures=opening_temperatures,
            piston_convention=piston_convention,
            piston_engagement=piston_engagement,
            service_temperature=service_temperature,
            setting=setting,
            straight_runs=straight_runs,
            usable_travel_percent=usable_travel_percent,
        )

        return expansion_request
