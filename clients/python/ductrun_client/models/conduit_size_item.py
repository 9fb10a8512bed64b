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

if TYPE_CHECKING:
    from ..models.conduit_size_request import ConduitSizeRequest


T = TypeVar("T", bound="ConduitSizeItem")


@_attrs_define
class ConduitSizeItem:
    """A question of conduit_size.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['conduit_size']):
        request (ConduitSizeRequest): What goes into a conduit whose size is asked for.
    """

    id: str
    operation: Literal["conduit_size"]
    request: ConduitSizeRequest

    def to_dict(self) -> dict[str, Any]:
        id = self.id

        operation = self.operation

        request = self.request.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "id": id,
                "operation": operation,
                "request": request,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conduit_size_request import ConduitSizeRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["conduit_size"], d.pop("operation"))
        if operation != "conduit_size":
            raise ValueError(f"operation must match const 'conduit_size', got '{operation}'")

        request = ConduitSizeRequest.from_dict(d.pop("request"))

        conduit_size_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return conduit_size_item
