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
    from ..models.duct_run_comparison_request import DuctRunComparisonRequest


T = TypeVar("T", bound="DuctRunComparisonItem")


@_attrs_define
class DuctRunComparisonItem:
    """A question of duct_run_compare.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['duct_run_compare']):
        request (DuctRunComparisonRequest): Whole runs to compare with the first of them.
    """

    id: str
    operation: Literal["duct_run_compare"]
    request: DuctRunComparisonRequest

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
        from ..models.duct_run_comparison_request import DuctRunComparisonRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["duct_run_compare"], d.pop("operation"))
        if operation != "duct_run_compare":
            raise ValueError(f"operation must match const 'duct_run_compare', got '{operation}'")

        request = DuctRunComparisonRequest.from_dict(d.pop("request"))

        duct_run_comparison_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return duct_run_comparison_item
