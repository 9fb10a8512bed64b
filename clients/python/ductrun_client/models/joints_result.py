from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.joining_method import JoiningMethod
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.duration import Duration
    from ..models.length import Length
    from ..models.volume import Volume


T = TypeVar("T", bound="JointsResult")


@_attrs_define
class JointsResult:
    """What to order and how long to wait.

    Attributes:
        adapter_count (int): Terminal adapters.
        coupling_count (int): Couplings, with those at elbows of a run beside; none with bells.
        elbow_count (int): Elbows and sweeps of all ducts.
        elbow_length (Length): A length with its unit.
        end_bell_count (int): End bells.
        joint_count (int): Joints of all ducts with those of their ends; of cemented ones each socket.
        method (JoiningMethod): How lengths of a conduit are joined: by solvent cement, fused, threaded, or by couplings
            set on.
        order_coupling_count (int): The same without those that come on lengths of threaded conduit, one on each.
        order_stick_count (int): The same with waste, in whole sticks.
        plug_count (int): Plugs for spare ducts, two each.
        pull_cord_length (Length): A length with its unit.
        stick_count (int): Sticks of all ducts.
        straight_length (Length): A length with its unit.
        cement_quart_count (int | Unset): The same in whole quarts.
        cement_volume (Volume | Unset): A volume with its unit.
        mandrel_diameter (Length | Unset): A length with its unit.
        set_time (Duration | Unset): A time with its unit.
    """

    adapter_count: int
    coupling_count: int
    elbow_count: int
    elbow_length: Length
    end_bell_count: int
    joint_count: int
    method: JoiningMethod
    order_coupling_count: int
    order_stick_count: int
    plug_count: int
    pull_cord_length: Length
    stick_count: int
    straight_length: Length
    cement_quart_count: int | Unset = UNSET
    cement_volume: Volume | Unset = UNSET
    mandrel_diameter: Length | Unset = UNSET
    set_time: Duration | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        adapter_count = self.adapter_count

        coupling_count = self.coupling_count

        elbow_count = self.elbow_count

        elbow_length = self.elbow_length.to_dict()

        end_bell_count = self.end_bell_count

        joint_count = self.joint_count

        method = self.method.value

        order_coupling_count = self.order_coupling_count

        order_stick_count = self.order_stick_count

        plug_count = self.plug_count

        pull_cord_length = self.pull_cord_length.to_dict()

        stick_count = self.stick_count

        straight_length = self.straight_length.to_dict()

        cement_quart_count = self.cement_quart_count

        cement_volume: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cement_volume, Unset):
            cement_volume = self.cement_volume.to_dict()

        mandrel_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mandrel_diameter, Unset):
            mandrel_diameter = self.mandrel_diameter.to_dict()

        set_time: dict[str, Any] | Unset = UNSET
        if not isinstance(self.set_time, Unset):
            set_time = self.set_time.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "adapter_count": adapter_count,
                "coupling_count": coupling_count,
                "elbow_count": elbow_count,
                "elbow_length": elbow_length,
                "end_bell_count": end_bell_count,
                "joint_count": joint_count,
                "method": method,
                "order_coupling_count": order_coupling_count,
                "order_stick_count": order_stick_count,
                "plug_count": plug_count,
                "pull_cord_length": pull_cord_length,
                "stick_count": stick_count,
                "straight_length": straight_length,
            }
        )
        if cement_quart_count is not UNSET:
            field_dict["cement_quart_count"] = cement_quart_count
        if cement_volume is not UNSET:
            field_dict["cement_volume"] = cement_volume
        if mandrel_diameter is not UNSET:
            field_dict["mandrel_diameter"] = mandrel_diameter
        if set_time is not UNSET:
            field_dict["set_time"] = set_time

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.duration import Duration  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        adapter_count = d.pop("adapter_count")

        coupling_count = d.pop("coupling_count")

        elbow_count = d.pop("elbow_count")

        elbow_length = Length.from_dict(d.pop("elbow_length"))

        end_bell_count = d.pop("end_bell_count")

        joint_count = d.pop("joint_count")

        method = JoiningMethod(d.pop("method"))

        order_coupling_count = d.pop("order_coupling_count")

        order_stick_count = d.pop("order_stick_count")

        plug_count = d.pop("plug_count")

        pull_cord_length = Length.from_dict(d.pop("pull_cord_length"))

        stick_count = d.pop("stick_count")

        straight_length = Length.from_dict(d.pop("straight_length"))

        cement_quart_count = d.pop("cement_quart_count", UNSET)

        _cement_volume = d.pop("cement_volume", UNSET)
        cement_volume: Volume | Unset
        if isinstance(_cement_volume, Unset):
            cement_volume = UNSET
        else:
            cement_volume = Volume.from_dict(_cement_volume)

        _mandrel_diameter = d.pop("mandrel_diameter", UNSET)
        mandrel_diameter: Length | Unset
        if isinstance(_mandrel_diameter, Unset):
            mandrel_diameter = UNSET
        else:
            mandrel_diameter = Length.from_dict(_mandrel_diameter)

        _set_time = d.pop("set_time", UNSET)
        set_time: Duration | Unset
        if isinstance(_set_time, Unset):
            set_time = UNSET
        else:
            set_time = Duration.from_dict(_set_time)

        joints_result = cls(
            adapter_count=adapter_count,
            coupling_count=coupling_count,
            elbow_count=elbow_count,
            elbow_length=elbow_length,
            end_bell_count=end_bell_count,
            joint_count=joint_count,
            method=method,
            order_coupling_count=order_coupling_count,
            order_stick_count=order_stick_count,
            plug_count=plug_count,
            pull_cord_length=pull_cord_length,
            stick_count=stick_count,
            straight_length=straight_length,
            cement_quart_count=cement_quart_count,
            cement_volume=cement_volume,
            mandrel_diameter=mandrel_diameter,
            set_time=set_time,
        )

        joints_result.additional_properties = d
        return joints_result

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
