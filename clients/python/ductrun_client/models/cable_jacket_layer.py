from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.covering_material import CoveringMaterial
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.thermal_resistivity import ThermalResistivity


T = TypeVar("T", bound="CableJacketLayer")


@_attrs_define
class CableJacketLayer:
    """The jacket around the cable.

    Attributes:
        material (CoveringMaterial): What insulation and jackets are made of, for the heat that crosses them.
        thickness (Length): A length with its unit.
        thermal_resistivity (ThermalResistivity | Unset): A thermal resistivity with its unit.
    """

    material: CoveringMaterial
    thickness: Length
    thermal_resistivity: ThermalResistivity | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        material = self.material.value

        thickness = self.thickness.to_dict()

        thermal_resistivity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.thermal_resistivity, Unset):
            thermal_resistivity = self.thermal_resistivity.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "material": material,
                "thickness": thickness,
            }
        )
        if thermal_resistivity is not UNSET:
            field_dict["thermal_resistivity"] = thermal_resistivity

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.thermal_resistivity import ThermalResistivity  # noqa: PLC0415

        d = dict(src_dict)
        material = CoveringMaterial(d.pop("material"))

        thickness = Length.from_dict(d.pop("thickness"))

        _thermal_resistivity = d.pop("thermal_resistivity", UNSET)
        thermal_resistivity: ThermalResistivity | Unset
        if isinstance(_thermal_resistivity, Unset):
            thermal_resistivity = UNSET
        else:
            thermal_resistivity = ThermalResistivity.from_dict(_thermal_resistivity)

        cable_jacket_layer = cls(
            material=material,
            thickness=thickness,
            thermal_resistivity=thermal_resistivity,
        )

        return cable_jacket_layer
