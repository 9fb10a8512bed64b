from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.conductor_material import ConductorMaterial
from ..models.conductor_size import ConductorSize
from ..models.conductor_temper import ConductorTemper
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.conductor_area import ConductorArea
    from ..models.pressure import Pressure


T = TypeVar("T", bound="CableConductor")


@_attrs_define
class CableConductor:
    """The conductors within one cable, which a pulling eye holds and which carry the current.

    Attributes:
        count (int): Conductors of this size in one cable, shields and grounds not counted.
        material (ConductorMaterial): Metals of conductors.
        allowable_stress (Pressure | Unset): A pressure or stress with its unit.
        area (ConductorArea | Unset): The metal area of a conductor with its unit.
        size (ConductorSize | Unset): Sizes of conductors.
        temper (ConductorTemper | Unset): Tempers and alloys of conductors with a published pulling stress.
    """

    count: int
    material: ConductorMaterial
    allowable_stress: Pressure | Unset = UNSET
    area: ConductorArea | Unset = UNSET
    size: ConductorSize | Unset = UNSET
    temper: ConductorTemper | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        material = self.material.value

        allowable_stress: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_stress, Unset):
            allowable_stress = self.allowable_stress.to_dict()

        area: dict[str, Any] | Unset = UNSET
        if not isinstance(self.area, Unset):
            area = self.area.to_dict()

        size: str | Unset = UNSET
        if not isinstance(self.size, Unset):
            size = self.size.value

        temper: str | Unset = UNSET
        if not isinstance(self.temper, Unset):
            temper = self.temper.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "material": material,
            }
        )
        if allowable_stress is not UNSET:
            field_dict["allowable_stress"] = allowable_stress
        if area is not UNSET:
            field_dict["area"] = area
        if size is not UNSET:
            field_dict["size"] = size
        if temper is not UNSET:
            field_dict["temper"] = temper

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_area import ConductorArea  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        material = ConductorMaterial(d.pop("material"))

        _allowable_stress = d.pop("allowable_stress", UNSET)
        allowable_stress: Pressure | Unset
        if isinstance(_allowable_stress, Unset):
            allowable_stress = UNSET
        else:
            allowable_stress = Pressure.from_dict(_allowable_stress)

        _area = d.pop("area", UNSET)
        area: ConductorArea | Unset
        if isinstance(_area, Unset):
            area = UNSET
        else:
            area = ConductorArea.from_dict(_area)

        _size = d.pop("size", UNSET)
        size: ConductorSize | Unset
        if isinstance(_size, Unset):
            size = UNSET
        else:
            size = ConductorSize(_size)

        _temper = d.pop("temper", UNSET)
        temper: ConductorTemper | Unset
        if isinstance(_temper, Unset):
            temper = UNSET
        else:
            temper = ConductorTemper(_temper)

        cable_conductor = cls(
            count=count,
            material=material,
            allowable_stress=allowable_stress,
            area=area,
            size=size,
            temper=temper,
        )

        return cable_conductor
