from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.conduit_type import ConduitType
from ..models.trade_size import TradeSize

T = TypeVar("T", bound="ListedConduit")


@_attrs_define
class ListedConduit:
    """A conduit or duct by its type and trade size; its diameters come from the tables.

    Attributes:
        kind (Literal['listed']): Fixed text that says: by type and trade size.
        trade_size (TradeSize): Trade sizes of conduit; a name, not a dimension.
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on
            file.
    """

    kind: Literal["listed"]
    trade_size: TradeSize
    type_: ConduitType

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        trade_size = self.trade_size.value

        type_ = self.type_.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "trade_size": trade_size,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        kind = cast(Literal["listed"], d.pop("kind"))
        if kind != "listed":
            raise ValueError(f"kind must match const 'listed', got '{kind}'")

        trade_size = TradeSize(d.pop("trade_size"))

        type_ = ConduitType(d.pop("type"))

        listed_conduit = cls(
            kind=kind,
            trade_size=trade_size,
            type_=type_,
        )

        return listed_conduit
