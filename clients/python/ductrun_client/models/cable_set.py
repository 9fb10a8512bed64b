from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.cable_arrangement import CableArrangement
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
        conductor (PulledConductor | Unset): The conductors within one cable.
        weight_correction_factor (float | Unset): Factor on friction for cables side by side, in place of the one of
            their arrangement.
    """

    count: int
    diameter: Length
    mass_per_length: MassPerLength
    arrangement: CableArrangement | Unset = UNSET
    conductor: PulledConductor | Unset = UNSET
    weight_correction_factor: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        count = self.count

        diameter = self.diameter.to_dict()

        mass_per_length = self.mass_per_length.to_dict()

        arrangement: str | Unset = UNSET
        if not isinstance(self.arrangement, Unset):
            arrangement = self.arrangement.value

        conductor: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor, Unset):
            conductor = self.conductor.to_dict()

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
        if conductor is not UNSET:
            field_dict["conductor"] = conductor
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

        _conductor = d.pop("conductor", UNSET)
        conductor: PulledConductor | Unset
        if isinstance(_conductor, Unset):
            conductor = UNSET
        else:
            conductor = PulledConductor.from_dict(_conductor)

        weight_correction_factor = d.pop("weight_correction_factor", UNSET)

        cable_set = cls(
            count=count,
            diameter=diameter,
            mass_per_length=mass_per_length,
            arrangement=arrangement,
            conductor=conductor,
            weight_correction_factor=weight_correction_factor,
        )

        return cable_set
