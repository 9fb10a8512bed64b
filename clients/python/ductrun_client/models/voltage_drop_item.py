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
    from ..models.voltage_drop_request import VoltageDropRequest


T = TypeVar("T", bound="VoltageDropItem")


@_attrs_define
class VoltageDropItem:
    """A question of voltage_drop.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['voltage_drop']):
        request (VoltageDropRequest): A circuit and its length.
    """

    id: str
    operation: Literal["voltage_drop"]
    request: VoltageDropRequest

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
        from ..models.voltage_drop_request import VoltageDropRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["voltage_drop"], d.pop("operation"))
        if operation != "voltage_drop":
            raise ValueError(f"operation must match const 'voltage_drop', got '{operation}'")

        request = VoltageDropRequest.from_dict(d.pop("request"))

        voltage_drop_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return voltage_drop_item
