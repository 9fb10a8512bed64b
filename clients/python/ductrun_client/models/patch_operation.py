from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.patch_op import PatchOp

if TYPE_CHECKING:
    from ..models.patch_operation_value import PatchOperationValue


T = TypeVar("T", bound="PatchOperation")


@_attrs_define
class PatchOperation:
    """One operation of a JSON Patch (RFC 6902) on the request; what it sets is always an object.

    Attributes:
        op (PatchOp): Operations of JSON Patch that suggestions use.
        path (str): JSON pointer of the member that is set, or of the item that is put in.
        value (PatchOperationValue): The object that is set there, as a request has it.
    """

    op: PatchOp
    path: str
    value: PatchOperationValue
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        op = self.op.value

        path = self.path

        value = self.value.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "op": op,
                "path": path,
                "value": value,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.patch_operation_value import PatchOperationValue  # noqa: PLC0415

        d = dict(src_dict)
        op = PatchOp(d.pop("op"))

        path = d.pop("path")

        value = PatchOperationValue.from_dict(d.pop("value"))

        patch_operation = cls(
            op=op,
            path=path,
            value=value,
        )

        patch_operation.additional_properties = d
        return patch_operation

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
