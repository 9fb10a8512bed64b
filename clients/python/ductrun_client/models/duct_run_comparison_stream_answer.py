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

if TYPE_CHECKING:
    from ..models.duct_run_comparison_answer import DuctRunComparisonAnswer


T = TypeVar("T", bound="DuctRunComparisonStreamAnswer")


@_attrs_define
class DuctRunComparisonStreamAnswer:
    """An answer of duct_run_compare.

    Attributes:
        answer (DuctRunComparisonAnswer): The answer of duct-run/compare with everything that defends it.
        id (str): Id of the question.
        line (int): Number of the line, from 1, blank lines counted.
        operation (Literal['duct_run_compare']):
        status (int): HTTP status the question would have had by itself.
        type_ (Literal['answer']):
    """

    answer: DuctRunComparisonAnswer
    id: str
    line: int
    operation: Literal["duct_run_compare"]
    status: int
    type_: Literal["answer"]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        answer = self.answer.to_dict()

        id = self.id

        line = self.line

        operation = self.operation

        status = self.status

        type_ = self.type_

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "answer": answer,
                "id": id,
                "line": line,
                "operation": operation,
                "status": status,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.duct_run_comparison_answer import DuctRunComparisonAnswer  # noqa: PLC0415

        d = dict(src_dict)
        answer = DuctRunComparisonAnswer.from_dict(d.pop("answer"))

        id = d.pop("id")

        line = d.pop("line")

        operation = cast(Literal["duct_run_compare"], d.pop("operation"))
        if operation != "duct_run_compare":
            raise ValueError(f"operation must match const 'duct_run_compare', got '{operation}'")

        status = d.pop("status")

        type_ = cast(Literal["answer"], d.pop("type"))
        if type_ != "answer":
            raise ValueError(f"type must match const 'answer', got '{type_}'")

        duct_run_comparison_stream_answer = cls(
            answer=answer,
            id=id,
            line=line,
            operation=operation,
            status=status,
            type_=type_,
        )

        duct_run_comparison_stream_answer.additional_properties = d
        return duct_run_comparison_stream_answer

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
