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
    from ..models.pull_plan_request import PullPlanRequest


T = TypeVar("T", bound="PullPlanItem")


@_attrs_define
class PullPlanItem:
    """A question of pull_plan.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['pull_plan']):
        request (PullPlanRequest): Cables, conduit, the whole route, and where pull points may stand.
    """

    id: str
    operation: Literal["pull_plan"]
    request: PullPlanRequest

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
        from ..models.pull_plan_request import PullPlanRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["pull_plan"], d.pop("operation"))
        if operation != "pull_plan":
            raise ValueError(f"operation must match const 'pull_plan', got '{operation}'")

        request = PullPlanRequest.from_dict(d.pop("request"))

        pull_plan_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return pull_plan_item
