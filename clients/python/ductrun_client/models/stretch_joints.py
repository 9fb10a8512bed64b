from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_type import ConduitType
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.joints_result import JointsResult
    from ..models.length import Length


T = TypeVar("T", bound="StretchJoints")


@_attrs_define
class StretchJoints:
    """Ducts of one conduit in a stretch, or in a riser of it.

    Attributes:
        duct_count (int):
        length (Length): A length with its unit.
        conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        joints (JointsResult | Unset): What to order and how long to wait.
        riser (str | Unset): Where it comes up, if it is a riser.
        stick_length (Length | Unset): A length with its unit.
        trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
    """

    duct_count: int
    length: Length
    conduit_type: ConduitType | Unset = UNSET
    joints: JointsResult | Unset = UNSET
    riser: str | Unset = UNSET
    stick_length: Length | Unset = UNSET
    trade_size: TradeSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        duct_count = self.duct_count

        length = self.length.to_dict()

        conduit_type: str | Unset = UNSET
        if not isinstance(self.conduit_type, Unset):
            conduit_type = self.conduit_type.value

        joints: dict[str, Any] | Unset = UNSET
        if not isinstance(self.joints, Unset):
            joints = self.joints.to_dict()

        riser = self.riser

        stick_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.stick_length, Unset):
            stick_length = self.stick_length.to_dict()

        trade_size: str | Unset = UNSET
        if not isinstance(self.trade_size, Unset):
            trade_size = self.trade_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "duct_count": duct_count,
                "length": length,
            }
        )
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if joints is not UNSET:
            field_dict["joints"] = joints
        if riser is not UNSET:
            field_dict["riser"] = riser
        if stick_length is not UNSET:
            field_dict["stick_length"] = stick_length
        if trade_size is not UNSET:
            field_dict["trade_size"] = trade_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.joints_result import JointsResult  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        duct_count = d.pop("duct_count")

        length = Length.from_dict(d.pop("length"))

        _conduit_type = d.pop("conduit_type", UNSET)
        conduit_type: ConduitType | Unset
        if isinstance(_conduit_type, Unset):
            conduit_type = UNSET
        else:
            conduit_type = ConduitType(_conduit_type)

        _joints = d.pop("joints", UNSET)
        joints: JointsResult | Unset
        if isinstance(_joints, Unset):
            joints = UNSET
        else:
            joints = JointsResult.from_dict(_joints)

        riser = d.pop("riser", UNSET)

        _stick_length = d.pop("stick_length", UNSET)
        stick_length: Length | Unset
        if isinstance(_stick_length, Unset):
            stick_length = UNSET
        else:
            stick_length = Length.from_dict(_stick_length)

        _trade_size = d.pop("trade_size", UNSET)
        trade_size: TradeSize | Unset
        if isinstance(_trade_size, Unset):
            trade_size = UNSET
        else:
            trade_size = TradeSize(_trade_size)

        stretch_joints = cls(
            duct_count=duct_count,
            length=length,
            conduit_type=conduit_type,
            joints=joints,
            riser=riser,
            stick_length=stick_length,
            trade_size=trade_size,
        )

        stretch_joints.additional_properties = d
        return stretch_joints

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
