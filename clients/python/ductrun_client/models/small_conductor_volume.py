from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.standard_box_found import StandardBoxFound
    from ..models.volume import Volume


T = TypeVar("T", bound="SmallConductorVolume")


@_attrs_define
class SmallConductorVolume:
    """Conductors smaller than 4 AWG.

    Attributes:
        conductor_count (int): Conductors that count, those spliced at every entry.
        least_volume (Volume): A volume with its unit.
        standard_box (StandardBoxFound | Unset): A standard metal box.
    """

    conductor_count: int
    least_volume: Volume
    standard_box: StandardBoxFound | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conductor_count = self.conductor_count

        least_volume = self.least_volume.to_dict()

        standard_box: dict[str, Any] | Unset = UNSET
        if not isinstance(self.standard_box, Unset):
            standard_box = self.standard_box.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conductor_count": conductor_count,
                "least_volume": least_volume,
            }
        )
        if standard_box is not UNSET:
            field_dict["standard_box"] = standard_box

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.standard_box_found import StandardBoxFound  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        conductor_count = d.pop("conductor_count")

        least_volume = Volume.from_dict(d.pop("least_volume"))

        _standard_box = d.pop("standard_box", UNSET)
        standard_box: StandardBoxFound | Unset
        if isinstance(_standard_box, Unset):
            standard_box = UNSET
        else:
            standard_box = StandardBoxFound.from_dict(_standard_box)

        small_conductor_volume = cls(
            conductor_count=conductor_count,
            least_volume=least_volume,
            standard_box=standard_box,
        )

        small_conductor_volume.additional_properties = d
        return small_conductor_volume

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
