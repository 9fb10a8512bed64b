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

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length


T = TypeVar("T", bound="HorizontalBendSection")


@_attrs_define
class HorizontalBendSection:
    """A bend in a level plane; an offset is two bends.

    Attributes:
        angle (Angle): An angle with its unit.
        kind (Literal['horizontal_bend']): Fixed text that says: a bend in a level plane.
        radius (Length): A length with its unit.
    """

    angle: Angle
    kind: Literal["horizontal_bend"]
    radius: Length

    def to_dict(self) -> dict[str, Any]:
        angle = self.angle.to_dict()

        kind = self.kind

        radius = self.radius.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "angle": angle,
                "kind": kind,
                "radius": radius,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        angle = Angle.from_dict(d.pop("angle"))

        kind = cast(Literal["horizontal_bend"], d.pop("kind"))
        if kind != "horizontal_bend":
            raise ValueError(f"kind must match const 'horizontal_bend', got '{kind}'")

        radius = Length.from_dict(d.pop("radius"))

        horizontal_bend_section = cls(
            angle=angle,
            kind=kind,
            radius=radius,
        )

        return horizontal_bend_section
