from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.problem import Problem
    from ..models.stream_item_answer_answer import StreamItemAnswerAnswer


T = TypeVar("T", bound="StreamItemAnswer")


@_attrs_define
class StreamItemAnswer:
    """What became of one line of a stream.

    Attributes:
        line (int): Number of the line, from 1, blank lines counted.
        status (int): HTTP status the question would have had by itself.
        answer (StreamItemAnswerAnswer | Unset): The answer, if the status is 200: that of the calculation.
        id (str | Unset): Id of the item; left out if it had none that could be read.
        problem (Problem | Unset): Problem details by RFC 9457.
    """

    line: int
    status: int
    answer: StreamItemAnswerAnswer | Unset = UNSET
    id: str | Unset = UNSET
    problem: Problem | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        line = self.line

        status = self.status

        answer: dict[str, Any] | Unset = UNSET
        if not isinstance(self.answer, Unset):
            answer = self.answer.to_dict()

        id = self.id

        problem: dict[str, Any] | Unset = UNSET
        if not isinstance(self.problem, Unset):
            problem = self.problem.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "line": line,
                "status": status,
            }
        )
        if answer is not UNSET:
            field_dict["answer"] = answer
        if id is not UNSET:
            field_dict["id"] = id
        if problem is not UNSET:
            field_dict["problem"] = problem

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.problem import Problem  # noqa: PLC0415
        from ..models.stream_item_answer_answer import StreamItemAnswerAnswer  # noqa: PLC0415

        d = dict(src_dict)
        line = d.pop("line")

        status = d.pop("status")

        _answer = d.pop("answer", UNSET)
        answer: StreamItemAnswerAnswer | Unset
        if isinstance(_answer, Unset):
            answer = UNSET
        else:
            answer = StreamItemAnswerAnswer.from_dict(_answer)

        id = d.pop("id", UNSET)

        _problem = d.pop("problem", UNSET)
        problem: Problem | Unset
        if isinstance(_problem, Unset):
            problem = UNSET
        else:
            problem = Problem.from_dict(_problem)

        stream_item_answer = cls(
            line=line,
            status=status,
            answer=answer,
            id=id,
            problem=problem,
        )

        stream_item_answer.additional_properties = d
        return stream_item_answer

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
