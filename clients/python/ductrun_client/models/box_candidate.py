from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="BoxCandidate")


@_attrs_define
class BoxCandidate:
    """A box that can be had.

    Attributes:
        depth (Length): A length with its unit.
        length (Length): A length with its unit.
        pointer (str): JSON pointer of its size.
        turned (bool): Whether it has them with length and width exchanged.
        verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of
            something.
        width (Length): A length with its unit.
    """

    depth: Length
    length: Length
    pointer: str
    turned: bool
    verdict: Verdict
    width: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        depth = self.depth.to_dict()

        length = self.length.to_dict()

        pointer = self.pointer

        turned = self.turned

        verdict = self.verdict.value

        width = self.width.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "depth": depth,
                "length": length,
                "pointer": pointer,
                "turned": turned,
                "verdict": verdict,
                "width": width,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        depth = Length.from_dict(d.pop("depth"))

        length = Length.from_dict(d.pop("length"))

        pointer = d.pop("pointer")

        turned = d.pop("turned")

        verdict = Verdict(d.pop("verdict"))

        width = Length.from_dict(d.pop("width"))

        box_candidate = cls(
            depth=depth,
            length=length,
            pointer=pointer,
            turned=turned,
            verdict=verdict,
            width=width,
        )

        box_candidate.additional_properties = d
        return box_candidate

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
