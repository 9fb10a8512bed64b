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
    from ..models.conductor_count_request import ConductorCountRequest


T = TypeVar("T", bound="ConductorCountItem")


@_attrs_define
class ConductorCountItem:
    """A question of conductor_count.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['conductor_count']):
        request (ConductorCountRequest): One cable, and the conduit to be filled with it.
    """

    id: str
    operation: Literal["conductor_count"]
    request: ConductorCountRequest

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
        from ..models.conductor_count_request import ConductorCountRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["conductor_count"], d.pop("operation"))
        if operation != "conductor_count":
            raise ValueError(f"operation must match const 'conductor_count', got '{operation}'")

        request = ConductorCountRequest.from_dict(d.pop("request"))

        conductor_count_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return conductor_count_item
