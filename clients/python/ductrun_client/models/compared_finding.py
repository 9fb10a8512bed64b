from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.severity import Severity
from ..types import UNSET, Unset

T = TypeVar("T", bound="ComparedFinding")


@_attrs_define
class ComparedFinding:
    """A finding that one of two runs has, by its pointer in that run.

    Attributes:
        code (str): What was found, in one stable word for programs.
        message (str): The sentence for people.
        severity (Severity): Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note.
        pointer (str | Unset): JSON pointer of the member it is about.
    """

    code: str
    message: str
    severity: Severity
    pointer: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        code = self.code

        message = self.message

        severity = self.severity.value

        pointer = self.pointer

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code": code,
                "message": message,
                "severity": severity,
            }
        )
        if pointer is not UNSET:
            field_dict["pointer"] = pointer

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        code = d.pop("code")

        message = d.pop("message")

        severity = Severity(d.pop("severity"))

        pointer = d.pop("pointer", UNSET)

        compared_finding = cls(
            code=code,
            message=message,
            severity=severity,
            pointer=pointer,
        )

        compared_finding.additional_properties = d
        return compared_finding

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
