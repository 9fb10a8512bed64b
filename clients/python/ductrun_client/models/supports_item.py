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
    from ..models.supports_request import SupportsRequest


T = TypeVar("T", bound="SupportsItem")


@_attrs_define
class SupportsItem:
    """A question of supports.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['supports']):
        request (SupportsRequest): A straight run above ground.
    """

    id: str
    operation: Literal["supports"]
    request: SupportsRequest

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
        from ..models.supports_request import SupportsRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["supports"], d.pop("operation"))
        if operation != "supports":
            raise ValueError(f"operation must match const 'supports', got '{operation}'")

        request = SupportsRequest.from_dict(d.pop("request"))

        supports_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return supports_item
