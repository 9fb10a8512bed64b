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

from ..models.conduit_type import ConduitType
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="MeasuredConduit")


@_attrs_define
class MeasuredConduit:
    """A conduit or duct by its diameters, for one that no table lists; take them from its maker.

    Attributes:
        inside_diameter (Length): A length with its unit.
        kind (Literal['measured']): Fixed text that says: by diameters.
        outside_diameter (Length | Unset): A length with its unit.
        trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
        type_ (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
    """

    inside_diameter: Length
    kind: Literal["measured"]
    outside_diameter: Length | Unset = UNSET
    trade_size: TradeSize | Unset = UNSET
    type_: ConduitType | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        inside_diameter = self.inside_diameter.to_dict()

        kind = self.kind

        outside_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.outside_diameter, Unset):
            outside_diameter = self.outside_diameter.to_dict()

        trade_size: str | Unset = UNSET
        if not isinstance(self.trade_size, Unset):
            trade_size = self.trade_size.value

        type_: str | Unset = UNSET
        if not isinstance(self.type_, Unset):
            type_ = self.type_.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "inside_diameter": inside_diameter,
                "kind": kind,
            }
        )
        if outside_diameter is not UNSET:
            field_dict["outside_diameter"] = outside_diameter
        if trade_size is not UNSET:
            field_dict["trade_size"] = trade_size
        if type_ is not UNSET:
            field_dict["type"] = type_

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        inside_diameter = Length.from_dict(d.pop("inside_diameter"))

        kind = cast(Literal["measured"], d.pop("kind"))
        if kind != "measured":
            raise ValueError(f"kind must match const 'measured', got '{kind}'")

        _outside_diameter = d.pop("outside_diameter", UNSET)
        outside_diameter: Length | Unset
        if isinstance(_outside_diameter, Unset):
            outside_diameter = UNSET
        else:
            outside_diameter = Length.from_dict(_outside_diameter)

        _trade_size = d.pop("trade_size", UNSET)
        trade_size: TradeSize | Unset
        if isinstance(_trade_size, Unset):
            trade_size = UNSET
        else:
            trade_size = TradeSize(_trade_size)

        _type_ = d.pop("type", UNSET)
        type_: ConduitType | Unset
        if isinstance(_type_, Unset):
            type_ = UNSET
        else:
            type_ = ConduitType(_type_)

        measured_conduit = cls(
            inside_diameter=inside_diameter,
            kind=kind,
            outside_diameter=outside_diameter,
            trade_size=trade_size,
            type_=type_,
        )

        return measured_conduit
