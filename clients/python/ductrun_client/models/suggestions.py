from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.suggestion import Suggestion


T = TypeVar("T", bound="Suggestions")


@_attrs_define
class Suggestions:
    """What would make a run comply, each change of one thing verified by running it.

    Attributes:
        bound_met (bool): Whether changes were left untried for that bound.
        suggestions (list[Suggestion]): Those that comply first, then the cheapest to build.
        trial_count (int): How many changed runs were tried; 50 at most.
    """

    bound_met: bool
    suggestions: list[Suggestion]
    trial_count: int
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        bound_met = self.bound_met

        suggestions = []
        for suggestions_item_data in self.suggestions:
            suggestions_item = suggestions_item_data.to_dict()
            suggestions.append(suggestions_item)

        trial_count = self.trial_count

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "bound_met": bound_met,
                "suggestions": suggestions,
                "trial_count": trial_count,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.suggestion import Suggestion  # noqa: PLC0415

        d = dict(src_dict)
        bound_met = d.pop("bound_met")

        suggestions = []
        _suggestions = d.pop("suggestions")
        for suggestions_item_data in _suggestions:
            suggestions_item = Suggestion.from_dict(suggestions_item_data)

            suggestions.append(suggestions_item)

        trial_count = d.pop("trial_count")

        suggestions = cls(
            bound_met=bound_met,
            suggestions=suggestions,
            trial_count=trial_count,
        )

        suggestions.additional_properties = d
        return suggestions

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
