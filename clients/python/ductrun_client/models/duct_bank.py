from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.bank_alignment import BankAlignment
from ..models.separation_measure import SeparationMeasure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.ducts_beside import DuctsBeside
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="DuctBank")


@_attrs_define
class DuctBank:
    """Ducts in tiers: of one kind (tiers), or of several (tier_ducts).

    Attributes:
        conduit (ListedConduit | MeasuredConduit):
        alignment (BankAlignment | Unset): Alignments of tiers of different width.
        horizontal_separation (Length | Unset): A length with its unit.
        power_signal_separation (Length | Unset): A length with its unit.
        separation_measure (SeparationMeasure | Unset): How separations are measured.
        signal_ducts (list[int] | Unset): How many ducts of each tier, the last ones, carry signals beside power.
        tier_ducts (list[list[DuctsBeside]] | Unset): In place of tiers, where ducts differ: those of each tier from
            left to right, the bottom tier first. The ducts of a tier stand on one level.
        tiers (list[int] | Unset): Ducts in each tier, the bottom tier first.
        vertical_separation (Length | Unset): A length with its unit.
    """

    conduit: ListedConduit | MeasuredConduit
    alignment: BankAlignment | Unset = UNSET
    horizontal_separation: Length | Unset = UNSET
    power_signal_separation: Length | Unset = UNSET
    separation_measure: SeparationMeasure | Unset = UNSET
    signal_ducts: list[int] | Unset = UNSET
    tier_ducts: list[list[DuctsBeside]] | Unset = UNSET
    tiers: list[int] | Unset = UNSET
    vertical_separation: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        conduit: dict[str, Any]
        if isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        alignment: str | Unset = UNSET
        if not isinstance(self.alignment, Unset):
            alignment = self.alignment.value

        horizontal_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.horizontal_separation, Unset):
            horizontal_separation = self.horizontal_separation.to_dict()

        power_signal_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.power_signal_separation, Unset):
            power_signal_separation = self.power_signal_separation.to_dict()

        separation_measure: str | Unset = UNSET
        if not isinstance(self.separation_measure, Unset):
            separation_measure = self.separation_measure.value

        signal_ducts: list[int] | Unset = UNSET
        if not isinstance(self.signal_ducts, Unset):
            signal_ducts = self.signal_ducts

        tier_ducts: list[list[dict[str, Any]]] | Unset = UNSET
        if not isinstance(self.tier_ducts, Unset):
            tier_ducts = []
            for tier_ducts_item_data in self.tier_ducts:
                tier_ducts_item = []
                for tier_ducts_item_item_data in tier_ducts_item_data:
                    tier_ducts_item_item = tier_ducts_item_item_data.to_dict()
                    tier_ducts_item.append(tier_ducts_item_item)

                tier_ducts.append(tier_ducts_item)

        tiers: list[int] | Unset = UNSET
        if not isinstance(self.tiers, Unset):
            tiers = self.tiers

        vertical_separation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.vertical_separation, Unset):
            vertical_separation = self.vertical_separation.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "conduit": conduit,
            }
        )
        if alignment is not UNSET:
            field_dict["alignment"] = alignment
        if horizontal_separation is not UNSET:
            field_dict["horizontal_separation"] = horizontal_separation
        if power_signal_separation is not UNSET:
            field_dict["power_signal_separation"] = power_signal_separation
        if separation_measure is not UNSET:
            field_dict["separation_measure"] = separation_measure
        if signal_ducts is not UNSET:
            field_dict["signal_ducts"] = signal_ducts
        if tier_ducts is not UNSET:
            field_dict["tier_ducts"] = tier_ducts
        if tiers is not UNSET:
            field_dict["tiers"] = tiers
        if vertical_separation is not UNSET:
            field_dict["vertical_separation"] = vertical_separation

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.ducts_beside import DuctsBeside  # noqa: PLC0415
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

        _alignment = d.pop("alignment", UNSET)
        alignment: BankAlignment | Unset
        if isinstance(_alignment, Unset):
            alignment = UNSET
        else:
            alignment = BankAlignment(_alignment)

        _horizontal_separation = d.pop("horizontal_separation", UNSET)
        horizontal_separation: Length | Unset
        if isinstance(_horizontal_separation, Unset):
            horizontal_separation = UNSET
        else:
            horizontal_separation = Length.from_dict(_horizontal_separation)

        _power_signal_separation = d.pop("power_signal_separation", UNSET)
        power_signal_separation: Length | Unset
        if isinstance(_power_signal_separation, Unset):
            power_signal_separation = UNSET
        else:
            power_signal_separation = Length.from_dict(_power_signal_separation)

        _separation_measure = d.pop("separation_measure", UNSET)
        separation_measure: SeparationMeasure | Unset
        if isinstance(_separation_measure, Unset):
            separation_measure = UNSET
        else:
            separation_measure = SeparationMeasure(_separation_measure)

        signal_ducts = cast(list[int], d.pop("signal_ducts", UNSET))

        _tier_ducts = d.pop("tier_ducts", UNSET)
        tier_ducts: list[list[DuctsBeside]] | Unset = UNSET
        if _tier_ducts is not UNSET:
            tier_ducts = []
            for tier_ducts_item_data in _tier_ducts:
                tier_ducts_item = []
                _tier_ducts_item = tier_ducts_item_data
                for tier_ducts_item_item_data in _tier_ducts_item:
                    tier_ducts_item_item = DuctsBeside.from_dict(tier_ducts_item_item_data)

                    tier_ducts_item.append(tier_ducts_item_item)

                tier_ducts.append(tier_ducts_item)

        tiers = cast(list[int], d.pop("tiers", UNSET))

        _vertical_separation = d.pop("vertical_separation", UNSET)
        vertical_separation: Length | Unset
        if isinstance(_vertical_separation, Unset):
            vertical_separation = UNSET
        else:
            vertical_separation = Length.from_dict(_vertical_separation)

        duct_bank = cls(
            conduit=conduit,
            alignment=alignment,
            horizontal_separation=horizontal_separation,
            power_signal_separation=power_signal_separation,
            separation_measure=separation_measure,
            signal_ducts=signal_ducts,
            tier_ducts=tier_ducts,
            tiers=tiers,
            vertical_separation=vertical_separation,
        )

        return duct_bank
