from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.conductor_area import ConductorArea
    from ..models.length import Length
    from ..models.resistance_per_length import ResistancePerLength


T = TypeVar("T", bound="CableShield")


@_attrs_define
class CableShield:
    """The metal shield over the insulation of one conductor.

    Attributes:
        mean_diameter (Length | Unset): A length with its unit.
        metal_area (ConductorArea | Unset): The metal area of a conductor with its unit.
        resistance (ResistancePerLength | Unset): An electric resistance per length with its unit.
    """

    mean_diameter: Length | Unset = UNSET
    metal_area: ConductorArea | Unset = UNSET
    resistance: ResistancePerLength | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        mean_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mean_diameter, Unset):
            mean_diameter = self.mean_diameter.to_dict()

        metal_area: dict[str, Any] | Unset = UNSET
        if not isinstance(self.metal_area, Unset):
            metal_area = self.metal_area.to_dict()

        resistance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.resistance, Unset):
            resistance = self.resistance.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if mean_diameter is not UNSET:
            field_dict["mean_diameter"] = mean_diameter
        if metal_area is not UNSET:
            field_dict["metal_area"] = metal_area
        if resistance is not UNSET:
            field_dict["resistance"] = resistance

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_area import ConductorArea  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415

        d = dict(src_dict)
        _mean_diameter = d.pop("mean_diameter", UNSET)
        mean_diameter: Length | Unset
        if isinstance(_mean_diameter, Unset):
            mean_diameter = UNSET
        else:
            mean_diameter = Length.from_dict(_mean_diameter)

        _metal_area = d.pop("metal_area", UNSET)
        metal_area: ConductorArea | Unset
        if isinstance(_metal_area, Unset):
            metal_area = UNSET
        else:
            metal_area = ConductorArea.from_dict(_metal_area)

        _resistance = d.pop("resistance", UNSET)
        resistance: ResistancePerLength | Unset
        if isinstance(_resistance, Unset):
            resistance = UNSET
        else:
            resistance = ResistancePerLength.from_dict(_resistance)

        cable_shield = cls(
            mean_diameter=mean_diameter,
            metal_area=metal_area,
            resistance=resistance,
        )

        return cable_shield
