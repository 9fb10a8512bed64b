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

from ..models.burial_location import BurialLocation
from ..models.duct_contents import DuctContents
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.density import Density
    from ..models.length import Length


T = TypeVar("T", bound="BoredSetting")


@_attrs_define
class BoredSetting:
    """In a bore; how the ducts are drawn into it is not judged.

    Attributes:
        kind (Literal['bored']): Fixed text that says: in a directional bore.
        bore_diameter (Length | Unset): A length with its unit.
        bundle_diameter (Length | Unset): A length with its unit.
        cover (Length | Unset): A length with its unit.
        drilling_fluid_density (Density | Unset): A mass per volume with its unit.
        duct_contents (DuctContents | Unset): Contents of ducts.
        location (BurialLocation | Unset): Where it is buried.
    """

    kind: Literal["bored"]
    bore_diameter: Length | Unset = UNSET
    bundle_diameter: Length | Unset = UNSET
    cover: Length | Unset = UNSET
    drilling_fluid_density: Density | Unset = UNSET
    duct_contents: DuctContents | Unset = UNSET
    location: BurialLocation | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        bore_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bore_diameter, Unset):
            bore_diameter = self.bore_diameter.to_dict()

        bundle_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bundle_diameter, Unset):
            bundle_diameter = self.bundle_diameter.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        drilling_fluid_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.drilling_fluid_density, Unset):
            drilling_fluid_density = self.drilling_fluid_density.to_dict()

        duct_contents: str | Unset = UNSET
        if not isinstance(self.duct_contents, Unset):
            duct_contents = self.duct_contents.value

        location: str | Unset = UNSET
        if not isinstance(self.location, Unset):
            location = self.location.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if bore_diameter is not UNSET:
            field_dict["bore_diameter"] = bore_diameter
        if bundle_diameter is not UNSET:
            field_dict["bundle_diameter"] = bundle_diameter
        if cover is not UNSET:
            field_dict["cover"] = cover
        if drilling_fluid_density is not UNSET:
            field_dict["drilling_fluid_density"] = drilling_fluid_density
        if duct_contents is not UNSET:
            field_dict["duct_contents"] = duct_contents
        if location is not UNSET:
            field_dict["location"] = location

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.density import Density  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["bored"], d.pop("kind"))
        if kind != "bored":
            raise ValueError(f"kind must match const 'bored', got '{kind}'")

        _bore_diameter = d.pop("bore_diameter", UNSET)
        bore_diameter: Length | Unset
        if isinstance(_bore_diameter, Unset):
            bore_diameter = UNSET
        else:
            bore_diameter = Length.from_dict(_bore_diameter)

        _bundle_diameter = d.pop("bundle_diameter", UNSET)
        bundle_diameter: Length | Unset
        if isinstance(_bundle_diameter, Unset):
            bundle_diameter = UNSET
        else:
            bundle_diameter = Length.from_dict(_bundle_diameter)

        _cover = d.pop("cover", UNSET)
        cover: Length | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = Length.from_dict(_cover)

        _drilling_fluid_density = d.pop("drilling_fluid_density", UNSET)
        drilling_fluid_density: Density | Unset
        if isinstance(_drilling_fluid_density, Unset):
            drilling_fluid_density = UNSET
        else:
            drilling_fluid_density = Density.from_dict(_drilling_fluid_density)

        _duct_contents = d.pop("duct_contents", UNSET)
        duct_contents: DuctContents | Unset
        if isinstance(_duct_contents, Unset):
            duct_contents = UNSET
        else:
            duct_contents = DuctContents(_duct_contents)

        _location = d.pop("location", UNSET)
        location: BurialLocation | Unset
        if isinstance(_location, Unset):
            location = UNSET
        else:
            location = BurialLocation(_location)

        bored_setting = cls(
            kind=kind,
            bore_diameter=bore_diameter,
            bundle_diameter=bundle_diameter,
            cover=cover,
            drilling_fluid_density=drilling_fluid_density,
            duct_contents=duct_contents,
            location=location,
        )

        return bored_setting
