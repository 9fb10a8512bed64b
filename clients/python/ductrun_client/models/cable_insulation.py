from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.covering_material import CoveringMaterial
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="CableInsulation")


@_attrs_define
class CableInsulation:
    """The insulation of one conductor, with the screens on both sides of it.

    Attributes:
        material (CoveringMaterial): What insulation and jackets are made of, for the heat that crosses them.
        thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
        thickness (Length | Unset): A length with its unit.
    """

    material: CoveringMaterial
    thermal_resistivity: ThermalResistivity | Unset = UNSET
    thickness: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        material = self.material.value

        thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.thermal_resistivity, Unset):
            thermal_resistivity = self.thermal_resistivity.to_dict()

        thickness: dict[str, Any] | Unset = UNSET
        if not isinstance(self.thickness, Unset):
            thickness = self.thickness.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "material": material,
            }
        )
        if thermal_resistivity is not UNSET:
            field_dict["thermal_resistivity"] = thermal_resistivity
        if thickness is not UNSET:
            field_dict["thickness"] = thickness

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        material = CoveringMaterial(d.pop("material"))

        _thermal_resistivity = d.pop("thermal_resistivity", UNSET)
        thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_thermal_resistivity, Unset):
            thermal_resistivity = UNSET
        else:
            thermal_resistivity = ThermalResistivity.from_dict(_thermal_resistivity)

        _thickness = d.pop("thickness", UNSET)
        thickness: Length | Unset
        if isinstance(_thickness, Unset):
            thickness = UNSET
        else:
            thickness = Length.from_dict(_thickness)

        cable_insulation = cls(
            material=material,
            thermal_resistivity=thermal_resistivity,
            thickness=thickness,
        )

        return cable_insulation
