from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_insulation import CableInsulation
    from ..models.cable_jacket_layer import CableJacketLayer
    from ..models.cable_shield import CableShield
    from ..models.length import Length
    from ..models.resistance_per_length import ResistancePerLength


T = TypeVar("T", bound="CableLayers")


@_attrs_define
class CableLayers:
    """What lies between the conductor of a cable and its surface.

    Attributes:
        insulation (CableInsulation): The insulation of one conductor, with the screens on both sides of it.
        conductor_diameter (Length | Unset): A length with its unit.
        conductor_resistance (ResistancePerLength | Unset): An electric resistance per length with its unit.
        jacket (CableJacketLayer | Unset): The jacket around the cable.
        shield (CableShield | Unset): The metal shield over the insulation of one conductor.
    """

    insulation: CableInsulation
    conductor_diameter: Length | Unset = UNSET
    conductor_resistance: ResistancePerLength | Unset = UNSET
    jacket: CableJacketLayer | Unset = UNSET
    shield: CableShield | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        insulation = self.insulation.to_dict()

        conductor_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor_diameter, Unset):
            conductor_diameter = self.conductor_diameter.to_dict()

        conductor_resistance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor_resistance, Unset):
            conductor_resistance = self.conductor_resistance.to_dict()

        jacket: dict[str, Any] | Unset = UNSET
        if not isinstance(self.jacket, Unset):
            jacket = self.jacket.to_dict()

        shield: dict[str, Any] | Unset = UNSET
        if not isinstance(self.shield, Unset):
            shield = self.shield.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "insulation": insulation,
            }
        )
        if conductor_diameter is not UNSET:
            field_dict["conductor_diameter"] = conductor_diameter
        if conductor_resistance is not UNSET:
            field_dict["conductor_resistance"] = conductor_resistance
        if jacket is not UNSET:
            field_dict["jacket"] = jacket
        if shield is not UNSET:
            field_dict["shield"] = shield

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_insulation import CableInsulation  # noqa: PLC0415
        from ..models.cable_jacket_layer import CableJacketLayer  # noqa: PLC0415
        from ..models.cable_shield import CableShield  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415

        d = dict(src_dict)
        insulation = CableInsulation.from_dict(d.pop("insulation"))

        _conductor_diameter = d.pop("conductor_diameter", UNSET)
        conductor_diameter: Length | Unset
        if isinstance(_conductor_diameter, Unset):
            conductor_diameter = UNSET
        else:
            conductor_diameter = Length.from_dict(_conductor_diameter)

        _conductor_resistance = d.pop("conductor_resistance", UNSET)
        conductor_resistance: ResistancePerLength | Unset
        if isinstance(_conductor_resistance, Unset):
            conductor_resistance = UNSET
        else:
            conductor_resistance = ResistancePerLength.from_dict(_conductor_resistance)

        _jacket = d.pop("jacket", UNSET)
        jacket: CableJacketLayer | Unset
        if isinstance(_jacket, Unset):
            jacket = UNSET
        else:
            jacket = CableJacketLayer.from_dict(_jacket)

        _shield = d.pop("shield", UNSET)
        shield: CableShield | Unset
        if isinstance(_shield, Unset):
            shield = UNSET
        else:
            shield = CableShield.from_dict(_shield)

        cable_layers = cls(
            insulation=insulation,
            conductor_diameter=conductor_diameter,
            conductor_resistance=conductor_resistance,
            jacket=jacket,
            shield=shield,
        )

        return cable_layers
