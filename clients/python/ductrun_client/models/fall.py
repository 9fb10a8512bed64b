from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.drains_to import DrainsTo
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.grade import Grade


T = TypeVar("T", bound="Fall")


@_attrs_define
class Fall:
    """The fall of ducts that drain, below level ground.

    Attributes:
        grade (Grade): A grade with its unit; positive climbs in the direction of travel.
        drains_to (DrainsTo | Unset): Where ducts that fall drain to.
    """

    grade: Grade
    drains_to: DrainsTo | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        grade = self.grade.to_dict()

        drains_to: str | Unset = UNSET
        if not isinstance(self.drains_to, Unset):
            drains_to = self.drains_to.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "grade": grade,
            }
        )
        if drains_to is not UNSET:
            field_dict["drains_to"] = drains_to

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.grade import Grade  # noqa: PLC0415

        d = dict(src_dict)
        grade = Grade.from_dict(d.pop("grade"))

        _drains_to = d.pop("drains_to", UNSET)
        drains_to: DrainsTo | Unset
        if isinstance(_drains_to, Unset):
            drains_to = UNSET
        else:
            drains_to = DrainsTo(_drains_to)

        fall = cls(
            grade=grade,
            drains_to=drains_to,
        )

        return fall
