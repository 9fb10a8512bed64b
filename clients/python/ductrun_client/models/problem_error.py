from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

T = TypeVar("T", bound="ProblemError")


@_attrs_define
class ProblemError:
    """One fault of a request.

    Attributes:
        code (str): Stable code of the fault.
        message (str): What is wrong and what to do next.
        allowed (Any | Unset): What is allowed: a list of values, or bounds.
        parameter (str | Unset): Name of the query parameter.
        pointer (str | Unset): JSON Pointer of the field, as a URI fragment.
    """

    code: str
    message: str
    allowed: Any | Unset = UNSET
    parameter: str | Unset = UNSET
    pointer: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        code = self.code

        message = self.message

        allowed = self.allowed

        parameter = self.parameter

        pointer = self.pointer

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code": code,
                "message": message,
            }
        )
        if allowed is not UNSET:
            field_dict["allowed"] = allowed
        if parameter is not UNSET:
            field_dict["parameter"] = parameter
        if pointer is not UNSET:
            field_dict["pointer"] = pointer

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        code = d.pop("code")

        message = d.pop("message")

        allowed = d.pop("allowed", UNSET)

        parameter = d.pop("parameter", UNSET)

        pointer = d.pop("pointer", UNSET)

        problem_error = cls(
            code=code,
            message=message,
            allowed=allowed,
            parameter=parameter,
            pointer=pointer,
        )

        problem_error.additional_properties = d
        return problem_error

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
