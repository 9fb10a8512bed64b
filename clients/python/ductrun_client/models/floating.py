from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.duct_contents import DuctContents
from ..models.duct_material import DuctMaterial
from ..models.flotation_medium import FlotationMedium
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.density import Density
    from ..models.force import Force
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength


T = TypeVar("T", bound="Floating")


@_attrs_define
class Floating:
    """What a bank floats in, and how it is held down.

    Attributes:
        cable_mass_per_length (MassPerLength | Unset): A mass per length with its unit.
        concrete_density (Density | Unset): A mass per volume with its unit.
        contents (DuctContents | Unset): Contents of ducts.
        duct_density (Density | Unset): A mass per volume with its unit.
        duct_mass_per_length (MassPerLength | Unset): A mass per length with its unit.
        duct_material (DuctMaterial | Unset): What ducts are made of, as far as its density is on file.
        earth_density (Density | Unset): A mass per volume with its unit.
        fluid_density (Density | Unset): A mass per volume with its unit.
        lift_height (Length | Unset): A length with its unit.
        medium (FlotationMedium | Unset): What ducts would float in.
        safety_factor (float | Unset): Factor on the uplift.
        station_spacing (Length | Unset): A length with its unit.
        tie_down_capacity (Force | Unset): A force with its unit; tension is a force.
    """

    cable_mass_per_length: MassPerLength | Unset = UNSET
    concrete_density: Density | Unset = UNSET
    contents: DuctContents | Unset = UNSET
    duct_density: Density | Unset = UNSET
    duct_mass_per_length: MassPerLength | Unset = UNSET
    duct_material: DuctMaterial | Unset = UNSET
    earth_density: Density | Unset = UNSET
    fluid_density: Density | Unset = UNSET
    lift_height: Length | Unset = UNSET
    medium: FlotationMedium | Unset = UNSET
    safety_factor: float | Unset = UNSET
    station_spacing: Length | Unset = UNSET
    tie_down_capacity: Force | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        cable_mass_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cable_mass_per_length, Unset):
            cable_mass_per_length = self.cable_mass_per_length.to_dict()

        concrete_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_density, Unset):
            concrete_density = self.concrete_density.to_dict()

        contents: str | Unset = UNSET
        if not isinstance(self.contents, Unset):
            contents = self.contents.value

        duct_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_density, Unset):
            duct_density = self.duct_density.to_dict()

        duct_mass_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_mass_per_length, Unset):
            duct_mass_per_length = self.duct_mass_per_length.to_dict()

        duct_material: str | Unset = UNSET
        if not isinstance(self.duct_material, Unset):
            duct_material = self.duct_material.value

        earth_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_density, Unset):
            earth_density = self.earth_density.to_dict()

        fluid_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fluid_density, Unset):
            fluid_density = self.fluid_density.to_dict()

        lift_height: dict[str, Any] | Unset = UNSET
        if not isinstance(self.lift_height, Unset):
            lift_height = self.lift_height.to_dict()

        medium: str | Unset = UNSET
        if not isinstance(self.medium, Unset):
            medium = self.medium.value

        safety_factor = self.safety_factor

        station_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.station_spacing, Unset):
            station_spacing = self.station_spacing.to_dict()

        tie_down_capacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.tie_down_capacity, Unset):
            tie_down_capacity = self.tie_down_capacity.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if cable_mass_per_length is not UNSET:
            field_dict["cable_mass_per_length"] = cable_mass_per_length
        if concrete_density is not UNSET:
            field_dict["concrete_density"] = concrete_density
        if contents is not UNSET:
            field_dict["contents"] = contents
        if duct_density is not UNSET:
            field_dict["duct_density"] = duct_density
        if duct_mass_per_length is not UNSET:
            field_dict["duct_mass_per_length"] = duct_mass_per_length
        if duct_material is not UNSET:
            field_dict["duct_material"] = duct_material
        if earth_density is not UNSET:
            field_dict["earth_density"] = earth_density
        if fluid_density is not UNSET:
            field_dict["fluid_density"] = fluid_density
        if lift_height is not UNSET:
            field_dict["lift_height"] = lift_height
        if medium is not UNSET:
            field_dict["medium"] = medium
        if safety_factor is not UNSET:
            field_dict["safety_factor"] = safety_factor
        if station_spacing is not UNSET:
            field_dict["station_spacing"] = station_spacing
        if tie_down_capacity is not UNSET:
            field_dict["tie_down_capacity"] = tie_down_capacity

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.density import Density  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415

        d = dict(src_dict)
        _cable_mass_per_length = d.pop("cable_mass_per_length", UNSET)
        cable_mass_per_length: MassPerLength | Unset
        if isinstance(_cable_mass_per_length, Unset):
            cable_mass_per_length = UNSET
        else:
            cable_mass_per_length = MassPerLength.from_dict(_cable_mass_per_length)

        _concrete_density = d.pop("concrete_density", UNSET)
        concrete_density: Density | Unset
        if isinstance(_concrete_density, Unset):
            concrete_density = UNSET
        else:
            concrete_density = Density.from_dict(_concrete_density)

        _contents = d.pop("contents", UNSET)
        contents: DuctContents | Unset
        if isinstance(_contents, Unset):
            contents = UNSET
        else:
            contents = DuctContents(_contents)

        _duct_density = d.pop("duct_density", UNSET)
        duct_density: Density | Unset
        if isinstance(_duct_density, Unset):
            duct_density = UNSET
        else:
            duct_density = Density.from_dict(_duct_density)

        _duct_mass_per_length = d.pop("duct_mass_per_length", UNSET)
        duct_mass_per_length: MassPerLength | Unset
        if isinstance(_duct_mass_per_length, Unset):
            duct_mass_per_length = UNSET
        else:
            duct_mass_per_length = MassPerLength.from_dict(_duct_mass_per_length)

        _duct_material = d.pop("duct_material", UNSET)
        duct_material: DuctMaterial | Unset
        if isinstance(_duct_material, Unset):
            duct_material = UNSET
        else:
            duct_material = DuctMaterial(_duct_material)

        _earth_density = d.pop("earth_density", UNSET)
        earth_density: Density | Unset
        if isinstance(_earth_density, Unset):
            earth_density = UNSET
        else:
            earth_density = Density.from_dict(_earth_density)

        _fluid_density = d.pop("fluid_density", UNSET)
        fluid_density: Density | Unset
        if isinstance(_fluid_density, Unset):
            fluid_density = UNSET
        else:
            fluid_density = Density.from_dict(_fluid_density)

        _lift_height = d.pop("lift_height", UNSET)
        lift_height: Length | Unset
        if isinstance(_lift_height, Unset):
            lift_height = UNSET
        else:
            lift_height = Length.from_dict(_lift_height)

        _medium = d.pop("medium", UNSET)
        medium: FlotationMedium | Unset
        if isinstance(_medium, Unset):
            medium = UNSET
        else:
            medium = FlotationMedium(_medium)

        safety_factor = d.pop("safety_factor", UNSET)

        _station_spacing = d.pop("station_spacing", UNSET)
        station_spacing: Length | Unset
        if isinstance(_station_spacing, Unset):
            station_spacing = UNSET
        else:
            station_spacing = Length.from_dict(_station_spacing)

        _tie_down_capacity = d.pop("tie_down_capacity", UNSET)
        tie_down_capacity: Force | Unset
        if isinstance(_tie_down_capacity, Unset):
            tie_down_capacity = UNSET
        else:
            tie_down_capacity = Force.from_dict(_tie_down_capacity)

        floating = cls(
            cable_mass_per_length=cable_mass_per_length,
            concrete_density=concrete_density,
            contents=contents,
            duct_density=duct_density,
            duct_mass_per_length=duct_mass_per_length,
            duct_material=duct_material,
            earth_density=earth_density,
            fluid_density=fluid_density,
            lift_height=lift_height,
            medium=medium,
            safety_factor=safety_factor,
            station_spacing=station_spacing,
            tie_down_capacity=tie_down_capacity,
        )

        return floating
