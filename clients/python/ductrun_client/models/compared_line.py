from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.takeoff_group import TakeoffGroup
from ..models.takeoff_item import TakeoffItem
from ..models.volume_measure import VolumeMeasure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length
    from ..models.line_of_run import LineOfRun


T = TypeVar("T", bound="ComparedLine")


@_attrs_define
class ComparedLine:
    """One line of the takeoffs that is not the same in all runs.

    Attributes:
        description (str): The item in words.
        group (TakeoffGroup): Groups of a takeoff, in the order of building.
        item (TakeoffItem): What a line of a takeoff is of, in the order of its group.
        runs (list[LineOfRun]): Every run in order, the base first.
        angle (Angle | Unset): An angle with its unit.
        conduit_type (str | Unset): Type of the conduit.
        measure (VolumeMeasure | Unset): How a volume of earth is measured: in the bank, loose, or compacted; never
            mixed in one line.
        radius (Length | Unset): A length with its unit.
        size (str | Unset): Trade size, conductor size or bar size.
    """

    description: str
    group: TakeoffGroup
    item: TakeoffItem
    runs: list[LineOfRun]
    angle: Angle | Unset = UNSET
    conduit_type: str | Unset = UNSET
    measure: VolumeMeasure | Unset = UNSET
    radius: Length | Unset = UNSET
    size: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        description = self.description

        group = self.group.value

        item = self.item.value

        runs = []
        for runs_item_data in self.runs:
            runs_item = runs_item_data.to_dict()
            runs.append(runs_item)

        angle: dict[str, Any] | Unset = UNSET
        if not isinstance(self.angle, Unset):
            angle = self.angle.to_dict()

        conduit_type = self.conduit_type

        measure: str | Unset = UNSET
        if not isinstance(self.measure, Unset):
            measure = self.measure.value

        radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.radius, Unset):
            radius = self.radius.to_dict()

        size = self.size

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "description": description,
                "group": group,
                "item": item,
                "runs": runs,
            }
        )
        if angle is not UNSET:
            field_dict["angle"] = angle
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if measure is not UNSET:
            field_dict["measure"] = measure
        if radius is not UNSET:
            field_dict["radius"] = radius
        if size is not UNSET:
            field_dict["size"] = size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.line_of_run import LineOfRun  # noqa: PLC0415

        d = dict(src_dict)
        description = d.pop("description")

        group = TakeoffGroup(d.pop("group"))

        item = TakeoffItem(d.pop("item"))

        runs = []
        _runs = d.pop("runs")
        for runs_item_data in _runs:
            runs_item = LineOfRun.from_dict(runs_item_data)

            runs.append(runs_item)

        _angle = d.pop("angle", UNSET)
        angle: Angle | Unset
        if isinstance(_angle, Unset):
            angle = UNSET
        else:
            angle = Angle.from_dict(_angle)

        conduit_type = d.pop("conduit_type", UNSET)

        _measure = d.pop("measure", UNSET)
        measure: VolumeMeasure | Unset
        if isinstance(_measure, Unset):
            measure = UNSET
        else:
            measure = VolumeMeasure(_measure)

        _radius = d.pop("radius", UNSET)
        radius: Length | Unset
        if isinstance(_radius, Unset):
            radius = UNSET
        else:
            radius = Length.from_dict(_radius)

        size = d.pop("size", UNSET)

        compared_line = cls(
            description=description,
            group=group,
            item=item,
            runs=runs,
            angle=angle,
            conduit_type=conduit_type,
            measure=measure,
            radius=radius,
            size=size,
        )

        compared_line.additional_properties = d
        return compared_line

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
