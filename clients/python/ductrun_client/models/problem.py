from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.problem_error import ProblemError


T = TypeVar("T", bound="Problem")


@_attrs_define
class Problem:
    """Problem details by RFC 9457.

    Attributes:
        detail (str): What happened to this request.
        request_id (str): Id of the request, also in X-Request-ID.
        status (int): HTTP status.
        title (str): What kind of problem it is.
        type_ (str): URI of the page that explains this kind of problem.
        errors (list[ProblemError] | Unset): Every fault found.
    """

    detail: str
    request_id: str
    status: int
    title: str
    type_: str
    errors: list[ProblemError] | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        detail = self.detail

        request_id = self.request_id

        status = self.status

        title = self.title

        type_ = self.type_

        errors: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.errors, Unset):
            errors = []
            for errors_item_data in self.errors:
                errors_item = errors_item_data.to_dict()
                errors.append(errors_item)

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "detail": detail,
                "request_id": request_id,
                "status": status,
                "title": title,
                "type": type_,
            }
        )
        if errors is not UNSET:
            field_dict["errors"] = errors

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.problem_error import ProblemError  # noqa: PLC0415

        d = dict(src_dict)
        detail = d.pop("detail")

        request_id = d.pop("request_id")

        status = d.pop("status")

        title = d.pop("title")

        type_ = d.pop("type")

        _errors = d.pop("errors", UNSET)
        errors: list[ProblemError] | Unset = UNSET
        if _errors is not UNSET:
            errors = []
            for errors_item_data in _errors:
                errors_item = ProblemError.from_dict(errors_item_data)

                errors.append(errors_item)

        problem = cls(
            detail=detail,
            request_id=request_id,
            status=status,
            title=title,
            type_=type_,
            errors=errors,
        )

        problem.additional_properties = d
        return problem

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
