from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.duct_ends import DuctEnds
from ..models.run_end import RunEnd
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.duct_elbow import DuctElbow
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.temperature import Temperature


T = TypeVar("T", bound="JointsRequest")


@_attrs_define
class JointsRequest:
    """Ducts along a run.

    Attributes:
        conduit (ListedConduit): A conduit or duct by its type and trade size; its diameters come from the tables.
        duct_count (int): Ducts of the run.
        length (Length): A length with its unit.
        bell_loss (Length | Unset): A length with its unit.
        cord_tail (Length | Unset): A length with its unit.
        elbows (list[DuctElbow] | Unset): Elbows and sweeps of each duct.
        end (RunEnd | Unset): How ducts finish at an end of a run: what is ordered and joined there.
        ends (DuctEnds | Unset): Whether sticks have a bell or two plain ends.
        joints_per_quart (int | Unset): Cemented joints that a quart of cement makes.
        mandrel_clearance (Length | Unset): A length with its unit.
        offcuts_shared (bool | Unset): Whether the offcut of one duct starts the next.
        spare_duct_count (int | Unset): Ducts that stay empty, plugged at both ends.
        start (RunEnd | Unset): How ducts finish at an end of a run: what is ordered and joined there.
        stick_length (Length | Unset): A length with its unit.
        temperature (Temperature | Unset): A temperature with its unit.
        waste_percent (float | Unset): Sticks to order beyond those laid.
    """

    conduit: ListedConduit
    duct_count: int
    length: Length
    bell_loss: Length | Unset = UNSET
    cord_tail: Length | Unset = UNSET
    elbows: list[DuctElbow] | Unset = UNSET
    end: RunEnd | Unset = UNSET
    ends: DuctEnds | Unset = UNSET
    joints_per_quart: int | Unset = UNSET
    mandrel_clearance: Length | Unset = UNSET
    offcuts_shared: bool | Unset = UNSET
    spare_duct_count: int | Unset = UNSET
    start: RunEnd | Unset = UNSET
    stick_length: Length | Unset = UNSET
    temperature: Temperature | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        conduit = self.conduit.to_dict()

        duct_count = self.duct_count

        length = self.length.to_dict()

        bell_loss: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bell_loss, Unset):
            bell_loss = self.bell_loss.to_dict()

        cord_tail: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cord_tail, Unset):
            cord_tail = self.cord_tail.to_dict()

        elbows: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.elbows, Unset):
            elbows = []
            for elbows_item_data in self.elbows:
                elbows_item = elbows_item_data.to_dict()
                elbows.append(elbows_item)

        end: str | Unset = UNSET
        if not isinstance(self.end, Unset):
            end = self.end.value

        ends: str | Unset = UNSET
        if not isinstance(self.ends, Unset):
            ends = self.ends.value

        joints_per_quart = self.joints_per_quart

        mandrel_clearance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mandrel_clearance, Unset):
            mandrel_clearance = self.mandrel_clearance.to_dict()

        offcuts_shared = self.offcuts_shared

        spare_duct_count = self.spare_duct_count

        start: str | Unset = UNSET
        if not isinstance(self.start, Unset):
            start = self.start.value

        stick_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.stick_length, Unset):
            stick_length = self.stick_length.to_dict()

        temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.temperature, Unset):
            temperature = self.temperature.to_dict()

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "conduit": conduit,
                "duct_count": duct_count,
                "length": length,
            }
        )
        if bell_loss is not UNSET:
            field_dict["bell_loss"] = bell_loss
        if cord_tail is not UNSET:
            field_dict["cord_tail"] = cord_tail
        if elbows is not UNSET:
            field_dict["elbows"] = elbows
        if end is not UNSET:
            field_dict["end"] = end
        if ends is not UNSET:
            field_dict["ends"] = ends
        if joints_per_quart is not UNSET:
            field_dict["joints_per_quart"] = joints_per_quart
        if mandrel_clearance is not UNSET:
            field_dict["mandrel_clearance"] = mandrel_clearance
        if offcuts_shared is not UNSET:
            field_dict["offcuts_shared"] = offcuts_shared
        if spare_duct_count is not UNSET:
            field_dict["spare_duct_count"] = spare_duct_count
        if start is not UNSET:
            field_dict["start"] = start
        if stick_length is not UNSET:
            field_dict["stick_length"] = stick_length
        if temperature is not UNSET:
            field_dict["temperature"] = temperature
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.duct_elbow import DuctElbow  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        conduit = ListedConduit.from_dict(d.pop("conduit"))

        duct_count = d.pop("duct_count")

        length = Length.from_dict(d.pop("length"))

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

        _elbows = d.pop("elbows", UNSET)
        elbows: list[DuctElbow] | Unset = UNSET
        if _elbows is not UNSET:
            elbows = []
            for elbows_item_data in _elbows:
                elbows_item = DuctElbow.from_dict(elbows_item_data)

                elbows.append(elbows_item)

        _end = d.pop("end", UNSET)
        end: RunEnd | Unset
        if isinstance(_end, Unset):
            end = UNSET
        else:
            end = RunEnd(_end)

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

        spare_duct_count = d.pop("spare_duct_count", UNSET)

        _start = d.pop("start", UNSET)
        start: RunEnd | Unset
        if isinstance(_start, Unset):
            start = UNSET
        else:
            start = RunEnd(_start)

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

        joints_request = cls(
            conduit=conduit,
            duct_count=duct_count,
            length=length,
            bell_loss=bell_loss,
            cord_tail=cord_tail,
            elbows=elbows,
            end=end,
            ends=ends,
            joints_per_quart=joints_per_quart,
            mandrel_clearance=mandrel_clearance,
            offcuts_shared=offcuts_shared,
            spare_duct_count=spare_duct_count,
            start=start,
            stick_length=stick_length,
            temperature=temperature,
            waste_percent=waste_percent,
        )

        return joints_request
