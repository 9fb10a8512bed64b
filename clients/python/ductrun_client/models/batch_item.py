from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.operation_name import OperationName

if TYPE_CHECKING:
    from ..models.batch_item_request import BatchItemRequest


T = TypeVar("T", bound="BatchItem")


@_attrs_define
class BatchItem:
    """One question of a batch, or one line of a stream.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (OperationName): The calculations an item may ask for.
        request (BatchItemRequest): The body that calculation takes on its own path.
    """

    id: str
    operation: OperationName
    request: BatchItemRequest

    def to_dict(self) -> dict[str, Any]:
        id = self.id

        operation = self.operation.value

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
        from ..models.batch_item_request import BatchItemRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = OperationName(d.pop("operation"))

        request = BatchItemRequest.from_dict(d.pop("request"))

        batch_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return batch_item
