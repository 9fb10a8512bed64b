from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..models.conduit_type import ConduitType
from ..models.conduit_use import ConduitUse
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.temperature import Temperature


T = TypeVar("T", bound="PermittedUseRequest")


@_attrs_define
class PermittedUseRequest:
    """A conduit and everything it meets.

    Attributes:
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on
            file.
        uses (list[ConduitUse]): Places and ways it is used.
        ambient_temperature (Temperature | Unset): A temperature with its unit.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
    """

    type_: ConduitType
    uses: list[ConduitUse]
    ambient_temperature: Temperature | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        type_ = self.type_.value

        uses = []
        for uses_item_data in self.uses:
            uses_item = uses_item_data.value
            uses.append(uses_item)

        ambient_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.ambient_temperature, Unset):
            ambient_temperature = self.ambient_temperature.to_dict()

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "type": type_,
                "uses": uses,
            }
        )
        if ambient_temperature is not UNSET:
            field_dict["ambient_temperature"] = ambient_temperature
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        type_ = ConduitType(d.pop("type"))

        uses = []
        _uses = d.pop("uses")
        for uses_item_data in _uses:
            uses_item = ConduitUse(uses_item_data)

            uses.append(uses_item)

        _ambient_temperature = d.pop("ambient_temperature", UNSET)
        ambient_temperature: Temperature | Unset
        if isinstance(_ambient_temperature, Unset):
            ambient_temperature = UNSET
        else:
            ambient_temperature = Temperature.from_dict(_ambient_temperature)

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        permitted_use_request = cls(
            type_=type_,
            uses=uses,
            ambient_temperature=ambient_temperature,
            code_edition=code_edition,
        )

        return permitted_use_request
