from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.temperature import Temperature


T = TypeVar("T", bound="PistonOpening")


@_attrs_define
class PistonOpening:
    """One line of the table the crew carries.

    Attributes:
        opening (Length): A length with its unit.
        temperature (Temperature): A temperature with its unit.
    """

    opening: Length
    temperature: Temperature
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        opening = self.opening.to_dict()

        temperature = self.temperature.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "opening": opening,
                "temperature": temperature,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        opening = Length.from_dict(d.pop("opening"))

        temperature = Temperature.from_dict(d.pop("temperature"))

        piston_opening = cls(
            opening=opening,
            temperature=temperature,
        )

        piston_opening.additional_properties = d
        return piston_opening

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
