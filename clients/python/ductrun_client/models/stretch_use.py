from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_type import ConduitType
from ..models.verdict import Verdict

if TYPE_CHECKING:
    from ..models.judged_use import JudgedUse


T = TypeVar("T", bound="StretchUse")


@_attrs_define
class StretchUse:
    """The uses of one type of conduit in a stretch.

    Attributes:
        conduit_type (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        uses (list[JudgedUse]):
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
    """

    conduit_type: ConduitType
    uses: list[JudgedUse]
    verdict: Verdict
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conduit_type = self.conduit_type.value

        uses = []
        for uses_item_data in self.uses:
            uses_item = uses_item_data.to_dict()
            uses.append(uses_item)

        verdict = self.verdict.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conduit_type": conduit_type,
                "uses": uses,
                "verdict": verdict,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.judged_use import JudgedUse  # noqa: PLC0415

        d = dict(src_dict)
        conduit_type = ConduitType(d.pop("conduit_type"))

        uses = []
        _uses = d.pop("uses")
        for uses_item_data in _uses:
            uses_item = JudgedUse.from_dict(uses_item_data)

            uses.append(uses_item)

        verdict = Verdict(d.pop("verdict"))

        stretch_use = cls(
            conduit_type=conduit_type,
            uses=uses,
            verdict=verdict,
        )

        stretch_use.additional_properties = d
        return stretch_use

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
