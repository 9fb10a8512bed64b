from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_type import ConduitType
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.fill_result import FillResult


T = TypeVar("T", bound="CircuitFill")


@_attrs_define
class CircuitFill:
    """A circuit in one conduit of its way.

    Attributes:
        fill (FillResult): How full the conduit is, and against which limit.
        places (list[str]): The stretches and risers where it lies in such conduit.
        conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        trade_size (TradeSize | Unset): Trade sizes of conduit; a name, not a dimension.
    """

    fill: FillResult
    places: list[str]
    conduit_type: ConduitType | Unset = UNSET
    trade_size: TradeSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        fill = self.fill.to_dict()

        places = self.places

        conduit_type: str | Unset = UNSET
        if not isinstance(self.conduit_type, Unset):
            conduit_type = self.conduit_type.value

        trade_size: str | Unset = UNSET
        if not isinstance(self.trade_size, Unset):
            trade_size = self.trade_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "fill": fill,
                "places": places,
            }
        )
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if trade_size is not UNSET:
            field_dict["trade_size"] = trade_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.fill_result import FillResult  # noqa: PLC0415

        d = dict(src_dict)
        fill = FillResult.from_dict(d.pop("fill"))

        places = cast(list[str], d.pop("places"))

        _conduit_type = d.pop("conduit_type", UNSET)
        conduit_type: ConduitType | Unset
        if isinstance(_conduit_type, Unset):
            conduit_type = UNSET
        else:
            conduit_type = ConduitType(_conduit_type)

        _trade_size = d.pop("trade_size", UNSET)
        trade_size: TradeSize | Unset
        if isinstance(_trade_size, Unset):
            trade_size = UNSET
        else:
            trade_size = TradeSize(_trade_size)

        circuit_fill = cls(
            fill=fill,
            places=places,
            conduit_type=conduit_type,
            trade_size=trade_size,
        )

        circuit_fill.additional_properties = d
        return circuit_fill

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
