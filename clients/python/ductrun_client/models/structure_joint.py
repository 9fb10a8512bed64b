from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="StructureJoint")


@_attrs_define
class StructureJoint:
    """A joint of the structure that the run lies on.

    Attributes:
        movement (Length): A length with its unit.
        position (Length): A length with its unit.
    """

    movement: Length
    position: Length

    def to_dict(self) -> dict[str, Any]:
        movement = self.movement.to_dict()

        position = self.position.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "movement": movement,
                "position": position,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        movement = Length.from_dict(d.pop("movement"))

        position = Length.from_dict(d.pop("position"))

        structure_joint = cls(
            movement=movement,
            position=position,
        )

        return structure_joint
