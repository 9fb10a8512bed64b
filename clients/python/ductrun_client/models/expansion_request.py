from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..models.conduit_material import ConduitMaterial
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_coefficient import ExpansionCoefficient
    from ..models.length import Length
    from ..models.temperature_range import TemperatureRange
    from ..models.temperature_spread import TemperatureSpread


T = TypeVar("T", bound="ExpansionRequest")


@_attrs_define
class ExpansionRequest:
    """One straight run between securely mounted items, and the temperatures it sees.

    Attributes:
        length (Length): A length with its unit.
        temperatures (TemperatureRange | TemperatureSpread):
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        coefficient (ExpansionCoefficient | Unset): A coefficient of linear thermal expansion with its unit.
        fitting_travel (Length | Unset): A length with its unit.
        material (ConduitMaterial | Unset): Materials of conduit with a coefficient of expansion on file.
    """

    length: Length
    temperatures: TemperatureRange | TemperatureSpread
    code_edition: CodeEdition | Unset = UNSET
    coefficient: ExpansionCoefficient | Unset = UNSET
    fitting_travel: Length | Unset = UNSET
    material: ConduitMaterial | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415

        length = self.length.to_dict()

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

        fitting_travel: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_travel, Unset):
            fitting_travel = self.fitting_travel.to_dict()

        material: str | Unset = UNSET
        if not isinstance(self.material, Unset):
            material = self.material.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "length": length,
                "temperatures": temperatures,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if coefficient is not UNSET:
            field_dict["coefficient"] = coefficient
        if fitting_travel is not UNSET:
            field_dict["fitting_travel"] = fitting_travel
        if material is not UNSET:
            field_dict["material"] = material

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_coefficient import ExpansionCoefficient  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature_range import TemperatureRange  # noqa: PLC0415
        from ..models.temperature_spread import TemperatureSpread  # noqa: PLC0415

        d = dict(src_dict)
        length = Length.from_dict(d.pop("length"))

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

        _fitting_travel = d.pop("fitting_travel", UNSET)
        fitting_travel: Length | Unset
        if isinstance(_fitting_travel, Unset):
            fitting_travel = UNSET
        else:
            fitting_travel = Length.from_dict(_fitting_travel)

        _material = d.pop("material", UNSET)
        material: ConduitMaterial | Unset
        if isinstance(_material, Unset):
            material = UNSET
        else:
            material = ConduitMaterial(_material)

        expansion_request = cls(
            length=length,
            temperatures=temperatures,
            code_edition=code_edition,
            coefficient=coefficient,
            fitting_travel=fitting_travel,
            material=material,
        )

        return expansion_request
