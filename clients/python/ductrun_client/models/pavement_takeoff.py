from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.pavement_kind import PavementKind

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.length import Length
    from ..models.volume import Volume


T = TypeVar("T", bound="PavementTakeoff")


@_attrs_define
class PavementTakeoff:
    """Pavement in place; what is taken up of it is no spoil.

    Attributes:
        cut_width (Length): A length with its unit.
        kind (PavementKind): What a pavement is made of.
        removal_area (Area): An area with its unit.
        removal_volume (Volume): A volume with its unit.
        restoration_area (Area): An area with its unit.
        restoration_volume (Volume): A volume with its unit.
        saw_cut_length (Length): A length with its unit.
    """

    cut_width: Length
    kind: PavementKind
    removal_area: Area
    removal_volume: Volume
    restoration_area: Area
    restoration_volume: Volume
    saw_cut_length: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        cut_width = self.cut_width.to_dict()

        kind = self.kind.value

        removal_area = self.removal_area.to_dict()

        removal_volume = self.removal_volume.to_dict()

        restoration_area = self.restoration_area.to_dict()

        restoration_volume = self.restoration_volume.to_dict()

        saw_cut_length = self.saw_cut_length.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "cut_width": cut_width,
                "kind": kind,
                "removal_area": removal_area,
                "removal_volume": removal_volume,
                "restoration_area": restoration_area,
                "restoration_volume": restoration_volume,
                "saw_cut_length": saw_cut_length,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        cut_width = Length.from_dict(d.pop("cut_width"))

        kind = PavementKind(d.pop("kind"))

        removal_area = Area.from_dict(d.pop("removal_area"))

        removal_volume = Volume.from_dict(d.pop("removal_volume"))

        restoration_area = Area.from_dict(d.pop("restoration_area"))

        restoration_volume = Volume.from_dict(d.pop("restoration_volume"))

        saw_cut_length = Length.from_dict(d.pop("saw_cut_length"))

        pavement_takeoff = cls(
            cut_width=cut_width,
            kind=kind,
            removal_area=removal_area,
            removal_volume=removal_volume,
            restoration_area=restoration_area,
            restoration_volume=restoration_volume,
            saw_cut_length=saw_cut_length,
        )

        pavement_takeoff.additional_properties = d
        return pavement_takeoff

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
