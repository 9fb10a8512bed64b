from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_type import ConduitType
from ..models.standing import Standing
from ..models.trade_size import TradeSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.length import Length


T = TypeVar("T", bound="ConduitRow")


@_attrs_define
class ConduitRow:
    """One trade size of one conduit type; utility duct has no inside diameter here.

    Attributes:
        metric_designator (int): Metric designator; a label, not a dimension.
        source_id (str): Id of the source; see /v1/tables/sources.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        trade_size (TradeSize): Trade sizes of conduit; a name, not a dimension.
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on
            file.
        area (Area | Unset): An area with its unit.
        inside_diameter (Length | Unset): A length with its unit.
        minimum_wall (Length | Unset): A length with its unit.
        note (str | Unset): Remark on the row.
        outside_diameter (Length | Unset): A length with its unit.
        wall_source_id (str | Unset): Source of outside diameter and wall.
        wall_standing (Standing | Unset): What backs a figure: a published source, practice, memory of a source, a
            derivation, or the caller.
    """

    metric_designator: int
    source_id: str
    standing: Standing
    trade_size: TradeSize
    type_: ConduitType
    area: Area | Unset = UNSET
    inside_diameter: Length | Unset = UNSET
    minimum_wall: Length | Unset = UNSET
    note: str | Unset = UNSET
    outside_diameter: Length | Unset = UNSET
    wall_source_id: str | Unset = UNSET
    wall_standing: Standing | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        metric_designator = self.metric_designator

        source_id = self.source_id

        standing = self.standing.value

        trade_size = self.trade_size.value

        type_ = self.type_.value

        area: dict[str, Any] | Unset = UNSET
        if not isinstance(self.area, Unset):
            area = self.area.to_dict()

        inside_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.inside_diameter, Unset):
            inside_diameter = self.inside_diameter.to_dict()

        minimum_wall: dict[str, Any] | Unset = UNSET
        if not isinstance(self.minimum_wall, Unset):
            minimum_wall = self.minimum_wall.to_dict()

        note = self.note

        outside_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.outside_diameter, Unset):
            outside_diameter = self.outside_diameter.to_dict()

        wall_source_id = self.wall_source_id

        wall_standing: str | Unset = UNSET
        if not isinstance(self.wall_standing, Unset):
            wall_standing = self.wall_standing.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "metric_designator": metric_designator,
                "source_id": source_id,
                "standing": standing,
                "trade_size": trade_size,
                "type": type_,
            }
        )
        if area is not UNSET:
            field_dict["area"] = area
        if inside_diameter is not UNSET:
            field_dict["inside_diameter"] = inside_diameter
        if minimum_wall is not UNSET:
            field_dict["minimum_wall"] = minimum_wall
        if note is not UNSET:
            field_dict["note"] = note
        if outside_diameter is not UNSET:
            field_dict["outside_diameter"] = outside_diameter
        if wall_source_id is not UNSET:
            field_dict["wall_source_id"] = wall_source_id
        if wall_standing is not UNSET:
            field_dict["wall_standing"] = wall_standing

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        metric_designator = d.pop("metric_designator")

        source_id = d.pop("source_id")

        standing = Standing(d.pop("standing"))

        trade_size = TradeSize(d.pop("trade_size"))

        type_ = ConduitType(d.pop("type"))

        _area = d.pop("area", UNSET)
        area: Area | Unset
        if isinstance(_area, Unset):
            area = UNSET
        else:
            area = Area.from_dict(_area)

        _inside_diameter = d.pop("inside_diameter", UNSET)
        inside_diameter: Length | Unset
        if isinstance(_inside_diameter, Unset):
            inside_diameter = UNSET
        else:
            inside_diameter = Length.from_dict(_inside_diameter)

        _minimum_wall = d.pop("minimum_wall", UNSET)
        minimum_wall: Length | Unset
        if isinstance(_minimum_wall, Unset):
            minimum_wall = UNSET
        else:
            minimum_wall = Length.from_dict(_minimum_wall)

        note = d.pop("note", UNSET)

        _outside_diameter = d.pop("outside_diameter", UNSET)
        outside_diameter: Length | Unset
        if isinstance(_outside_diameter, Unset):
            outside_diameter = UNSET
        else:
            outside_diameter = Length.from_dict(_outside_diameter)

        wall_source_id = d.pop("wall_source_id", UNSET)

        _wall_standing = d.pop("wall_standing", UNSET)
        wall_standing: Standing | Unset
        if isinstance(_wall_standing, Unset):
            wall_standing = UNSET
        else:
            wall_standing = Standing(_wall_standing)

        conduit_row = cls(
            metric_designator=metric_designator,
            source_id=source_id,
            standing=standing,
            trade_size=trade_size,
            type_=type_,
            area=area,
            inside_diameter=inside_diameter,
            minimum_wall=minimum_wall,
            note=note,
            outside_diameter=outside_diameter,
            wall_source_id=wall_source_id,
            wall_standing=wall_standing,
        )

        conduit_row.additional_properties = d
        return conduit_row

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
