from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.box_rule import BoxRule

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="LeastDimension")


@_attrs_define
class LeastDimension:
    """The least of a dimension, inside, and what decided it.

    Attributes:
        citation (str): Where it stands.
        least (Length): A length with its unit.
        pointers (list[str]): JSON pointers of the entries that decided it; none where no entry did.
        rule (BoxRule): What sets the least of a dimension.
    """

    citation: str
    least: Length
    pointers: list[str]
    rule: BoxRule
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        citation = self.citation

        least = self.least.to_dict()

        pointers = self.pointers

        rule = self.rule.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "citation": citation,
                "least": least,
                "pointers": pointers,
                "rule": rule,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        citation = d.pop("citation")

        least = Length.from_dict(d.pop("least"))

        pointers = cast(list[str], d.pop("pointers"))

        rule = BoxRule(d.pop("rule"))

        least_dimension = cls(
            citation=citation,
            least=least,
            pointers=pointers,
            rule=rule,
        )

        least_dimension.additional_properties = d
        return least_dimension

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
