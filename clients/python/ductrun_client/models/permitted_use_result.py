from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.judged_use import JudgedUse


T = TypeVar("T", bound="PermittedUseResult")


@_attrs_define
class PermittedUseResult:
    """Whether the conduit may be used so.

    Attributes:
        uses (list[JudgedUse]): Each use, in the order asked.
    """

    uses: list[JudgedUse]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        uses = []
        for uses_item_data in self.uses:
            uses_item = uses_item_data.to_dict()
            uses.append(uses_item)

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "uses": uses,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.judged_use import JudgedUse  # noqa: PLC0415

        d = dict(src_dict)
        uses = []
        _uses = d.pop("uses")
        for uses_item_data in _uses:
            uses_item = JudgedUse.from_dict(uses_item_data)

            uses.append(uses_item)

        permitted_use_result = cls(
            uses=uses,
        )

        permitted_use_result.additional_properties = d
        return permitted_use_result

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
