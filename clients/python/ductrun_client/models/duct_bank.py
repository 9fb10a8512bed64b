from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="DuctBank")


@_attrs_define
class DuctBank:
    """Ducts in tiers.

    Attributes:
        conduit (ListedConduit | MeasuredConduit):
        tiers (list[int]): Ducts in each tier, the bottom tier first.
        horizontal_separation (Length | Unset): A length with its unit.
        vertical_separation (Length | Unset): A length with its unit.
    """

    conduit: ListedConduit | MeasuredConduit
    tiers: list[int]
    horizontal_separation: Length | Unset = UNSET
    vertical_separation: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        conduit: dict[str, Any]
        if isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        tiers = self.tiers

        horizontal_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.horizontal_separation, Unset):
            horizontal_separation = self.horizontal_separation.to_dict()

        vertical_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.vertical_separation, Unset):
            vertical_separation = self.vertical_separation.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "conduit": conduit,
                "tiers": tiers,
            }
        )
        if horizontal_separation is not UNSET:
            field_dict["horizontal_separation"] = horizontal_separation
        if vertical_separation is not UNSET:
            field_dict["vertical_separation"] = vertical_separation

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_conduit_type_0 = ListedConduit.from_dict(data)

                return componentsschemas_conduit_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_conduit_type_1 = MeasuredConduit.from_dict(data)

            return componentsschemas_conduit_type_1

        conduit = _parse_conduit(d.pop("conduit"))

        tiers = cast(list[int], d.pop("tiers"))

        _horizontal_separation = d.pop("horizontal_separation", UNSET)
        horizontal_separation: Length | Unset
        if isinstance(_horizontal_separation, Unset):
            horizontal_separation = UNSET
        else:
            horizontal_separation = Length.from_dict(_horizontal_separation)

        _vertical_separation = d.pop("vertical_separation", UNSET)
        vertical_separation: Length | Unset
        if isinstance(_vertical_separation, Unset):
            vertical_separation = UNSET
        else:
            vertical_separation = Length.from_dict(_vertical_separation)

        duct_bank = cls(
            conduit=conduit,
            tiers=tiers,
            horizontal_separation=horizontal_separation,
            vertical_separation=vertical_separation,
        )

        return duct_bank
