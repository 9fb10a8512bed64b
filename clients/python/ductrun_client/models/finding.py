from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.severity import Severity
from ..models.standing import Standing
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Finding")


@_attrs_define
class Finding:
    """One sentence a foreman understands: what, how much, the limit, what to do; `pointer` is where in the request.

    What the caller gave, and what is worked out, has no source id.

    Attributes:
        citation (str): Where the rule or the limit stands.
        code (str): What was found, in one stable word for programs.
        message (str): The sentence for people.
        severity (Severity): Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        actual (AnyQuantity | Unset): A value with its unit, of whatever dimension the text beside it says.
        limit (AnyQuantity | Unset): A value with its unit, of whatever dimension the text beside it says.
        pointer (str | Unset): JSON pointer of the member it is about.
        source_id (str | Unset): Id of the source in the table of sources.
    """

    citation: str
    code: str
    message: str
    severity: Severity
    standing: Standing
    actual: AnyQuantity | Unset = UNSET
    limit: AnyQuantity | Unset = UNSET
    pointer: str | Unset = UNSET
    source_id: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        citation = self.citation

        code = self.code

        message = self.message

        severity = self.severity.value

        standing = self.standing.value

        actual: dict[str, Any] | Unset = UNSET
        if not isinstance(self.actual, Unset):
            actual = self.actual.to_dict()

        limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.limit, Unset):
            limit = self.limit.to_dict()

        pointer = self.pointer

        source_id = self.source_id

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "citation": citation,
                "code": code,
                "message": message,
                "severity": severity,
                "standing": standing,
            }
        )
        if actual is not UNSET:
            field_dict["actual"] = actual
        if limit is not UNSET:
            field_dict["limit"] = limit
        if pointer is not UNSET:
            field_dict["pointer"] = pointer
        if source_id is not UNSET:
            field_dict["source_id"] = source_id

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        citation = d.pop("citation")

        code = d.pop("code")

        message = d.pop("message")

        severity = Severity(d.pop("severity"))

        standing = Standing(d.pop("standing"))

        _actual = d.pop("actual", UNSET)
        actual: AnyQuantity | Unset
        if isinstance(_actual, Unset):
            actual = UNSET
        else:
            actual = AnyQuantity.from_dict(_actual)

        _limit = d.pop("limit", UNSET)
        limit: AnyQuantity | Unset
        if isinstance(_limit, Unset):
            limit = UNSET
        else:
            limit = AnyQuantity.from_dict(_limit)

        pointer = d.pop("pointer", UNSET)

        source_id = d.pop("source_id", UNSET)

        finding = cls(
            citation=citation,
            code=code,
            message=message,
            severity=severity,
            standing=standing,
            actual=actual,
            limit=limit,
            pointer=pointer,
            source_id=source_id,
        )

        finding.additional_properties = d
        return finding

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
