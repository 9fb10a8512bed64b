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
    from ..models.earth_load_request import EarthLoadRequest


T = TypeVar("T", bound="EarthLoadItem")


@_attrs_define
class EarthLoadItem:
    """A question of earth_load.

    Attributes:
        id (str): Any text of the caller's, given back with the answer.
        operation (Literal['earth_load']):
        request (EarthLoadRequest): Ducts in the ground, and what lies and passes over them.
    """

    id: str
    operation: Literal["earth_load"]
    request: EarthLoadRequest

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
        from ..models.earth_load_request import EarthLoadRequest  # noqa: PLC0415

        d = dict(src_dict)
        id = d.pop("id")

        operation = cast(Literal["earth_load"], d.pop("operation"))
        if operation != "earth_load":
            raise ValueError(f"operation must match const 'earth_load', got '{operation}'")

        request = EarthLoadRequest.from_dict(d.pop("request"))

        earth_load_item = cls(
            id=id,
            operation=operation,
            request=request,
        )

        return earth_load_item
