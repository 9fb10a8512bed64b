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
    from ..models.duct_run_request import DuctRunRequest


T = TypeVar("T", bound="DuctRunItem")


@_attrs_define
class DuctRunItem:
    """A question of duct_run.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['duct_run']):
        request (DuctRunRequest): A run from end to end.
    """

    id: str
    operation: Literal["duct_run"]
    request: DuctRunRequest

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
        from ..models.duct_run_request import DuctRunRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["duct_run"], d.pop("operation"))
        if operation != "duct_run":
            raise ValueError(f"operation must match const 'duct_run', got '{operation}'")

        request = DuctRunRequest.from_dict(d.pop("request"))

        duct_run_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return duct_run_item
