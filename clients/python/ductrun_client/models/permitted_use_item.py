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
    from ..models.permitted_use_request import PermittedUseRequest


T = TypeVar("T", bound="PermittedUseItem")


@_attrs_define
class PermittedUseItem:
    """A question of permitted_use.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['permitted_use']):
        request (PermittedUseRequest): A conduit and everything it meets.
    """

    id: str
    operation: Literal["permitted_use"]
    request: PermittedUseRequest

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
        from ..models.permitted_use_request import PermittedUseRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["permitted_use"], d.pop("operation"))
        if operation != "permitted_use":
            raise ValueError(f"operation must match const 'permitted_use', got '{operation}'")

        request = PermittedUseRequest.from_dict(d.pop("request"))

        permitted_use_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return permitted_use_item
