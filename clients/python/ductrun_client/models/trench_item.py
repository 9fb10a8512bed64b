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
    from ..models.trench_request import TrenchRequest


T = TypeVar("T", bound="TrenchItem")


@_attrs_define
class TrenchItem:
    """A question of trench.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['trench']):
        request (TrenchRequest): A bank in its trench.
    """

    id: str
    operation: Literal["trench"]
    request: TrenchRequest

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
        from ..models.trench_request import TrenchRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["trench"], d.pop("operation"))
        if operation != "trench":
            raise ValueError(f"operation must match const 'trench', got '{operation}'")

        request = TrenchRequest.from_dict(d.pop("request"))

        trench_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return trench_item
