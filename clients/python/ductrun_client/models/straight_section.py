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
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="StraightSection")


@_attrs_define
class StraightSection:
    """A straight length of conduit.

    Attributes:
        kind (Literal['straight']): Fixed text that says: a straight section.
        length (Length): A length with its unit.
        conduit (ListedConduit | MeasuredConduit | Unset):
        friction_coefficient (float | Unset): Coefficient of friction of this section, where it differs.
        grade (Grade | Unset): A grade with its unit; positive climbs in the direction of travel.
    """

    kind: Literal["straight"]
    length: Length
    conduit: ListedConduit | MeasuredConduit | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    grade: Grade | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        kind = self.kind

        length = self.length.to_dict()

        conduit: dict[str, Any] | Unset
        if isinstance(self.conduit, Unset):
            conduit = UNSET
        elif isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        friction_coefficient = self.friction_coefficient

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
        if conduit is not UNSET:
            field_dict["conduit"] = conduit
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if grade is not UNSET:
            field_dict["grade"] = grade

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.grade import Grade  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["straight"], d.pop("kind"))
        if kind != "straight":
            raise ValueError(f"kind must match const 'straight', got '{kind}'")

        length = Length.from_dict(d.pop("length"))

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_conduit_type_0 = ListedConduit.from_dict(data)

                return componentsschemas_conduit_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_conduit_type_1 = MeasuredConduit.from_dict(data)

            return componentsschemas_conduit_type_1

        conduit = _parse_conduit(d.pop("conduit", UNSET))

        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _grade = d.pop("grade", UNSET)
        grade: Grade | Unset
        if isinstance(_grade, Unset):
            grade = UNSET
        else:
            grade = Grade.from_dict(_grade)

        straight_section = cls(
            kind=kind,
            length=length,
            conduit=conduit,
            friction_coefficient=friction_coefficient,
            grade=grade,
        )

        return straight_section
