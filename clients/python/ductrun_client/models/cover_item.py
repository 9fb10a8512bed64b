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
    from ..models.cover_request import CoverRequest


T = TypeVar("T", bound="CoverItem")


@_attrs_define
class CoverItem:
    """A question of cover.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['cover']):
        request (CoverRequest): What is buried, and where.
    """

    id: str
    operation: Literal["cover"]
    request: CoverRequest

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
        from ..models.cover_request import CoverRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["cover"], d.pop("operation"))
        if operation != "cover":
            raise ValueError(f"operation must match const 'cover', got '{operation}'")

        request = CoverRequest.from_dict(d.pop("request"))

        cover_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return cover_item
