from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.cable_arrangement import CableArrangement
from ..models.cable_sheath import CableSheath
from ..models.cable_shielding import CableShielding
from ..models.cable_type import CableType
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength
    from ..models.pulled_conductor import PulledConductor


T = TypeVar("T", bound="CableSet")


@_attrs_define
class CableSet:
    """Equal cables pulled together.

    Attributes:
        count (int): Cables pulled together.
        diameter (Length): A length with its unit.
        mass_per_length (MassPerLength): A mass per length with its unit.
        arrangement (CableArrangement | Unset): How cables lie in the conduit; three cables lie triangular or cradled.
        cable_type (CableType | Unset): Kinds of cable with a published sidewall pressure.
        conductor (PulledConductor | Unset): The conductors within one cable.
        sheath (CableSheath | Unset): What a basket grip holds.
        shielded_conductor_diameter (Length | Unset): A length with its unit.
        shielding (CableShielding | Unset): Make-up of a cable that sets its least bending radius.
        weight_correction_factor (float | Unset): Factor on friction for cables side by side, in place of the one of
            their arrangement.
    """

    count: int
    diameter: Length
    mass_per_length: MassPerLength
    arrangement: CableArrangement | Unset = UNSET
    cable_type: CableType | Unset = UNSET
    conductor: PulledConductor | Unset = UNSET
    sheath: CableSheath | Unset = UNSET
    shielded_conductor_diameter: Length | Unset = UNSET
    shielding: CableShielding | Unset = UNSET
    weight_correction_factor: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        diameter = self.diameter.to_dict()

        mass_per_length = self.mass_per_length.to_dict()

        arrangement: str | Unset = UNSET
        if not isinstance(self.arrangement, Unset):
            arrangement = self.arrangement.value

        cable_type: str | Unset = UNSET
        if not isinstance(self.cable_type, Unset):
            cable_type = self.cable_type.value

        conductor: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor, Unset):
            conductor = self.conductor.to_dict()

        sheath: str | Unset = UNSET
        if not isinstance(self.sheath, Unset):
            sheath = self.sheath.value

        shielded_conductor_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.shielded_conductor_diameter, Unset):
            shielded_conductor_diameter = self.shielded_conductor_diameter.to_dict()

        shielding: str | Unset = UNSET
        if not isinstance(self.shielding, Unset):
            shielding = self.shielding.value

        weight_correction_factor = self.weight_correction_factor

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
                "diameter": diameter,
                "mass_per_length": mass_per_length,
            }
        )
        if arrangement is not UNSET:
            field_dict["arrangement"] = arrangement
        if cable_type is not UNSET:
            field_dict["cable_type"] = cable_type
        if conductor is not UNSET:
            field_dict["conductor"] = conductor
        if sheath is not UNSET:
            field_dict["sheath"] = sheath
        if shielded_conductor_diameter is not UNSET:
            field_dict["shielded_conductor_diameter"] = shielded_conductor_diameter
        if shielding is not UNSET:
            field_dict["shielding"] = shielding
        if weight_correction_factor is not UNSET:
            field_dict["weight_correction_factor"] = weight_correction_factor

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415
        from ..models.pulled_conductor import PulledConductor  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        diameter = Length.from_dict(d.pop("diameter"))

        mass_per_length = MassPerLength.from_dict(d.pop("mass_per_length"))

        _arrangement = d.pop("arrangement", UNSET)
        arrangement: CableArrangement | Unset
        if isinstance(_arrangement, Unset):
            arrangement = UNSET
        else:
            arrangement = CableArrangement(_arrangement)

        _cable_type = d.pop("cable_type", UNSET)
        cable_type: CableType | Unset
        if isinstance(_cable_type, Unset):
            cable_type = UNSET
        else:
            cable_type = CableType(_cable_type)

        _conductor = d.pop("conductor", UNSET)
        conductor: PulledConductor | Unset
        if isinstance(_conductor, Unset):
            conductor = UNSET
        else:
            conductor = PulledConductor.from_dict(_conductor)

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

        weight_correction_factor = d.pop("weight_correction_factor", UNSET)

        cable_set = cls(
            count=count,
            diameter=diameter,
            mass_per_length=mass_per_length,
            arrangement=arrangement,
            cable_type=cable_type,
            conductor=conductor,
            sheath=sheath,
            shielded_conductor_diameter=shielded_conductor_diameter,
            shielding=shielding,
            weight_correction_factor=weight_correction_factor,
        )

        return cable_set
