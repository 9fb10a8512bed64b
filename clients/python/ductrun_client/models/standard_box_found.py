from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.standard_box_kind import StandardBoxKind

if TYPE_CHECKING:
    from ..models.volume import Volume


T = TypeVar("T", bound="StandardBoxFound")


@_attrs_define
class StandardBoxFound:
    """A standard metal box.

    Attributes:
        kind (StandardBoxKind): Kinds of standard metal boxes; the volume of some is per gang.
        size (str): Its size, as printed in inches.
        volume (Volume): A volume with its unit.
    """

    kind: StandardBoxKind
    size: str
    volume: Volume
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind.value

        size = self.size

        volume = self.volume.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "kind": kind,
                "size": size,
                "volume": volume,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        kind = StandardBoxKind(d.pop("kind"))

        size = d.pop("size")

        volume = Volume.from_dict(d.pop("volume"))

        standard_box_found = cls(
            kind=kind,
            size=size,
            volume=volume,
        )

        standard_box_found.additional_properties = d
        return standard_box_found

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
