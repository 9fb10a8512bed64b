from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_result import ExpansionResult
    from ..models.supports_result import SupportsResult


T = TypeVar("T", bound="StretchRiser")


@_attrs_define
class StretchRiser:
    """The part of a riser above grade.

    Attributes:
        name (str): What stands above it.
        expansion (ExpansionResult | Unset): How far the runs move and what takes it up; runs held by the ground have no
            movement to show.
        supports (SupportsResult | Unset): How far apart, how many and where.
    """

    name: str
    expansion: ExpansionResult | Unset = UNSET
    supports: SupportsResult | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        name = self.name

        expansion: dict[str, Any] | Unset = UNSET
        if not isinstance(self.expansion, Unset):
            expansion = self.expansion.to_dict()

        supports: dict[str, Any] | Unset = UNSET
        if not isinstance(self.supports, Unset):
            supports = self.supports.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "name": name,
            }
        )
        if expansion is not UNSET:
            field_dict["expansion"] = expansion
        if supports is not UNSET:
            field_dict["supports"] = supports

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_result import ExpansionResult  # noqa: PLC0415
        from ..models.supports_result import SupportsResult  # noqa: PLC0415

        d = dict(src_dict)
        name = d.pop("name")

        _expansion = d.pop("expansion", UNSET)
        expansion: ExpansionResult | Unset
        if isinstance(_expansion, Unset):
            expansion = UNSET
        else:
            expansion = ExpansionResult.from_dict(_expansion)

        _supports = d.pop("supports", UNSET)
        supports: SupportsResult | Unset
        if isinstance(_supports, Unset):
            supports = UNSET
        else:
            supports = SupportsResult.from_dict(_supports)

        stretch_riser = cls(
            name=name,
            expansion=expansion,
            supports=supports,
        )

        stretch_riser.additional_properties = d
        return stretch_riser

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
