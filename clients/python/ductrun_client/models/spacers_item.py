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
    from ..models.spacers_request import SpacersRequest


T = TypeVar("T", bound="SpacersItem")


@_attrs_define
class SpacersItem:
    """A question of spacers.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['spacers']):
        request (SpacersRequest): One straight run of a duct bank and how its spacers are specified.
    """

    id: str
    operation: Literal["spacers"]
    request: SpacersRequest

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
        from ..models.spacers_request import SpacersRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["spacers"], d.pop("operation"))
        if operation != "spacers":
            raise ValueError(f"operation must match const 'spacers', got '{operation}'")

        request = SpacersRequest.from_dict(d.pop("request"))

        spacers_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return spacers_item
