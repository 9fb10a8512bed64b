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
    from ..models.pull_tension_request import PullTensionRequest


T = TypeVar("T", bound="PullTensionItem")


@_attrs_define
class PullTensionItem:
    """A question of pull_tension.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['pull_tension']):
        request (PullTensionRequest): Cables, conduit, and the route in the order of the pull; and what to find beside
            the tension.
    """

    id: str
    operation: Literal["pull_tension"]
    request: PullTensionRequest

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
        from ..models.pull_tension_request import PullTensionRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["pull_tension"], d.pop("operation"))
        if operation != "pull_tension":
            raise ValueError(f"operation must match const 'pull_tension', got '{operation}'")

        request = PullTensionRequest.from_dict(d.pop("request"))

        pull_tension_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return pull_tension_item
