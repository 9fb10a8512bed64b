from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.pavement_kind import PavementKind
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="Pavement")


@_attrs_define
class Pavement:
    """The pavement that a trench goes through; its top is grade, and it is laid again as thick as it was.

    Attributes:
        kind (PavementKind): What a pavement is made of.
        thickness (Length): A length with its unit.
        cut_back (Length | Unset): A length with its unit.
    """

    kind: PavementKind
    thickness: Length
    cut_back: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind.value

        thickness = self.thickness.to_dict()

        cut_back: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cut_back, Unset):
            cut_back = self.cut_back.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
                "thickness": thickness,
            }
        )
        if cut_back is not UNSET:
            field_dict["cut_back"] = cut_back

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        kind = PavementKind(d.pop("kind"))

        thickness = Length.from_dict(d.pop("thickness"))

        _cut_back = d.pop("cut_back", UNSET)
        cut_back: Length | Unset
        if isinstance(_cut_back, Unset):
            cut_back = UNSET
        else:
            cut_back = Length.from_dict(_cut_back)

        pavement = cls(
            kind=kind,
            thickness=thickness,
            cut_back=cut_back,
        )

        return pavement
