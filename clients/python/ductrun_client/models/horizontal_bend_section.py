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

from ..models.bend_made import BendMade
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="HorizontalBendSection")


@_attrs_define
class HorizontalBendSection:
    """A bend in a level plane; an offset is two bends.

    Attributes:
        angle (Angle): An angle with its unit.
        kind (Literal['horizontal_bend']): Fixed text that says: a bend in a level plane.
        radius (Length): A length with its unit.
        conduit (ListedConduit | MeasuredConduit | Unset):
        friction_coefficient (float | Unset): Coefficient of friction of this section, where it differs.
        made (BendMade | Unset): How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on
            a wide curve.
    """

    angle: Angle
    kind: Literal["horizontal_bend"]
    radius: Length
    conduit: ListedConduit | MeasuredConduit | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    made: BendMade | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        angle = self.angle.to_dict()

        kind = self.kind

        radius = self.radius.to_dict()

        conduit: dict[str, Any] | Unset
        if isinstance(self.conduit, Unset):
            conduit = UNSET
        elif isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        friction_coefficient = self.friction_coefficient

        made: str | Unset = UNSET
        if not isinstance(self.made, Unset):
            made = self.made.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "angle": angle,
                "kind": kind,
                "radius": radius,
            }
        )
        if conduit is not UNSET:
            field_dict["conduit"] = conduit
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if made is not UNSET:
            field_dict["made"] = made

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415

        d = dict(src_dict)
        angle = Angle.from_dict(d.pop("angle"))

        kind = cast(Literal["horizontal_bend"], d.pop("kind"))
        if kind != "horizontal_bend":
            raise ValueError(f"kind must match const 'horizontal_bend', got '{kind}'")

        radius = Length.from_dict(d.pop("radius"))

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

        _made = d.pop("made", UNSET)
        made: BendMade | Unset
        if isinstance(_made, Unset):
            made = UNSET
        else:
            made = BendMade(_made)

        horizontal_bend_section = cls(
            angle=angle,
            kind=kind,
            radius=radius,
            conduit=conduit,
            friction_coefficient=friction_coefficient,
            made=made,
        )

        return horizontal_bend_section
