from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.batch_item import BatchItem


T = TypeVar("T", bound="BatchRequest")


@_attrs_define
class BatchRequest:
    """Questions to answer in one go.

    Attributes:
        items (list[BatchItem]): The questions, of any calculations in any order.
    """

    items: list[BatchItem]

    def to_dict(self) -> dict[str, Any]:
        items = []
        for items_item_data in self.items:
            items_item = items_item_data.to_dict()
            items.append(items_item)

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "items": items,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.batch_item import BatchItem  # noqa: PLC0415

        d = dict(src_dict)
        items = []
        _items = d.pop("items")
        for items_item_data in _items:
            items_item = BatchItem.from_dict(items_item_data)

            items.append(items_item)

        batch_request = cls(
            items=items,
        )

        return batch_request
