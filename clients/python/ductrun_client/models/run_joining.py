from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.duct_ends import DuctEnds
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.temperature import Temperature


T = TypeVar("T", bound="RunJoining")


@_attrs_define
class RunJoining:
    """How ducts are joined, and how their elbows are made.

    Attributes:
        bell_loss (Length | Unset): A length with its unit.
        cord_tail (Length | Unset): A length with its unit.
        elbow_tangent (Length | Unset): A length with its unit.
        ends (DuctEnds | Unset): Whether sticks have a bell or two plain ends.
        joints_per_quart (int | Unset): Cemented joints that a quart of cement makes.
        mandrel_clearance (Length | Unset): A length with its unit.
        offcuts_shared (bool | Unset): Whether the offcut of one duct starts the next.
        stick_length (Length | Unset): A length with its unit.
        temperature (Temperature | Unset): A temperature with its unit.
        waste_percent (float | Unset): Sticks to order beyond those laid.
    """

    bell_loss: Length | Unset = UNSET
    cord_tail: Length | Unset = UNSET
    elbow_tangent: Length | Unset = UNSET
    ends: DuctEnds | Unset = UNSET
    joints_per_quart: int | Unset = UNSET
    mandrel_clearance: Length | Unset = UNSET
    offcuts_shared: bool | Unset = UNSET
    stick_length: Length | Unset = UNSET
    temperature: Temperature | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bell_loss: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bell_loss, Unset):
            bell_loss = self.bell_loss.to_dict()

        cord_tail: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cord_tail, Unset):
            cord_tail = self.cord_tail.to_dict()

        elbow_tangent: dict[str, Any] | Unset = UNSET
        if not isinstance(self.elbow_tangent, Unset):
            elbow_tangent = self.elbow_tangent.to_dict()

        ends: str | Unset = UNSET
        if not isinstance(self.ends, Unset):
            ends = self.ends.value

        joints_per_quart = self.joints_per_quart

        mandrel_clearance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mandrel_clearance, Unset):
            mandrel_clearance = self.mandrel_clearance.to_dict()

        offcuts_shared = self.offcuts_shared

        stick_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.stick_length, Unset):
            stick_length = self.stick_length.to_dict()

        temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.temperature, Unset):
            temperature = self.temperature.to_dict()

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if bell_loss is not UNSET:
            field_dict["bell_loss"] = bell_loss
        if cord_tail is not UNSET:
            field_dict["cord_tail"] = cord_tail
        if elbow_tangent is not UNSET:
            field_dict["elbow_tangent"] = elbow_tangent
        if ends is not UNSET:
            field_dict["ends"] = ends
        if joints_per_quart is not UNSET:
            field_dict["joints_per_quart"] = joints_per_quart
        if mandrel_clearance is not UNSET:
            field_dict["mandrel_clearance"] = mandrel_clearance
        if offcuts_shared is not UNSET:
            field_dict["offcuts_shared"] = offcuts_shared
        if stick_length is not UNSET:
            field_dict["stick_length"] = stick_length
        if temperature is not UNSET:
            field_dict["temperature"] = temperature
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        _bell_loss = d.pop("bell_loss", UNSET)
        bell_loss: Length | Unset
        if isinstance(_bell_loss, Unset):
            bell_loss = UNSET
        else:
            bell_loss = Length.from_dict(_bell_loss)

        _cord_tail = d.pop("cord_tail", UNSET)
        cord_tail: Length | Unset
        if isinstance(_cord_tail, Unset):
            cord_tail = UNSET
        else:
            cord_tail = Length.from_dict(_cord_tail)

        _elbow_tangent = d.pop("elbow_tangent", UNSET)
        elbow_tangent: Length | Unset
        if isinstance(_elbow_tangent, Unset):
            elbow_tangent = UNSET
        else:
            elbow_tangent = Length.from_dict(_elbow_tangent)

        _ends = d.pop("ends", UNSET)
        ends: DuctEnds | Unset
        if isinstance(_ends, Unset):
            ends = UNSET
        else:
            ends = DuctEnds(_ends)

        joints_per_quart = d.pop("joints_per_quart", UNSET)

        _mandrel_clearance = d.pop("mandrel_clearance", UNSET)
        mandrel_clearance: Length | Unset
        if isinstance(_mandrel_clearance, Unset):
            mandrel_clearance = UNSET
        else:
            mandrel_clearance = Length.from_dict(_mandrel_clearance)

        offcuts_shared = d.pop("offcuts_shared", UNSET)

        _stick_length = d.pop("stick_length", UNSET)
        stick_length: Length | Unset
        if isinstance(_stick_length, Unset):
            stick_length = UNSET
        else:
            stick_length = Length.from_dict(_stick_length)

        _temperature = d.pop("temperature", UNSET)
        temperature: Temperature | Unset
        if isinstance(_temperature, Unset):
            temperature = UNSET
        else:
            temperature = Temperature.from_dict(_temperature)

        waste_percent = d.pop("waste_percent", UNSET)

        run_joining = cls(
            bell_loss=bell_loss,
            cord_tail=cord_tail,
            elbow_tangent=elbow_tangent,
            ends=ends,
            joints_per_quart=joints_per_quart,
            mandrel_clearance=mandrel_clearance,
            offcuts_shared=offcuts_shared,
            stick_length=stick_length,
            temperature=temperature,
            waste_percent=waste_percent,
        )

        return run_joining
