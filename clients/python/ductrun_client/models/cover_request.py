from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.burial_location import BurialLocation
from ..models.code_edition import CodeEdition
from ..models.voltage_class import VoltageClass
from ..models.wiring_method import WiringMethod
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="CoverRequest")


@_attrs_define
class CoverRequest:
    """What is buried, and where.

    Attributes:
        location (BurialLocation): Where it is buried.
        voltage (VoltageClass): Classes of voltage.
        wiring_method (WiringMethod): What is buried, for its cover.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        concrete_above (Length | Unset): A length with its unit.
        concrete_around (Length | Unset): A length with its unit.
        cover (Length | Unset): A length with its unit.
        encased (bool | Unset): Whether it is encased in concrete.
        listed_for_direct_burial (bool | Unset): Whether a raceway is listed for direct burial without encasement.
    """

    location: BurialLocation
    voltage: VoltageClass
    wiring_method: WiringMethod
    code_edition: CodeEdition | Unset = UNSET
    concrete_above: Length | Unset = UNSET
    concrete_around: Length | Unset = UNSET
    cover: Length | Unset = UNSET
    encased: bool | Unset = UNSET
    listed_for_direct_burial: bool | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        location = self.location.value

        voltage = self.voltage.value

        wiring_method = self.wiring_method.value

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        concrete_above: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_above, Unset):
            concrete_above = self.concrete_above.to_dict()

        concrete_around: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_around, Unset):
            concrete_around = self.concrete_around.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        encased = self.encased

        listed_for_direct_burial = self.listed_for_direct_burial

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "location": location,
                "voltage": voltage,
                "wiring_method": wiring_method,
            }
        )
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if concrete_above is not UNSET:
            field_dict["concrete_above"] = concrete_above
        if concrete_around is not UNSET:
            field_dict["concrete_around"] = concrete_around
        if cover is not UNSET:
            field_dict["cover"] = cover
        if encased is not UNSET:
            field_dict["encased"] = encased
        if listed_for_direct_burial is not UNSET:
            field_dict["listed_for_direct_burial"] = listed_for_direct_burial

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        location = BurialLocation(d.pop("location"))

        voltage = VoltageClass(d.pop("voltage"))

        wiring_method = WiringMethod(d.pop("wiring_method"))

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _concrete_above = d.pop("concrete_above", UNSET)
        concrete_above: Length | Unset
        if isinstance(_concrete_above, Unset):
            concrete_above = UNSET
        else:
            concrete_above = Length.from_dict(_concrete_above)

        _concrete_around = d.pop("concrete_around", UNSET)
        concrete_around: Length | Unset
        if isinstance(_concrete_around, Unset):
            concrete_around = UNSET
        else:
            concrete_around = Length.from_dict(_concrete_around)

        _cover = d.pop("cover", UNSET)
        cover: Length | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = Length.from_dict(_cover)

        encased = d.pop("encased", UNSET)

        listed_for_direct_burial = d.pop("listed_for_direct_burial", UNSET)

        cover_request = cls(
            location=location,
            voltage=voltage,
            wiring_method=wiring_method,
            code_edition=code_edition,
            concrete_above=concrete_above,
            concrete_around=concrete_around,
            cover=cover,
            encased=encased,
            listed_for_direct_burial=listed_for_direct_burial,
        )

        return cover_request
