from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.arching_soil import ArchingSoil
from ..models.compaction import Compaction
from ..models.earth_load_method import EarthLoadMethod
from ..models.embedment import Embedment
from ..models.live_load_method import LiveLoadMethod
from ..models.plastic_material import PlasticMaterial
from ..models.traffic import Traffic
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.density import Density
    from ..models.force import Force
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength
    from ..models.pressure import Pressure


T = TypeVar("T", bound="EarthLoading")


@_attrs_define
class EarthLoading:
    """What lies and passes over ducts, how they are bedded, and the limits they are held against.

    Attributes:
        traffic (Traffic): What passes over a duct.
        allowable_wall_stress (Pressure | Unset): A pressure or stress with its unit.
        arching_soil (ArchingSoil | Unset): Fills of a trench, by their friction on its walls.
        bedding_angle (Angle | Unset): An angle with its unit.
        bedding_constant_ratio (float | Unset): Bedding constant of the deflection formula, in place of that of the
            angle.
        compaction (Compaction | Unset): How an embedment is compacted: under 85, 85 to 95, over 95 percent of the
            standard Proctor density.
        concrete_density (Density | Unset): A mass per volume with its unit.
        deflection_limit_percent (float | Unset): Most deflection of the vertical diameter.
        duct_density (Density | Unset): A mass per volume with its unit.
        duct_mass_per_length (MassPerLength | Unset): A mass per length with its unit.
        earth_load_method (EarthLoadMethod | Unset): How earth loads a duct: by the prism above it, or arching on the
            walls of its trench.
        embedment (Embedment | Unset): Soils around a duct, by how they support it.
        flotation_factor (float | Unset): What holds the ducts down, over the uplift of groundwater, at least.
        groundwater_depth (Length | Unset): A length with its unit.
        lag_factor (float | Unset): By how much the deflection under the earth grows in the long term.
        lift_height (Length | Unset): A length with its unit.
        live_load_method (LiveLoadMethod | Unset): How the load of a wheel is found at a depth; the governing one is the
            largest of those that go so shallow.
        load_spread_ratio (float | Unset): By how much the load of a tire print widens with the depth, for the AASHTO
            spread.
        long_term_modulus (Pressure | Unset): A pressure or stress with its unit.
        material (PlasticMaterial | Unset): What a duct by its diameters is made of.
        modulus (Pressure | Unset): A pressure or stress with its unit.
        pipe_stiffness (Pressure | Unset): A pressure or stress with its unit.
        saturated_soil_density (Density | Unset): A mass per volume with its unit.
        soil_density (Density | Unset): A mass per volume with its unit.
        soil_modulus (Pressure | Unset): A pressure or stress with its unit.
        trench_width (Length | Unset): A length with its unit.
        wheel_load (Force | Unset): A force with its unit; tension is a force.
    """

    traffic: Traffic
    allowable_wall_stress: Pressure | Unset = UNSET
    arching_soil: ArchingSoil | Unset = UNSET
    bedding_angle: Angle | Unset = UNSET
    bedding_constant_ratio: float | Unset = UNSET
    compaction: Compaction | Unset = UNSET
    concrete_density: Density | Unset = UNSET
    deflection_limit_percent: float | Unset = UNSET
    duct_density: Density | Unset = UNSET
    duct_mass_per_length: MassPerLength | Unset = UNSET
    earth_load_method: EarthLoadMethod | Unset = UNSET
    embedment: Embedment | Unset = UNSET
    flotation_factor: float | Unset = UNSET
    groundwater_depth: Length | Unset = UNSET
    lag_factor: float | Unset = UNSET
    lift_height: Length | Unset = UNSET
    live_load_method: LiveLoadMethod | Unset = UNSET
    load_spread_ratio: float | Unset = UNSET
    long_term_modulus: Pressure | Unset = UNSET
    material: PlasticMaterial | Unset = UNSET
    modulus: Pressure | Unset = UNSET
    pipe_stiffness: Pressure | Unset = UNSET
    saturated_soil_density: Density | Unset = UNSET
    soil_density: Density | Unset = UNSET
    soil_modulus: Pressure | Unset = UNSET
    trench_width: Length | Unset = UNSET
    wheel_load: Force | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        traffic = self.traffic.value

        allowable_wall_stress: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_wall_stress, Unset):
            allowable_wall_stress = self.allowable_wall_stress.to_dict()

        arching_soil: str | Unset = UNSET
        if not isinstance(self.arching_soil, Unset):
            arching_soil = self.arching_soil.value

        bedding_angle: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bedding_angle, Unset):
            bedding_angle = self.bedding_angle.to_dict()

        bedding_constant_ratio = self.bedding_constant_ratio

        compaction: str | Unset = UNSET
        if not isinstance(self.compaction, Unset):
            compaction = self.compaction.value

        concrete_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_density, Unset):
            concrete_density = self.concrete_density.to_dict()

        deflection_limit_percent = self.deflection_limit_percent

        duct_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_density, Unset):
            duct_density = self.duct_density.to_dict()

        duct_mass_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.duct_mass_per_length, Unset):
            duct_mass_per_length = self.duct_mass_per_length.to_dict()

        earth_load_method: str | Unset = UNSET
        if not isinstance(self.earth_load_method, Unset):
            earth_load_method = self.earth_load_method.value

        embedment: str | Unset = UNSET
        if not isinstance(self.embedment, Unset):
            embedment = self.embedment.value

        flotation_factor = self.flotation_factor

        groundwater_depth: dict[str, Any] | Unset = UNSET
        if not isinstance(self.groundwater_depth, Unset):
            groundwater_depth = self.groundwater_depth.to_dict()

        lag_factor = self.lag_factor

        lift_height: dict[str, Any] | Unset = UNSET
        if not isinstance(self.lift_height, Unset):
            lift_height = self.lift_height.to_dict()

        live_load_method: str | Unset = UNSET
        if not isinstance(self.live_load_method, Unset):
            live_load_method = self.live_load_method.value

        load_spread_ratio = self.load_spread_ratio

        long_term_modulus: dict[str, Any] | Unset = UNSET
        if not isinstance(self.long_term_modulus, Unset):
            long_term_modulus = self.long_term_modulus.to_dict()

        material: str | Unset = UNSET
        if not isinstance(self.material, Unset):
            material = self.material.value

        modulus: dict[str, Any] | Unset = UNSET
        if not isinstance(self.modulus, Unset):
            modulus = self.modulus.to_dict()

        pipe_stiffness: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pipe_stiffness, Unset):
            pipe_stiffness = self.pipe_stiffness.to_dict()

        saturated_soil_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.saturated_soil_density, Unset):
            saturated_soil_density = self.saturated_soil_density.to_dict()

        soil_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.soil_density, Unset):
            soil_density = self.soil_density.to_dict()

        soil_modulus: dict[str, Any] | Unset = UNSET
        if not isinstance(self.soil_modulus, Unset):
            soil_modulus = self.soil_modulus.to_dict()

        trench_width: dict[str, Any] | Unset = UNSET
        if not isinstance(self.trench_width, Unset):
            trench_width = self.trench_width.to_dict()

        wheel_load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.wheel_load, Unset):
            wheel_load = self.wheel_load.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "traffic": traffic,
            }
        )
        if allowable_wall_stress is not UNSET:
            field_dict["allowable_wall_stress"] = allowable_wall_stress
        if arching_soil is not UNSET:
            field_dict["arching_soil"] = arching_soil
        if bedding_angle is not UNSET:
            field_dict["bedding_angle"] = bedding_angle
        if bedding_constant_ratio is not UNSET:
            field_dict["bedding_constant_ratio"] = bedding_constant_ratio
        if compaction is not UNSET:
            field_dict["compaction"] = compaction
        if concrete_density is not UNSET:
            field_dict["concrete_density"] = concrete_density
        if deflection_limit_percent is not UNSET:
            field_dict["deflection_limit_percent"] = deflection_limit_percent
        if duct_density is not UNSET:
            field_dict["duct_density"] = duct_density
        if duct_mass_per_length is not UNSET:
            field_dict["duct_mass_per_length"] = duct_mass_per_length
        if earth_load_method is not UNSET:
            field_dict["earth_load_method"] = earth_load_method
        if embedment is not UNSET:
            field_dict["embedment"] = embedment
        if flotation_factor is not UNSET:
            field_dict["flotation_factor"] = flotation_factor
        if groundwater_depth is not UNSET:
            field_dict["groundwater_depth"] = groundwater_depth
        if lag_factor is not UNSET:
            field_dict["lag_factor"] = lag_factor
        if lift_height is not UNSET:
            field_dict["lift_height"] = lift_height
        if live_load_method is not UNSET:
            field_dict["live_load_method"] = live_load_method
        if load_spread_ratio is not UNSET:
            field_dict["load_spread_ratio"] = load_spread_ratio
        if long_term_modulus is not UNSET:
            field_dict["long_term_modulus"] = long_term_modulus
        if material is not UNSET:
            field_dict["material"] = material
        if modulus is not UNSET:
            field_dict["modulus"] = modulus
        if pipe_stiffness is not UNSET:
            field_dict["pipe_stiffness"] = pipe_stiffness
        if saturated_soil_density is not UNSET:
            field_dict["saturated_soil_density"] = saturated_soil_density
        if soil_density is not UNSET:
            field_dict["soil_density"] = soil_density
        if soil_modulus is not UNSET:
            field_dict["soil_modulus"] = soil_modulus
        if trench_width is not UNSET:
            field_dict["trench_width"] = trench_width
        if wheel_load is not UNSET:
            field_dict["wheel_load"] = wheel_load

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.density import Density  # noqa: PLC0415
        from ..models.force import Force  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        traffic = Traffic(d.pop("traffic"))

        _allowable_wall_stress = d.pop("allowable_wall_stress", UNSET)
        allowable_wall_stress: Pressure | Unset
        if isinstance(_allowable_wall_stress, Unset):
            allowable_wall_stress = UNSET
        else:
            allowable_wall_stress = Pressure.from_dict(_allowable_wall_stress)

        _arching_soil = d.pop("arching_soil", UNSET)
        arching_soil: ArchingSoil | Unset
        if isinstance(_arching_soil, Unset):
            arching_soil = UNSET
        else:
            arching_soil = ArchingSoil(_arching_soil)

        _bedding_angle = d.pop("bedding_angle", UNSET)
        bedding_angle: Angle | Unset
        if isinstance(_bedding_angle, Unset):
            bedding_angle = UNSET
        else:
            bedding_angle = Angle.from_dict(_bedding_angle)

        bedding_constant_ratio = d.pop("bedding_constant_ratio", UNSET)

        _compaction = d.pop("compaction", UNSET)
        compaction: Compaction | Unset
        if isinstance(_compaction, Unset):
            compaction = UNSET
        else:
            compaction = Compaction(_compaction)

        _concrete_density = d.pop("concrete_density", UNSET)
        concrete_density: Density | Unset
        if isinstance(_concrete_density, Unset):
            concrete_density = UNSET
        else:
            concrete_density = Density.from_dict(_concrete_density)

        deflection_limit_percent = d.pop("deflection_limit_percent", UNSET)

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

        _earth_load_method = d.pop("earth_load_method", UNSET)
        earth_load_method: EarthLoadMethod | Unset
        if isinstance(_earth_load_method, Unset):
            earth_load_method = UNSET
        else:
            earth_load_method = EarthLoadMethod(_earth_load_method)

        _embedment = d.pop("embedment", UNSET)
        embedment: Embedment | Unset
        if isinstance(_embedment, Unset):
            embedment = UNSET
        else:
            embedment = Embedment(_embedment)

        flotation_factor = d.pop("flotation_factor", UNSET)

        _groundwater_depth = d.pop("groundwater_depth", UNSET)
        groundwater_depth: Length | Unset
        if isinstance(_groundwater_depth, Unset):
            groundwater_depth = UNSET
        else:
            groundwater_depth = Length.from_dict(_groundwater_depth)

        lag_factor = d.pop("lag_factor", UNSET)

        _lift_height = d.pop("lift_height", UNSET)
        lift_height: Length | Unset
        if isinstance(_lift_height, Unset):
            lift_height = UNSET
        else:
            lift_height = Length.from_dict(_lift_height)

        _live_load_method = d.pop("live_load_method", UNSET)
        live_load_method: LiveLoadMethod | Unset
        if isinstance(_live_load_method, Unset):
            live_load_method = UNSET
        else:
            live_load_method = LiveLoadMethod(_live_load_method)

        load_spread_ratio = d.pop("load_spread_ratio", UNSET)

        _long_term_modulus = d.pop("long_term_modulus", UNSET)
        long_term_modulus: Pressure | Unset
        if isinstance(_long_term_modulus, Unset):
            long_term_modulus = UNSET
        else:
            long_term_modulus = Pressure.from_dict(_long_term_modulus)

        _material = d.pop("material", UNSET)
        material: PlasticMaterial | Unset
        if isinstance(_material, Unset):
            material = UNSET
        else:
            material = PlasticMaterial(_material)

        _modulus = d.pop("modulus", UNSET)
        modulus: Pressure | Unset
        if isinstance(_modulus, Unset):
            modulus = UNSET
        else:
            modulus = Pressure.from_dict(_modulus)

        _pipe_stiffness = d.pop("pipe_stiffness", UNSET)
        pipe_stiffness: Pressure | Unset
        if isinstance(_pipe_stiffness, Unset):
            pipe_stiffness = UNSET
        else:
            pipe_stiffness = Pressure.from_dict(_pipe_stiffness)

        _saturated_soil_density = d.pop("saturated_soil_density", UNSET)
        saturated_soil_density: Density | Unset
        if isinstance(_saturated_soil_density, Unset):
            saturated_soil_density = UNSET
        else:
            saturated_soil_density = Density.from_dict(_saturated_soil_density)

        _soil_density = d.pop("soil_density", UNSET)
        soil_density: Density | Unset
        if isinstance(_soil_density, Unset):
            soil_density = UNSET
        else:
            soil_density = Density.from_dict(_soil_density)

        _soil_modulus = d.pop("soil_modulus", UNSET)
        soil_modulus: Pressure | Unset
        if isinstance(_soil_modulus, Unset):
            soil_modulus = UNSET
        else:
            soil_modulus = Pressure.from_dict(_soil_modulus)

        _trench_width = d.pop("trench_width", UNSET)
        trench_width: Length | Unset
        if isinstance(_trench_width, Unset):
            trench_width = UNSET
        else:
            trench_width = Length.from_dict(_trench_width)

        _wheel_load = d.pop("wheel_load", UNSET)
        wheel_load: Force | Unset
        if isinstance(_wheel_load, Unset):
            wheel_load = UNSET
        else:
            wheel_load = Force.from_dict(_wheel_load)

        earth_loading = cls(
            traffic=traffic,
            allowable_wall_stress=allowable_wall_stress,
            arching_soil=arching_soil,
            bedding_angle=bedding_angle,
            bedding_constant_ratio=bedding_constant_ratio,
            compaction=compaction,
            concrete_density=concrete_density,
            deflection_limit_percent=deflection_limit_percent,
            duct_density=duct_density,
            duct_mass_per_length=duct_mass_per_length,
            earth_load_method=earth_load_method,
            embedment=embedment,
            flotation_factor=flotation_factor,
            groundwater_depth=groundwater_depth,
            lag_factor=lag_factor,
            lift_height=lift_height,
            live_load_method=live_load_method,
            load_spread_ratio=load_spread_ratio,
            long_term_modulus=long_term_modulus,
            material=material,
            modulus=modulus,
            pipe_stiffness=pipe_stiffness,
            saturated_soil_density=saturated_soil_density,
            soil_density=soil_density,
            soil_modulus=soil_modulus,
            trench_width=trench_width,
            wheel_load=wheel_load,
        )

        return earth_loading
