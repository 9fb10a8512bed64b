from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.change_kind import ChangeKind
from ..models.verdict import Verdict

if TYPE_CHECKING:
    from ..models.patch_operation import PatchOperation
    from ..models.removed_violation import RemovedViolation


T = TypeVar("T", bound="Suggestion")


@_attrs_define
class Suggestion:
    """One change that was run: it removes a violation and adds none.

    Attributes:
        change (ChangeKind): What a suggestion changes, the cheapest to build first.
        message (str): What to change, in one sentence.
        patch (list[PatchOperation]): The change of the request, operations in order.
        remaining_violation_count (int): Violations that are left then.
        removed (list[RemovedViolation]): Violations that are gone then.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
    """

    change: ChangeKind
    message: str
    patch: list[PatchOperation]
    remaining_violation_count: int
    removed: list[RemovedViolation]
    verdict: Verdict
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        change = self.change.value

        message = self.message

        patch = []
        for patch_item_data in self.patch:
            patch_item = patch_item_data.to_dict()
            patch.append(patch_item)

        remaining_violation_count = self.remaining_violation_count

        removed = []
        for removed_item_data in self.removed:
            removed_item = removed_item_data.to_dict()
            removed.append(removed_item)

        verdict = self.verdict.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "change": change,
                "message": message,
                "patch": patch,
                "remaining_violation_count": remaining_violation_count,
                "removed": removed,
                "verdict": verdict,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.patch_operation import PatchOperation  # noqa: PLC0415
        from ..models.removed_violation import RemovedViolation  # noqa: PLC0415

        d = dict(src_dict)
        change = ChangeKind(d.pop("change"))

        message = d.pop("message")

        patch = []
        _patch = d.pop("patch")
        for patch_item_data in _patch:
            patch_item = PatchOperation.from_dict(patch_item_data)

            patch.append(patch_item)

        remaining_violation_count = d.pop("remaining_violation_count")

        removed = []
        _removed = d.pop("removed")
        for removed_item_data in _removed:
            removed_item = RemovedViolation.from_dict(removed_item_data)

            removed.append(removed_item)

        verdict = Verdict(d.pop("verdict"))

        suggestion = cls(
            change=change,
            message=message,
            patch=patch,
            remaining_violation_count=remaining_violation_count,
            removed=removed,
            verdict=verdict,
        )

        suggestion.additional_properties = d
        return suggestion

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
