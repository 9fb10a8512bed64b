from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.pull_kind import PullKind
from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="PullThrough")


@_attrs_define
class PullThrough:
    """A circuit between two entries; the distance of entries is between their near edges.

    Attributes:
        circuit (str): Its name.
        kind (PullKind): How conductors go through a box: to the wall opposite, to a wall beside it, or back out of the
            same wall.
        pointers (list[str]): JSON pointers of its two entries.
        spliced (bool): Whether it is spliced on its way.
        entry_distance (Length | Unset): A length with its unit.
        least_entry_distance (Length | Unset): A length with its unit.
        verdict (Verdict | Unset): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
    """

    circuit: str
    kind: PullKind
    pointers: list[str]
    spliced: bool
    entry_distance: Length | Unset = UNSET
    least_entry_distance: Length | Unset = UNSET
    verdict: Verdict | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        circuit = self.circuit

        kind = self.kind.value

        pointers = self.pointers

        spliced = self.spliced

        entry_distance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.entry_distance, Unset):
            entry_distance = self.entry_distance.to_dict()

        least_entry_distance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_entry_distance, Unset):
            least_entry_distance = self.least_entry_distance.to_dict()

        verdict: str | Unset = UNSET
        if not isinstance(self.verdict, Unset):
            verdict = self.verdict.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "circuit": circuit,
                "kind": kind,
                "pointers": pointers,
                "spliced": spliced,
            }
        )
        if entry_distance is not UNSET:
            field_dict["entry_distance"] = entry_distance
        if least_entry_distance is not UNSET:
            field_dict["least_entry_distance"] = least_entry_distance
        if verdict is not UNSET:
            field_dict["verdict"] = verdict

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        circuit = d.pop("circuit")

        kind = PullKind(d.pop("kind"))

        pointers = cast(list[str], d.pop("pointers"))

        spliced = d.pop("spliced")

        _entry_distance = d.pop("entry_distance", UNSET)
        entry_distance: Length | Unset
        if isinstance(_entry_distance, Unset):
            entry_distance = UNSET
        else:
            entry_distance = Length.from_dict(_entry_distance)

        _least_entry_distance = d.pop("least_entry_distance", UNSET)
        least_entry_distance: Length | Unset
        if isinstance(_least_entry_distance, Unset):
            least_entry_distance = UNSET
        else:
            least_entry_distance = Length.from_dict(_least_entry_distance)

        _verdict = d.pop("verdict", UNSET)
        verdict: Verdict | Unset
        if isinstance(_verdict, Unset):
            verdict = UNSET
        else:
            verdict = Verdict(_verdict)

        pull_through = cls(
            circuit=circuit,
            kind=kind,
            pointers=pointers,
            spliced=spliced,
            entry_distance=entry_distance,
            least_entry_distance=least_entry_distance,
            verdict=verdict,
        )

        pull_through.additional_properties = d
        return pull_through

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
