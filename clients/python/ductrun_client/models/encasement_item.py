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
    from ..models.encasement_request import EncasementRequest


T = TypeVar("T", bound="EncasementItem")


@_attrs_define
class EncasementItem:
    """A question of encasement.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['encasement']):
        request (EncasementRequest): A length of duct bank in concrete.
    """

    id: str
    operation: Literal["encasement"]
    request: EncasementRequest

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
        from ..models.encasement_request import EncasementRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["encasement"], d.pop("operation"))
        if operation != "encasement":
            raise ValueError(f"operation must match const 'encasement', got '{operation}'")

        request = EncasementRequest.from_dict(d.pop("request"))

        encasement_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return encasement_item
