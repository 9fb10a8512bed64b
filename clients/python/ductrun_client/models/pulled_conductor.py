from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.conductor_material import ConductorMaterial
from ..models.conductor_size import ConductorSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.conductor_area import ConductorArea


T = TypeVar("T", bound="PulledConductor")


@_attrs_define
class PulledConductor:
    """The conductors within one cable.

    Attributes:
        count (int): Conductors of this size in one cable, shields and grounds not counted.
        material (ConductorMaterial): Metals of conductors.
        area (ConductorArea | Unset): The metal area of a conductor with its unit.
        size (ConductorSize | Unset): Sizes of conductors.
    """

    count: int
    material: ConductorMaterial
    area: ConductorArea | Unset = UNSET
    size: ConductorSize | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        material = self.material.value

        area: dict[str, Any] | Unset = UNSET
        if not isinstance(self.area, Unset):
            area = self.area.to_dict()

        size: str | Unset = UNSET
        if not isinstance(self.size, Unset):
            size = self.size.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "material": material,
            }
        )
        if area is not UNSET:
            field_dict["area"] = area
        if size is not UNSET:
            field_dict["size"] = size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_area import ConductorArea  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        material = ConductorMaterial(d.pop("material"))

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

        pulled_conductor = cls(
            count=count,
            material=material,
            area=area,
            size=size,
        )

        return pulled_conductor
