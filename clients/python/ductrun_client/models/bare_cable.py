from __future__ import annotations

from collections.abc import Mapping
from typing import (
    TYPE_CHECKING,
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.bare_stranding import BareStranding
from ..models.cable_jacket import CableJacket
from ..models.cable_sheath import CableSheath
from ..models.cable_shielding import CableShielding
from ..models.cable_type import CableType
from ..models.conductor_material import ConductorMaterial
from ..models.conductor_size import ConductorSize
from ..models.conductor_temper import ConductorTemper
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength
    from ..models.pressure import Pressure


T = TypeVar("T", bound="BareCable")


@_attrs_define
class BareCable:
    """A bare conductor by size, from Chapter 9, Table 8; the circle around all strands counts.

    Attributes:
        kind (Literal['bare']): Fixed text that says: bare.
        size (ConductorSize): Sizes of conductors.
        allowable_stress (Pressure | Unset): A pressure or stress with its unit.
        bending_radius (Length | Unset): A length with its unit.
        cable_type (CableType | Unset): Kinds of cable with a published sidewall pressure; general where it is not
            known.
        jacket (CableJacket | Unset): Jackets with a published friction in conduit.
        mass_per_length (MassPerLength | Unset): A mass per length with its unit.
        material (ConductorMaterial | Unset): Metals of conductors.
        sheath (CableSheath | Unset): What a basket grip holds.
        shielded_conductor_diameter (Length | Unset): A length with its unit.
        shielding (CableShielding | Unset): Make-up of a cable that sets its least bending radius.
        stranding (BareStranding | Unset): Make-up of a bare conductor.
        temper (ConductorTemper | Unset): Tempers and alloys of conductors with a published pulling stress.
    """

    kind: Literal["bare"]
    size: ConductorSize
    allowable_stress: Pressure | Unset = UNSET
    bending_radius: Length | Unset = UNSET
    cable_type: CableType | Unset = UNSET
    jacket: CableJacket | Unset = UNSET
    mass_per_length: MassPerLength | Unset = UNSET
    material: ConductorMaterial | Unset = UNSET
    sheath: CableSheath | Unset = UNSET
    shielded_conductor_diameter: Length | Unset = UNSET
    shielding: CableShielding | Unset = UNSET
    stranding: BareStranding | Unset = UNSET
    temper: ConductorTemper | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        size = self.size.value

        allowable_stress: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_stress, Unset):
            allowable_stress = self.allowable_stress.to_dict()

        bending_radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bending_radius, Unset):
            bending_radius = self.bending_radius.to_dict()

        cable_type: str | Unset = UNSET
        if not isinstance(self.cable_type, Unset):
            cable_type = self.cable_type.value

        jacket: str | Unset = UNSET
        if not isinstance(self.jacket, Unset):
            jacket = self.jacket.value

        mass_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mass_per_length, Unset):
            mass_per_length = self.mass_per_length.to_dict()

        material: str | Unset = UNSET
        if not isinstance(self.material, Unset):
            material = self.material.value

        sheath: str | Unset = UNSET
        if not isinstance(self.sheath, Unset):
            sheath = self.sheath.value

        shielded_conductor_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.shielded_conductor_diameter, Unset):
            shielded_conductor_diameter = self.shielded_conductor_diameter.to_dict()

        shielding: str | Unset = UNSET
        if not isinstance(self.shielding, Unset):
            shielding = self.shielding.value

        stranding: str | Unset = UNSET
        if not isinstance(self.stranding, Unset):
            stranding = self.stranding.value

        temper: str | Unset = UNSET
        if not isinstance(self.temper, Unset):
            temper = self.temper.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "size": size,
            }
        )
        if allowable_stress is not UNSET:
            field_dict["allowable_stress"] = allowable_stress
        if bending_radius is not UNSET:
            field_dict["bending_radius"] = bending_radius
        if cable_type is not UNSET:
            field_dict["cable_type"] = cable_type
        if jacket is not UNSET:
            field_dict["jacket"] = jacket
        if mass_per_length is not UNSET:
            field_dict["mass_per_length"] = mass_per_length
        if material is not UNSET:
            field_dict["material"] = material
        if sheath is not UNSET:
            field_dict["sheath"] = sheath
        if shielded_conductor_diameter is not UNSET:
            field_dict["shielded_conductor_diameter"] = shielded_conductor_diameter
        if shielding is not UNSET:
            field_dict["shielding"] = shielding
        if stranding is not UNSET:
            field_dict["stranding"] = stranding
        if temper is not UNSET:
            field_dict["temper"] = temper

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["bare"], d.pop("kind"))
        if kind != "bare":
            raise ValueError(f"kind must match const 'bare', got '{kind}'")

        size = ConductorSize(d.pop("size"))

        _allowable_stress = d.pop("allowable_stress", UNSET)
        allowable_stress: Pressure | Unset
        if isinstance(_allowable_stress, Unset):
            allowable_stress = UNSET
        else:
            allowable_stress = Pressure.from_dict(_allowable_stress)

        _bending_radius = d.pop("bending_radius", UNSET)
        bending_radius: Length | Unset
        if isinstance(_bending_radius, Unset):
            bending_radius = UNSET
        else:
            bending_radius = Length.from_dict(_bending_radius)

        _cable_type = d.pop("cable_type", UNSET)
        cable_type: CableType | Unset
        if isinstance(_cable_type, Unset):
            cable_type = UNSET
        else:
            cable_type = CableType(_cable_type)

        _jacket = d.pop("jacket", UNSET)
        jacket: CableJacket | Unset
        if isinstance(_jacket, Unset):
            jacket = UNSET
        else:
            jacket = CableJacket(_jacket)

        _mass_per_length = d.pop("mass_per_length", UNSET)
        mass_per_length: MassPerLength | Unset
        if isinstance(_mass_per_length, Unset):
            mass_per_length = UNSET
        else:
            mass_per_length = MassPerLength.from_dict(_mass_per_length)

        _material = d.pop("material", UNSET)
        material: ConductorMaterial | Unset
        if isinstance(_material, Unset):
            material = UNSET
        else:
            material = ConductorMaterial(_material)

        _sheath = d.pop("sheath", UNSET)
        sheath: CableSheath | Unset
        if isinstance(_sheath, Unset):
            sheath = UNSET
        else:
            sheath = CableSheath(_sheath)

        _shielded_conductor_diameter = d.pop("shielded_conductor_diameter", UNSET)
        shielded_conductor_diameter: Length | Unset
        if isinstance(_shielded_conductor_diameter, Unset):
            shielded_conductor_diameter = UNSET
        else:
            shielded_conductor_diameter = Length.from_dict(_shielded_conductor_diameter)

        _shielding = d.pop("shielding", UNSET)
        shielding: CableShielding | Unset
        if isinstance(_shielding, Unset):
            shielding = UNSET
        else:
            shielding = CableShielding(_shielding)

        _stranding = d.pop("stranding", UNSET)
        stranding: BareStranding | Unset
        if isinstance(_stranding, Unset):
            stranding = UNSET
        else:
            stranding = BareStranding(_stranding)

        _temper = d.pop("temper", UNSET)
        temper: ConductorTemper | Unset
        if isinstance(_temper, Unset):
            temper = UNSET
        else:
            temper = ConductorTemper(_temper)

        bare_cable = cls(
            kind=kind,
            size=size,
            allowable_stress=allowable_stress,
            bending_radius=bending_radius,
            cable_type=cable_type,
            jacket=jacket,
            mass_per_length=mass_per_length,
            material=material,
            sheath=sheath,
            shielded_conductor_diameter=shielded_conductor_diameter,
            shielding=shielding,
            stranding=stranding,
            temper=temper,
        )

        return bare_cable
