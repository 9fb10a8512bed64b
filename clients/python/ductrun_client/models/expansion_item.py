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
    from ..models.expansion_request import ExpansionRequest


T = TypeVar("T", bound="ExpansionItem")


@_attrs_define
class ExpansionItem:
    """A question of expansion.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['expansion']):
        request (ExpansionRequest): Straight runs between securely mounted items, and the temperatures they see.
    """

    id: str
    operation: Literal["expansion"]
    request: ExpansionRequest

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
        from ..models.expansion_request import ExpansionRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["expansion"], d.pop("operation"))
        if operation != "expansion":
            raise ValueError(f"operation must match const 'expansion', got '{operation}'")

        request = ExpansionRequest.from_dict(d.pop("request"))

        expansion_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return expansion_item
