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
    from ..models.ampacity_answer import AmpacityAnswer


T = TypeVar("T", bound="AmpacityItemAnswer")


@_attrs_define
class AmpacityItemAnswer:
    """An answer of ampacity.

    Attributes:
        answer (AmpacityAnswer): The answer of ampacity with everything that defends it.
        id (str): Id of the question.
        operation (Literal['ampacity']):
        status (int): HTTP status the question would have had by itself.
        type_ (Literal['answer']):
    """

    answer: AmpacityAnswer
    id: str
    operation: Literal["ampacity"]
    status: int
    type_: Literal["answer"]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        answer = self.answer.to_dict()

        id = self.id

        operation = self.operation

        status = self.status

        type_ = self.type_

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "answer": answer,
                "id": id,
                "operation": operation,
                "status": status,
                "type": type_,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.ampacity_answer import AmpacityAnswer  # noqa: PLC0415

        d = dict(src_dict)
        answer = AmpacityAnswer.from_dict(d.pop("answer"))

        id = d.pop("id")

        operation = cast(Literal["ampacity"], d.pop("operation"))
        if operation != "ampacity":
            raise ValueError(f"operation must match const 'ampacity', got '{operation}'")

        status = d.pop("status")

        type_ = cast(Literal["answer"], d.pop("type"))
        if type_ != "answer":
            raise ValueError(f"type must match const 'answer', got '{type_}'")

        ampacity_item_answer = cls(
            answer=answer,
            id=id,
            operation=operation,
            status=status,
            type_=type_,
        )

        ampacity_item_answer.additional_properties = d
        return ampacity_item_answer

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
