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
    from ..models.ampacity_request import AmpacityRequest


T = TypeVar("T", bound="AmpacityItem")


@_attrs_define
class AmpacityItem:
    """A question of ampacity.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['ampacity']):
        request (AmpacityRequest): A bank in the earth, and the circuits in its ducts.
    """

    id: str
    operation: Literal["ampacity"]
    request: AmpacityRequest

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
        from ..models.ampacity_request import AmpacityRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["ampacity"], d.pop("operation"))
        if operation != "ampacity":
            raise ValueError(f"operation must match const 'ampacity', got '{operation}'")

        request = AmpacityRequest.from_dict(d.pop("request"))

        ampacity_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return ampacity_item
