from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.ampacity_method import AmpacityMethod

if TYPE_CHECKING:
    from ..models.current import Current
    from ..models.temperature import Temperature


T = TypeVar("T", bound="OtherMethod")


@_attrs_define
class OtherMethod:
    """The method that allows more, where both were asked.

    Attributes:
        ampacity (Current): An electric current with its unit.
        conductor_temperature (Temperature): A temperature with its unit.
        difference_percent (float): By how much it allows more.
        method (AmpacityMethod): Methods of calculating ampacity; both asks for the one that allows less, with the other
            beside it.
    """

    ampacity: Current
    conductor_temperature: Temperature
    difference_percent: float
    method: AmpacityMethod
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ampacity = self.ampacity.to_dict()

        conductor_temperature = self.conductor_temperature.to_dict()

        difference_percent = self.difference_percent

        method = self.method.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ampacity": ampacity,
                "conductor_temperature": conductor_temperature,
                "difference_percent": difference_percent,
                "method": method,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.current import Current  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        ampacity = Current.from_dict(d.pop("ampacity"))

        conductor_temperature = Temperature.from_dict(d.pop("conductor_temperature"))

        difference_percent = d.pop("difference_percent")

        method = AmpacityMethod(d.pop("method"))

        other_method = cls(
            ampacity=ampacity,
            conductor_temperature=conductor_temperature,
            difference_percent=difference_percent,
            method=method,
        )

        other_method.additional_properties = d
        return other_method

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
