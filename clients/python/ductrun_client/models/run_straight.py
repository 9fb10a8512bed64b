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

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.grade import Grade
    from ..models.length import Length


T = TypeVar("T", bound="RunStraight")


@_attrs_define
class RunStraight:
    """A straight; in plan where a profile gives the heights, else along the conduit.

    Attributes:
        kind (Literal['straight']): Fixed text that says: a straight section.
        length (Length): A length with its unit.
        grade (Grade | Unset): A grade with its unit; positive climbs in the direction of travel.
    """

    kind: Literal["straight"]
    length: Length
    grade: Grade | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        length = self.length.to_dict()

        grade: dict[str, Any] | Unset = UNSET
        if not isinstance(self.grade, Unset):
            grade = self.grade.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "length": length,
            }
        )
        if grade is not UNSET:
            field_dict["grade"] = grade

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.grade import Grade  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["straight"], d.pop("kind"))
        if kind != "straight":
            raise ValueError(f"kind must match const 'straight', got '{kind}'")

        length = Length.from_dict(d.pop("length"))

        _grade = d.pop("grade", UNSET)
        grade: Grade | Unset
        if isinstance(_grade, Unset):
            grade = UNSET
        else:
            grade = Grade.from_dict(_grade)

        run_straight = cls(
            kind=kind,
            length=length,
            grade=grade,
        )

        return run_straight
