from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_size import ConductorSize

T = TypeVar("T", bound="GroundingSize")


@_attrs_define
class GroundingSize:
    """The least equipment grounding conductor in every duct of a circuit.

    Attributes:
        aluminum (ConductorSize): Sizes of conductors.
        copper (ConductorSize): Sizes of conductors.
    """

    aluminum: ConductorSize
    copper: ConductorSize
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        aluminum = self.aluminum.value

        copper = self.copper.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "aluminum": aluminum,
                "copper": copper,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        aluminum = ConductorSize(d.pop("aluminum"))

        copper = ConductorSize(d.pop("copper"))

        grounding_size = cls(
            aluminum=aluminum,
            copper=copper,
        )

        grounding_size.additional_properties = d
        return grounding_size

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
