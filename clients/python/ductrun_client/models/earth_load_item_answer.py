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
    from ..models.earth_load_answer import EarthLoadAnswer


T = TypeVar("T", bound="EarthLoadItemAnswer")


@_attrs_define
class EarthLoadItemAnswer:
    """An answer of earth_load.

    Attributes:
        answer (EarthLoadAnswer): The answer of earth-load with everything that defends it.
        id (str): Id of the question.
        operation (Literal['earth_load']):
        status (int): HTTP status the question would have had by itself.
        type_ (Literal['answer']):
    """

    answer: EarthLoadAnswer
    id: str
    operation: Literal["earth_load"]
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
        from ..models.earth_load_answer import EarthLoadAnswer  # noqa: PLC0415

        d = dict(src_dict)
        answer = EarthLoadAnswer.from_dict(d.pop("answer"))

        id = d.pop("id")

        operation = cast(Literal["earth_load"], d.pop("operation"))
        if operation != "earth_load":
            raise ValueError(f"operation must match const 'earth_load', got '{operation}'")

        status = d.pop("status")

        type_ = cast(Literal["answer"], d.pop("type"))
        if type_ != "answer":
            raise ValueError(f"type must match const 'answer', got '{type_}'")

        earth_load_item_answer = cls(
            answer=answer,
            id=id,
            operation=operation,
            status=status,
            type_=type_,
        )

        earth_load_item_answer.additional_properties = d
        return earth_load_item_answer

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
