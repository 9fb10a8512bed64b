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
    from ..models.flotation_request import FlotationRequest


T = TypeVar("T", bound="FlotationItem")


@_attrs_define
class FlotationItem:
    """A question of flotation.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['flotation']):
        request (FlotationRequest): A bank in a fluid.
    """

    id: str
    operation: Literal["flotation"]
    request: FlotationRequest

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
        from ..models.flotation_request import FlotationRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["flotation"], d.pop("operation"))
        if operation != "flotation":
            raise ValueError(f"operation must match const 'flotation', got '{operation}'")

        request = FlotationRequest.from_dict(d.pop("request"))

        flotation_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return flotation_item
