from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_size import ConductorSize

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="BankGroundTakeoff")


@_attrs_define
class BankGroundTakeoff:
    """The conductors of the ground.

    Attributes:
        conductor_length (Length): A length with its unit.
        order_length (Length): A length with its unit.
        size (ConductorSize): Sizes of conductors.
    """

    conductor_length: Length
    order_length: Length
    size: ConductorSize
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conductor_length = self.conductor_length.to_dict()

        order_length = self.order_length.to_dict()

        size = self.size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conductor_length": conductor_length,
                "order_length": order_length,
                "size": size,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        conductor_length = Length.from_dict(d.pop("conductor_length"))

        order_length = Length.from_dict(d.pop("order_length"))

        size = ConductorSize(d.pop("size"))

        bank_ground_takeoff = cls(
            conductor_length=conductor_length,
            order_length=order_length,
            size=size,
        )

        bank_ground_takeoff.additional_properties = d
        return bank_ground_takeoff

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
