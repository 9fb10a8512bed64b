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
from attrs import field as _attrs_field

from ..models.operation_name import OperationName
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.problem import Problem


T = TypeVar("T", bound="ItemProblem")


@_attrs_define
class ItemProblem:
    """A question of a batch that has no answer.

    Attributes:
        problem (Problem): Problem details by RFC 9457.
        status (int): HTTP status the question would have had by itself.
        type_ (Literal['problem']):
        id (str | Unset): Id of the question; left out if it had none that could be read.
        operation (OperationName | Unset): The calculations an item may ask for.
    """

    problem: Problem
    status: int
    type_: Literal["problem"]
    id: str | Unset = UNSET
    operation: OperationName | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        problem = self.problem.to_dict()

        status = self.status

        type_ = self.type_

        id = self.id

        operation: str | Unset = UNSET
        if not isinstance(self.operation, Unset):
            operation = self.operation.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "problem": problem,
                "status": status,
                "type": type_,
            }
        )
        if id is not UNSET:
            field_dict["id"] = id
        if operation is not UNSET:
            field_dict["operation"] = operation

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.problem import Problem  # noqa: PLC0415

        d = dict(src_dict)
        problem = Problem.from_dict(d.pop("problem"))

        status = d.pop("status")

        type_ = cast(Literal["problem"], d.pop("type"))
        if type_ != "problem":
            raise ValueError(f"type must match const 'problem', got '{type_}'")

        id = d.pop("id", UNSET)

        _operation = d.pop("operation", UNSET)
        operation: OperationName | Unset
        if isinstance(_operation, Unset):
            operation = UNSET
        else:
            operation = OperationName(_operation)

        item_problem = cls(
            problem=problem,
            status=status,
            type_=type_,
            id=id,
            operation=operation,
        )

        item_problem.additional_properties = d
        return item_problem

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
