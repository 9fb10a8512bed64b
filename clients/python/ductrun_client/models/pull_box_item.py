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
    from ..models.pull_box_request import PullBoxRequest


T = TypeVar("T", bound="PullBoxItem")


@_attrs_define
class PullBoxItem:
    """A question of pull_box.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['pull_box']):
        request (PullBoxRequest): What enters a box.
    """

    id: str
    operation: Literal["pull_box"]
    request: PullBoxRequest

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
        from ..models.pull_box_request import PullBoxRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["pull_box"], d.pop("operation"))
        if operation != "pull_box":
            raise ValueError(f"operation must match const 'pull_box', got '{operation}'")

        request = PullBoxRequest.from_dict(d.pop("request"))

        pull_box_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return pull_box_item
