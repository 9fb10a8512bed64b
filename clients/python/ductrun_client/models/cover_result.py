from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

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
    """

    concrete_required: Length
    measured_from: str
    minimum_cover: Length
    rule: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        concrete_required = self.concrete_required.to_dict()

        measured_from = self.measured_from

        minimum_cover = self.minimum_cover.to_dict()

        rule = self.rule

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

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        concrete_required = Length.from_dict(d.pop("concrete_required"))

        measured_from = d.pop("measured_from")

        minimum_cover = Length.from_dict(d.pop("minimum_cover"))

        rule = d.pop("rule")

        cover_result = cls(
            concrete_required=concrete_required,
            measured_from=measured_from,
            minimum_cover=minimum_cover,
            rule=rule,
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
