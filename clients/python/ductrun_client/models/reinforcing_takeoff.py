from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.mass import Mass


T = TypeVar("T", bound="ReinforcingTakeoff")


@_attrs_define
class ReinforcingTakeoff:
    """Bars of the envelope.

    Attributes:
        lap_count (int): Laps of all longitudinal bars.
        lap_length (Length): A length with its unit.
        least_concrete_cover (Length): A length with its unit.
        longitudinal_length (Length): A length with its unit.
        mass (Mass): A mass with its unit; a force is not a mass: see Force.
        tie_count (int): Ties along the pour.
        tie_length (Length): A length with its unit.
    """

    lap_count: int
    lap_length: Length
    least_concrete_cover: Length
    longitudinal_length: Length
    mass: Mass
    tie_count: int
    tie_length: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        lap_count = self.lap_count

        lap_length = self.lap_length.to_dict()

        least_concrete_cover = self.least_concrete_cover.to_dict()

        longitudinal_length = self.longitudinal_length.to_dict()

        mass = self.mass.to_dict()

        tie_count = self.tie_count

        tie_length = self.tie_length.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "lap_count": lap_count,
                "lap_length": lap_length,
                "least_concrete_cover": least_concrete_cover,
                "longitudinal_length": longitudinal_length,
                "mass": mass,
                "tie_count": tie_count,
                "tie_length": tie_length,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass import Mass  # noqa: PLC0415

        d = dict(src_dict)
        lap_count = d.pop("lap_count")

        lap_length = Length.from_dict(d.pop("lap_length"))

        least_concrete_cover = Length.from_dict(d.pop("least_concrete_cover"))

        longitudinal_length = Length.from_dict(d.pop("longitudinal_length"))

        mass = Mass.from_dict(d.pop("mass"))

        tie_count = d.pop("tie_count")

        tie_length = Length.from_dict(d.pop("tie_length"))

        reinforcing_takeoff = cls(
            lap_count=lap_count,
            lap_length=lap_length,
            least_concrete_cover=least_concrete_cover,
            longitudinal_length=longitudinal_length,
            mass=mass,
            tie_count=tie_count,
            tie_length=tie_length,
        )

        reinforcing_takeoff.additional_properties = d
        return reinforcing_takeoff

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
