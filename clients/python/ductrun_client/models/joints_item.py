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
    from ..models.joints_request import JointsRequest


T = TypeVar("T", bound="JointsItem")


@_attrs_define
class JointsItem:
    """A question of joints.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['joints']):
        request (JointsRequest): Ducts along a run.
    """

    id: str
    operation: Literal["joints"]
    request: JointsRequest

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
        from ..models.joints_request import JointsRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["joints"], d.pop("operation"))
        if operation != "joints":
            raise ValueError(f"operation must match const 'joints', got '{operation}'")

        request = JointsRequest.from_dict(d.pop("request"))

        joints_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return joints_item
