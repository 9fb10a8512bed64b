from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_line import CableLine


T = TypeVar("T", bound="BoxCircuit")


@_attrs_define
class BoxCircuit:
    """Conductors that enter a box together and leave it together.

    Attributes:
        name (str): Its name, by which the entries speak of it.
        cables (list[CableLine] | Unset): Its cables, all of those in one raceway; needed over the threshold voltage.
        spliced (bool | Unset): Whether it is spliced or tapped in the box.
    """

    name: str
    cables: list[CableLine] | Unset = UNSET
    spliced: bool | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        name = self.name

        cables: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.cables, Unset):
            cables = []
            for cables_item_data in self.cables:
                cables_item = cables_item_data.to_dict()
                cables.append(cables_item)

        spliced = self.spliced

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "name": name,
            }
        )
        if cables is not UNSET:
            field_dict["cables"] = cables
        if spliced is not UNSET:
            field_dict["spliced"] = spliced

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_line import CableLine  # noqa: PLC0415

        d = dict(src_dict)
        name = d.pop("name")

        _cables = d.pop("cables", UNSET)
        cables: list[CableLine] | Unset = UNSET
        if _cables is not UNSET:
            cables = []
            for cables_item_data in _cables:
                cables_item = CableLine.from_dict(cables_item_data)

                cables.append(cables_item)

        spliced = d.pop("spliced", UNSET)

        box_circuit = cls(
            name=name,
            cables=cables,
            spliced=spliced,
        )

        return box_circuit
