from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.standing import Standing
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity


T = TypeVar("T", bound="Assumption")


@_attrs_define
class Assumption:
    """A value taken for want of one, with every member it stands in for; a quantity too, where it is a figure.

    Attributes:
        citation (str): Where it comes from, or that it is practice.
        pointers (list[str]): JSON pointers of the members that were left out.
        standing (Standing): What backs a figure: a published source, practice, memory of a source, a derivation, or the
            caller.
        text (str): The value as a text.
        quantity (AnyQuantity | Unset): A value with its unit, of whatever dimension the text beside it says.
        source_id (str | Unset): Id of the source in the table of sources.
    """

    citation: str
    pointers: list[str]
    standing: Standing
    text: str
    quantity: AnyQuantity | Unset = UNSET
    source_id: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        citation = self.citation

        pointers = self.pointers

        standing = self.standing.value

        text = self.text

        quantity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.quantity, Unset):
            quantity = self.quantity.to_dict()

        source_id = self.source_id

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "citation": citation,
                "pointers": pointers,
                "standing": standing,
                "text": text,
            }
        )
        if quantity is not UNSET:
            field_dict["quantity"] = quantity
        if source_id is not UNSET:
            field_dict["source_id"] = source_id

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415

        d = dict(src_dict)
        citation = d.pop("citation")

        pointers = cast(list[str], d.pop("pointers"))

        standing = Standing(d.pop("standing"))

        text = d.pop("text")

        _quantity = d.pop("quantity", UNSET)
        quantity: AnyQuantity | Unset
        if isinstance(_quantity, Unset):
            quantity = UNSET
        else:
            quantity = AnyQuantity.from_dict(_quantity)

        source_id = d.pop("source_id", UNSET)

        assumption = cls(
            citation=citation,
            pointers=pointers,
            standing=standing,
            text=text,
            quantity=quantity,
            source_id=source_id,
        )

        assumption.additional_properties = d
        return assumption

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
