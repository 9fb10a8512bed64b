from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.live_load_method import LiveLoadMethod

if TYPE_CHECKING:
    from ..models.pressure import Pressure


T = TypeVar("T", bound="LiveLoadByMethod")


@_attrs_define
class LiveLoadByMethod:
    """The pressure of traffic on top of a duct by one method, its impact included.

    Attributes:
        method (LiveLoadMethod): How the load of a wheel is found at a depth; the governing one is the largest of those
            that go so shallow.
        pressure (Pressure): A pressure or stress with its unit.
    """

    method: LiveLoadMethod
    pressure: Pressure
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        method = self.method.value

        pressure = self.pressure.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "method": method,
                "pressure": pressure,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        method = LiveLoadMethod(d.pop("method"))

        pressure = Pressure.from_dict(d.pop("pressure"))

        live_load_by_method = cls(
            method=method,
            pressure=pressure,
        )

        live_load_by_method.additional_properties = d
        return live_load_by_method

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
