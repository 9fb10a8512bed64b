from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.pull_box_result import PullBoxResult


T = TypeVar("T", bound="RunStop")


@_attrs_define
class RunStop:
    """An end of the run or a pull point.

    Attributes:
        kind (str):
        name (str):
        station (Length): A length with its unit.
        box (PullBoxResult | Unset): What a box must measure for what enters it; a dimension that no rule sets is
            absent.
    """

    kind: str
    name: str
    station: Length
    box: PullBoxResult | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        name = self.name

        station = self.station.to_dict()

        box: dict[str, Any] | Unset = UNSET
        if not isinstance(self.box, Unset):
            box = self.box.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "kind": kind,
                "name": name,
                "station": station,
            }
        )
        if box is not UNSET:
            field_dict["box"] = box

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pull_box_result import PullBoxResult  # noqa: PLC0415

        d = dict(src_dict)
        kind = d.pop("kind")

        name = d.pop("name")

        station = Length.from_dict(d.pop("station"))

        _box = d.pop("box", UNSET)
        box: PullBoxResult | Unset
        if isinstance(_box, Unset):
            box = UNSET
        else:
            box = PullBoxResult.from_dict(_box)

        run_stop = cls(
            kind=kind,
            name=name,
            station=station,
            box=box,
        )

        run_stop.additional_properties = d
        return run_stop

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
