from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.conductor_size import ConductorSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="BankGround")


@_attrs_define
class BankGround:
    """Bare conductors in the envelope.

    Attributes:
        size (ConductorSize): Sizes of conductors.
        conductor_count (int | Unset): Conductors beside each other.
        end_length (Length | Unset): A length with its unit.
        waste_percent (float | Unset): Waste on the length, in percent.
    """

    size: ConductorSize
    conductor_count: int | Unset = UNSET
    end_length: Length | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        size = self.size.value

        conductor_count = self.conductor_count

        end_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.end_length, Unset):
            end_length = self.end_length.to_dict()

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "size": size,
            }
        )
        if conductor_count is not UNSET:
            field_dict["conductor_count"] = conductor_count
        if end_length is not UNSET:
            field_dict["end_length"] = end_length
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        size = ConductorSize(d.pop("size"))

        conductor_count = d.pop("conductor_count", UNSET)

        _end_length = d.pop("end_length", UNSET)
        end_length: Length | Unset
        if isinstance(_end_length, Unset):
            end_length = UNSET
        else:
            end_length = Length.from_dict(_end_length)

        waste_percent = d.pop("waste_percent", UNSET)

        bank_ground = cls(
            size=size,
            conductor_count=conductor_count,
            end_length=end_length,
            waste_percent=waste_percent,
        )

        return bank_ground
