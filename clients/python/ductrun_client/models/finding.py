from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.severity import Severity
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Finding")


@_attrs_define
class Finding:
    """One sentence a foreman understands: what, how much, the limit, the rule; `pointer` is where in the request.

    Attributes:
        code (str):
        message (str):
        severity (Severity): Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note.
        source (str):
        actual (AnyQuantity | float | Unset):
        limit (AnyQuantity | float | Unset):
        pointer (str | Unset):
    """

    code: str
    message: str
    severity: Severity
    source: str
    actual: AnyQuantity | float | Unset = UNSET
    limit: AnyQuantity | float | Unset = UNSET
    pointer: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        code = self.code

        message = self.message

        severity = self.severity.value

        source = self.source

        actual: dict[str, Any] | float | Unset
        if isinstance(self.actual, Unset):
            actual = UNSET
        elif isinstance(self.actual, AnyQuantity):
            actual = self.actual.to_dict()
        else:
            actual = self.actual

        limit: dict[str, Any] | float | Unset
        if isinstance(self.limit, Unset):
            limit = UNSET
        elif isinstance(self.limit, AnyQuantity):
            limit = self.limit.to_dict()
        else:
            limit = self.limit

        pointer = self.pointer

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code": code,
                "message": message,
                "severity": severity,
                "source": source,
            }
        )
        if actual is not UNSET:
            field_dict["actual"] = actual
        if limit is not UNSET:
            field_dict["limit"] = limit
        if pointer is not UNSET:
            field_dict["pointer"] = pointer

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        code = d.pop("code")

        message = d.pop("message")

        severity = Severity(d.pop("severity"))

        source = d.pop("source")

        def _parse_actual(data: object) -> AnyQuantity | float | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                actual_type_1 = AnyQuantity.from_dict(data)

                return actual_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            return cast(AnyQuantity | float | Unset, data)

        actual = _parse_actual(d.pop("actual", UNSET))

        def _parse_limit(data: object) -> AnyQuantity | float | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                limit_type_1 = AnyQuantity.from_dict(data)

                return limit_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            return cast(AnyQuantity | float | Unset, data)

        limit = _parse_limit(d.pop("limit", UNSET))

        pointer = d.pop("pointer", UNSET)

        finding = cls(
            code=code,
            message=message,
            severity=severity,
            source=source,
            actual=actual,
            limit=limit,
            pointer=pointer,
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
