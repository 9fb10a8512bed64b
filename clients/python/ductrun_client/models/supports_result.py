from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="SupportsResult")


@_attrs_define
class SupportsResult:
    """How far apart, how many and where.

    Attributes:
        anchor_positions (list[Length]): Where the run is fixed between them; its ends are fixed.
        end_distance (Length): A length with its unit.
        fitting_positions (list[Length]): Where the barrels of the fittings given are clamped.
        holding_strap_positions (list[Length]): Those of them that hold: with fittings the clamps of their barrels, and
            anchors without barrels; of metal and flexible conduit without fittings all. All others let the run slide.
        piston_reaches (list[Length]): Where their pistons end when fully open, in the same order.
        positions (list[Length]): Where they stand along the run.
        support_count (int): Straps of the run.
        support_spacing (Length): A length with its unit.
        actual_spacing (Length | Unset): A length with its unit.
    """

    anchor_positions: list[Length]
    end_distance: Length
    fitting_positions: list[Length]
    holding_strap_positions: list[Length]
    piston_reaches: list[Length]
    positions: list[Length]
    support_count: int
    support_spacing: Length
    actual_spacing: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        anchor_positions = []
        for anchor_positions_item_data in self.anchor_positions:
            anchor_positions_item = anchor_positions_item_data.to_dict()
            anchor_positions.append(anchor_positions_item)

        end_distance = self.end_distance.to_dict()

        fitting_positions = []
        for fitting_positions_item_data in self.fitting_positions:
            fitting_positions_item = fitting_positions_item_data.to_dict()
            fitting_positions.append(fitting_positions_item)

        holding_strap_positions = []
        for holding_strap_positions_item_data in self.holding_strap_positions:
            holding_strap_positions_item = holding_strap_positions_item_data.to_dict()
            holding_strap_positions.append(holding_strap_positions_item)

        piston_reaches = []
        for piston_reaches_item_data in self.piston_reaches:
            piston_reaches_item = piston_reaches_item_data.to_dict()
            piston_reaches.append(piston_reaches_item)

        positions = []
        for positions_item_data in self.positions:
            positions_item = positions_item_data.to_dict()
            positions.append(positions_item)

        support_count = self.support_count

        support_spacing = self.support_spacing.to_dict()

        actual_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.actual_spacing, Unset):
            actual_spacing = self.actual_spacing.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "anchor_positions": anchor_positions,
                "end_distance": end_distance,
                "fitting_positions": fitting_positions,
                "holding_strap_positions": holding_strap_positions,
                "piston_reaches": piston_reaches,
                "positions": positions,
                "support_count": support_count,
                "support_spacing": support_spacing,
            }
        )
        if actual_spacing is not UNSET:
            field_dict["actual_spacing"] = actual_spacing

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        anchor_positions = []
        _anchor_positions = d.pop("anchor_positions")
        for anchor_positions_item_data in _anchor_positions:
            anchor_positions_item = Length.from_dict(anchor_positions_item_data)

            anchor_positions.append(anchor_positions_item)

        end_distance = Length.from_dict(d.pop("end_distance"))

        fitting_positions = []
        _fitting_positions = d.pop("fitting_positions")
        for fitting_positions_item_data in _fitting_positions:
            fitting_positions_item = Length.from_dict(fitting_positions_item_data)

            fitting_positions.append(fitting_positions_item)

        holding_strap_positions = []
        _holding_strap_positions = d.pop("holding_strap_positions")
        for holding_strap_positions_item_data in _holding_strap_positions:
            holding_strap_positions_item = Length.from_dict(holding_strap_positions_item_data)

            holding_strap_positions.append(holding_strap_positions_item)

        piston_reaches = []
        _piston_reaches = d.pop("piston_reaches")
        for piston_reaches_item_data in _piston_reaches:
            piston_reaches_item = Length.from_dict(piston_reaches_item_data)

            piston_reaches.append(piston_reaches_item)

        positions = []
        _positions = d.pop("positions")
        for positions_item_data in _positions:
            positions_item = Length.from_dict(positions_item_data)

            positions.append(positions_item)

        support_count = d.pop("support_count")

        support_spacing = Length.from_dict(d.pop("support_spacing"))

        _actual_spacing = d.pop("actual_spacing", UNSET)
        actual_spacing: Length | Unset
        if isinstance(_actual_spacing, Unset):
            actual_spacing = UNSET
        else:
            actual_spacing = Length.from_dict(_actual_spacing)

        supports_result = cls(
            anchor_positions=anchor_positions,
            end_distance=end_distance,
            fitting_positions=fitting_positions,
            holding_strap_positions=holding_strap_positions,
            piston_reaches=piston_reaches,
            positions=positions,
            support_count=support_count,
            support_spacing=support_spacing,
            actual_spacing=actual_spacing,
        )

        supports_result.additional_properties = d
        return supports_result

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
