from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conduit_use import ConduitUse
from ..models.verdict import Verdict
from ..types import UNSET, Unset

T = TypeVar("T", bound="JudgedUse")


@_attrs_define
class JudgedUse:
    """One use.

    Attributes:
        citation (str): Where that stands, or that it is from memory.
        use (ConduitUse): Places and ways conduit is used.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        condition (str | Unset): What it hangs on where it is not judged, if that is on file.
    """

    citation: str
    use: ConduitUse
    verdict: Verdict
    condition: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        citation = self.citation

        use = self.use.value

        verdict = self.verdict.value

        condition = self.condition

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "citation": citation,
                "use": use,
                "verdict": verdict,
            }
        )
        if condition is not UNSET:
            field_dict["condition"] = condition

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        d = dict(src_dict)
        citation = d.pop("citation")

        use = ConduitUse(d.pop("use"))

        verdict = Verdict(d.pop("verdict"))

        condition = d.pop("condition", UNSET)

        judged_use = cls(
            citation=citation,
            use=use,
            verdict=verdict,
            condition=condition,
        )

        judged_use.additional_properties = d
        return judged_use

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
