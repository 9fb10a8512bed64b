from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length


T = TypeVar("T", bound="DuctElbow")


@_attrs_define
class DuctElbow:
    """Elbows or sweeps of one kind in each duct.

    Attributes:
        angle (Angle): An angle with its unit.
        count (int): How many in each duct.
        radius (Length | Unset): A length with its unit.
        tangent (Length | Unset): A length with its unit.
    """

    angle: Angle
    count: int
    radius: Length | Unset = UNSET
    tangent: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        angle = self.angle.to_dict()

        count = self.count

        radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.radius, Unset):
            radius = self.radius.to_dict()

        tangent: dict[str, Any] | Unset = UNSET
        if not isinstance(self.tangent, Unset):
            tangent = self.tangent.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "angle": angle,
                "count": count,
            }
        )
        if radius is not UNSET:
            field_dict["radius"] = radius
        if tangent is not UNSET:
            field_dict["tangent"] = tangent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        angle = Angle.from_dict(d.pop("angle"))

        count = d.pop("count")

        _radius = d.pop("radius", UNSET)
        radius: Length | Unset
        if isinstance(_radius, Unset):
            radius = UNSET
        else:
            radius = Length.from_dict(_radius)

        _tangent = d.pop("tangent", UNSET)
        tangent: Length | Unset
        if isinstance(_tangent, Unset):
            tangent = UNSET
        else:
            tangent = Length.from_dict(_tangent)

        duct_elbow = cls(
            angle=angle,
            count=count,
            radius=radius,
            tangent=tangent,
        )

        return duct_elbow
