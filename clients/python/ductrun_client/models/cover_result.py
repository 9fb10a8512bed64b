from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="CoverResult")


@_attrs_define
class CoverResult:
    """The least cover and how it is measured.

    Attributes:
        concrete_required (Length): A length with its unit.
        measured_from (str): What the cover is measured between.
        minimum_cover (Length): A length with its unit.
        rule (str): Where the figure stands.
        cover_over_raceway (Length | Unset): A length with its unit.
        margin (Length | Unset): A length with its unit.
    """

    concrete_required: Length
    measured_from: str
    minimum_cover: Length
    rule: str
    cover_over_raceway: Length | Unset = UNSET
    margin: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        concrete_required = self.concrete_required.to_dict()

        measured_from = self.measured_from

        minimum_cover = self.minimum_cover.to_dict()

        rule = self.rule

        cover_over_raceway: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover_over_raceway, Unset):
            cover_over_raceway = self.cover_over_raceway.to_dict()

        margin: dict[str, Any] | Unset = UNSET
        if not isinstance(self.margin, Unset):
            margin = self.margin.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "concrete_required": concrete_required,
                "measured_from": measured_from,
                "minimum_cover": minimum_cover,
                "rule": rule,
            }
        )
        if cover_over_raceway is not UNSET:
            field_dict["cover_over_raceway"] = cover_over_raceway
        if margin is not UNSET:
            field_dict["margin"] = margin

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        concrete_required = Length.from_dict(d.pop("concrete_required"))

        measured_from = d.pop("measured_from")

        minimum_cover = Length.from_dict(d.pop("minimum_cover"))

        rule = d.pop("rule")

        _cover_over_raceway = d.pop("cover_over_raceway", UNSET)
        cover_over_raceway: Length | Unset
        if isinstance(_cover_over_raceway, Unset):
            cover_over_raceway = UNSET
        else:
            cover_over_raceway = Length.from_dict(_cover_over_raceway)

        _margin = d.pop("margin", UNSET)
        margin: Length | Unset
        if isinstance(_margin, Unset):
            margin = UNSET
        else:
            margin = Length.from_dict(_margin)

        cover_result = cls(
            concrete_required=concrete_required,
            measured_from=measured_from,
            minimum_cover=minimum_cover,
            rule=rule,
            cover_over_raceway=cover_over_raceway,
            margin=margin,
        )

        cover_result.additional_properties = d
        return cover_result

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
