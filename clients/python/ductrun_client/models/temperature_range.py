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

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.temperature import Temperature
    from ..models.temperature_difference import TemperatureDifference


T = TypeVar("T", bound="TemperatureRange")


@_attrs_define
class TemperatureRange:
    """The lowest and highest temperature of the conduit itself, which in the sun is not that of the air.

    Attributes:
        highest (Temperature): A temperature with its unit.
        kind (Literal['range']): Fixed text that says: by lowest and highest.
        lowest (Temperature): A temperature with its unit.
        direct_sun (bool | Unset): Whether the run lies in direct sun and the highest temperature does not include that
            yet.
        installation (Temperature | Unset): A temperature with its unit.
        sun_allowance (TemperatureDifference | Unset): A difference between two temperatures with its unit.
    """

    highest: Temperature
    kind: Literal["range"]
    lowest: Temperature
    direct_sun: bool | Unset = UNSET
    installation: Temperature | Unset = UNSET
    sun_allowance: TemperatureDifference | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        highest = self.highest.to_dict()

        kind = self.kind

        lowest = self.lowest.to_dict()

        direct_sun = self.direct_sun

        installation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.installation, Unset):
            installation = self.installation.to_dict()

        sun_allowance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.sun_allowance, Unset):
            sun_allowance = self.sun_allowance.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "highest": highest,
                "kind": kind,
                "lowest": lowest,
            }
        )
        if direct_sun is not UNSET:
            field_dict["direct_sun"] = direct_sun
        if installation is not UNSET:
            field_dict["installation"] = installation
        if sun_allowance is not UNSET:
            field_dict["sun_allowance"] = sun_allowance

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.temperature import Temperature  # noqa: PLC0415
        from ..models.temperature_difference import TemperatureDifference  # noqa: PLC0415

        d = dict(src_dict)
        highest = Temperature.from_dict(d.pop("highest"))

        kind = cast(Literal["range"], d.pop("kind"))
        if kind != "range":
            raise ValueError(f"kind must match const 'range', got '{kind}'")

        lowest = Temperature.from_dict(d.pop("lowest"))

        direct_sun = d.pop("direct_sun", UNSET)

        _installation = d.pop("installation", UNSET)
        installation: Temperature | Unset
        if isinstance(_installation, Unset):
            installation = UNSET
        else:
            installation = Temperature.from_dict(_installation)

        _sun_allowance = d.pop("sun_allowance", UNSET)
        sun_allowance: TemperatureDifference | Unset
        if isinstance(_sun_allowance, Unset):
            sun_allowance = UNSET
        else:
            sun_allowance = TemperatureDifference.from_dict(_sun_allowance)

        temperature_range = cls(
            highest=highest,
            kind=kind,
            lowest=lowest,
            direct_sun=direct_sun,
            installation=installation,
            sun_allowance=sun_allowance,
        )

        return temperature_range
