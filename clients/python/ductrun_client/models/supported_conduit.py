from __future__ import annotations

from collections.abc import Mapping
from typing import (
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.coupling import Coupling
from ..models.supported_conduit_type import SupportedConduitType
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

T = TypeVar("T", bound="SupportedConduit")


@_attrs_define
class SupportedConduit:
    """A conduit with a rule of support spacing, by type and trade size.

    Attributes:
        kind (Literal['listed']): Fixed text that says: by type and trade size.
        trade_size (TradeSize): Trade sizes of conduit; a name, not a dimension.
        type_ (SupportedConduitType): Conduit with a rule of support spacing on file.
        coupling (Coupling | Unset): How lengths of rigid or intermediate metal conduit are coupled.
    """

    kind: Literal["listed"]
    trade_size: TradeSize
    type_: SupportedConduitType
    coupling: Coupling | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        trade_size = self.trade_size.value

        type_ = self.type_.value

        coupling: str | Unset = UNSET
        if not isinstance(self.coupling, Unset):
            coupling = self.coupling.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "trade_size": trade_size,
                "type": type_,
            }
        )
        if coupling is not UNSET:
            field_dict["coupling"] = coupling

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        kind = cast(Literal["listed"], d.pop("kind"))
        if kind != "listed":
            raise ValueError(f"kind must match const 'listed', got '{kind}'")

        trade_size = TradeSize(d.pop("trade_size"))

        type_ = SupportedConduitType(d.pop("type"))

        _coupling = d.pop("coupling", UNSET)
        coupling: Coupling | Unset
        if isinstance(_coupling, Unset):
            coupling = UNSET
        else:
            coupling = Coupling(_coupling)

        supported_conduit = cls(
            kind=kind,
            trade_size=trade_size,
            type_=type_,
            coupling=coupling,
        )

        return supported_conduit
