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
    from ..models.fill_request import FillRequest


T = TypeVar("T", bound="FillItem")


@_attrs_define
class FillItem:
    """A question of fill.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['fill']):
        request (FillRequest): What goes into which conduit.
    """

    id: str
    operation: Literal["fill"]
    request: FillRequest

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
        from ..models.fill_request import FillRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["fill"], d.pop("operation"))
        if operation != "fill":
            raise ValueError(f"operation must match const 'fill', got '{operation}'")

        request = FillRequest.from_dict(d.pop("request"))

        fill_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return fill_item
