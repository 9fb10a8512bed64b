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

from ..models.cable_jacket import CableJacket
from ..models.cable_sheath import CableSheath
from ..models.cable_shielding import CableShielding
from ..models.cable_type import CableType
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_conductor import CableConductor
    from ..models.cable_layers import CableLayers
    from ..models.length import Length
    from ..models.mass_per_length import MassPerLength


T = TypeVar("T", bound="MeasuredCable")


@_attrs_define
class MeasuredCable:
    """A single conductor or single-conductor cable by its diameter (Chapter 9, Table 1, Note 5).

    Attributes:
        diameter (Length): A length with its unit.
        kind (Literal['measured']): Fixed text that says: a single conductor by diameter.
        bending_radius (Length | Unset): A length with its unit.
        cable_type (CableType | Unset): Kinds of cable with a published sidewall pressure; general where it is not
            known.
        conductor (CableConductor | Unset): The conductors within one cable, which a pulling eye holds and which carry
            the current.
        jacket (CableJacket | Unset): Jackets with a published friction in conduit.
        layers (CableLayers | Unset): What lies between the conductor of a cable and its surface.
        mass_per_length (MassPerLength | Unset): A mass per length with its unit.
        sheath (CableSheath | Unset): What a basket grip holds.
        shielded_conductor_diameter (Length | Unset): A length with its unit.
        shielding (CableShielding | Unset): Make-up of a cable that sets its least bending radius.
    """

    diameter: Length
    kind: Literal["measured"]
    bending_radius: Length | Unset = UNSET
    cable_type: CableType | Unset = UNSET
    conductor: CableConductor | Unset = UNSET
    jacket: CableJacket | Unset = UNSET
    layers: CableLayers | Unset = UNSET
    mass_per_length: MassPerLength | Unset = UNSET
    sheath: CableSheath | Unset = UNSET
    shielded_conductor_diameter: Length | Unset = UNSET
    shielding: CableShielding | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        diameter = self.diameter.to_dict()

        kind = self.kind

        bending_radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bending_radius, Unset):
            bending_radius = self.bending_radius.to_dict()

        cable_type: str | Unset = UNSET
        if not isinstance(self.cable_type, Unset):
            cable_type = self.cable_type.value

        conductor: dict[str, Any] | Unset = UNSET
        if not isinstance(self.conductor, Unset):
            conductor = self.conductor.to_dict()

        jacket: str | Unset = UNSET
        if not isinstance(self.jacket, Unset):
            jacket = self.jacket.value

        layers: dict[str, Any] | Unset = UNSET
        if not isinstance(self.layers, Unset):
            layers = self.layers.to_dict()

        mass_per_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mass_per_length, Unset):
            mass_per_length = self.mass_per_length.to_dict()

        sheath: str | Unset = UNSET
        if not isinstance(self.sheath, Unset):
            sheath = self.sheath.value

        shielded_conductor_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.shielded_conductor_diameter, Unset):
            shielded_conductor_diameter = self.shielded_conductor_diameter.to_dict()

        shielding: str | Unset = UNSET
        if not isinstance(self.shielding, Unset):
            shielding = self.shielding.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "diameter": diameter,
                "kind": kind,
            }
        )
        if bending_radius is not UNSET:
            field_dict["bending_radius"] = bending_radius
        if cable_type is not UNSET:
            field_dict["cable_type"] = cable_type
        if conductor is not UNSET:
            field_dict["conductor"] = conductor
        if jacket is not UNSET:
            field_dict["jacket"] = jacket
        if layers is not UNSET:
            field_dict["layers"] = layers
        if mass_per_length is not UNSET:
            field_dict["mass_per_length"] = mass_per_length
        if sheath is not UNSET:
            field_dict["sheath"] = sheath
        if shielded_conductor_diameter is not UNSET:
            field_dict["shielded_conductor_diameter"] = shielded_conductor_diameter
        if shielding is not UNSET:
            field_dict["shielding"] = shielding

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_conductor import CableConductor  # noqa: PLC0415
        from ..models.cable_layers import CableLayers  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass_per_length import MassPerLength  # noqa: PLC0415

        d = dict(src_dict)
        diameter = Length.from_dict(d.pop("diameter"))

        kind = cast(Literal["measured"], d.pop("kind"))
        if kind != "measured":
            raise ValueError(f"kind must match const 'measured', got '{kind}'")

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

        _conductor = d.pop("conductor", UNSET)
        conductor: CableConductor | Unset
        if isinstance(_conductor, Unset):
            conductor = UNSET
        else:
            conductor = CableConductor.from_dict(_conductor)

        _jacket = d.pop("jacket", UNSET)
        jacket: CableJacket | Unset
        if isinstance(_jacket, Unset):
            jacket = UNSET
        else:
            jacket = CableJacket(_jacket)

        _layers = d.pop("layers", UNSET)
        layers: CableLayers | Unset
        if isinstance(_layers, Unset):
            layers = UNSET
        else:
            layers = CableLayers.from_dict(_layers)

        _mass_per_length = d.pop("mass_per_length", UNSET)
        mass_per_length: MassPerLength | Unset
        if isinstance(_mass_per_length, Unset):
            mass_per_length = UNSET
        else:
            mass_per_length = MassPerLength.from_dict(_mass_per_length)

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

        measured_cable = cls(
            diameter=diameter,
            kind=kind,
            bending_radius=bending_radius,
            cable_type=cable_type,
            conductor=conductor,
            jacket=jacket,
            layers=layers,
            mass_per_length=mass_per_length,
            sheath=sheath,
            shielded_conductor_diameter=shielded_conductor_diameter,
            shielding=shielding,
        )

        return measured_cable
