from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="TravelOption")


@_attrs_define
class TravelOption:
    """What fittings of one travel that is sold would mean.

    Attributes:
        fitting_count (int):
        fitting_travel (Length): A length with its unit.
    """

    fitting_count: int
    fitting_travel: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        fitting_count = self.fitting_count

        fitting_travel = self.fitting_travel.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "fitting_count": fitting_count,
                "fitting_travel": fitting_travel,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        fitting_count = d.pop("fitting_count")

        fitting_travel = Length.from_dict(d.pop("fitting_travel"))

        travel_option = cls(
            fitting_count=fitting_count,
            fitting_travel=fitting_travel,
        )

        travel_option.additional_properties = d
        return travel_option

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
