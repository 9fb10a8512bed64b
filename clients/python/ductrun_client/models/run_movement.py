from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.piston_opening import PistonOpening


T = TypeVar("T", bound="RunMovement")


@_attrs_define
class RunMovement:
    """One straight run.

    Attributes:
        anchor_positions (list[Length]): Where the run is fixed between them; its ends are fixed.
        fitting_count (int): Fittings that share the change; 0 if none is required.
        fitting_positions (list[Length]): Where the barrels are clamped, one for each fitting.
        fitting_required (bool): Whether the change reaches what calls for a fitting.
        holding_strap_positions (list[Length]): Straps that hold: the clamps of the barrels, and the anchors without
            barrels. All others let the run slide.
        length (Length): A length with its unit.
        length_change (Length): A length with its unit.
        piston_openings (list[PistonOpening]): Openings at the temperatures asked for, the installation first.
        piston_reaches (list[Length]): Where the pistons end when fully open, in the order of the fittings: between a
            barrel's clamp and this place no strap may stand.
        travel_used_percent (float | Unset): Share of the travel of a fitting that its movement uses.
    """

    anchor_positions: list[Length]
    fitting_count: int
    fitting_positions: list[Length]
    fitting_required: bool
    holding_strap_positions: list[Length]
    length: Length
    length_change: Length
    piston_openings: list[PistonOpening]
    piston_reaches: list[Length]
    travel_used_percent: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        anchor_positions = []
        for anchor_positions_item_data in self.anchor_positions:
            anchor_positions_item = anchor_positions_item_data.to_dict()
            anchor_positions.append(anchor_positions_item)

        fitting_count = self.fitting_count

        fitting_positions = []
        for fitting_positions_item_data in self.fitting_positions:
            fitting_positions_item = fitting_positions_item_data.to_dict()
            fitting_positions.append(fitting_positions_item)

        fitting_required = self.fitting_required

        holding_strap_positions = []
        for holding_strap_positions_item_data in self.holding_strap_positions:
            holding_strap_positions_item = holding_strap_positions_item_data.to_dict()
            holding_strap_positions.append(holding_strap_positions_item)

        length = self.length.to_dict()

        length_change = self.length_change.to_dict()

        piston_openings = []
        for piston_openings_item_data in self.piston_openings:
            piston_openings_item = piston_openings_item_data.to_dict()
            piston_openings.append(piston_openings_item)

        piston_reaches = []
        for piston_reaches_item_data in self.piston_reaches:
            piston_reaches_item = piston_reaches_item_data.to_dict()
            piston_reaches.append(piston_reaches_item)

        travel_used_percent = self.travel_used_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "anchor_positions": anchor_positions,
                "fitting_count": fitting_count,
                "fitting_positions": fitting_positions,
                "fitting_required": fitting_required,
                "holding_strap_positions": holding_strap_positions,
                "length": length,
                "length_change": length_change,
                "piston_openings": piston_openings,
                "piston_reaches": piston_reaches,
            }
        )
        if travel_used_percent is not UNSET:
            field_dict["travel_used_percent"] = travel_used_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.piston_opening import PistonOpening  # noqa: PLC0415

        d = dict(src_dict)
        anchor_positions = []
        _anchor_positions = d.pop("anchor_positions")
        for anchor_positions_item_data in _anchor_positions:
            anchor_positions_item = Length.from_dict(anchor_positions_item_data)

            anchor_positions.append(anchor_positions_item)

        fitting_count = d.pop("fitting_count")

        fitting_positions = []
        _fitting_positions = d.pop("fitting_positions")
        for fitting_positions_item_data in _fitting_positions:
            fitting_positions_item = Length.from_dict(fitting_positions_item_data)

            fitting_positions.append(fitting_positions_item)

        fitting_required = d.pop("fitting_required")

        holding_strap_positions = []
        _holding_strap_positions = d.pop("holding_strap_positions")
        for holding_strap_positions_item_data in _holding_strap_positions:
            holding_strap_positions_item = Length.from_dict(holding_strap_positions_item_data)

            holding_strap_positions.append(holding_strap_positions_item)

        length = Length.from_dict(d.pop("length"))

        length_change = Length.from_dict(d.pop("length_change"))

        piston_openings = []
        _piston_openings = d.pop("piston_openings")
        for piston_openings_item_data in _piston_openings:
            piston_openings_item = PistonOpening.from_dict(piston_openings_item_data)

            piston_openings.append(piston_openings_item)

        piston_reaches = []
        _piston_reaches = d.pop("piston_reaches")
        for piston_reaches_item_data in _piston_reaches:
            piston_reaches_item = Length.from_dict(piston_reaches_item_data)

            piston_reaches.append(piston_reaches_item)

        travel_used_percent = d.pop("travel_used_percent", UNSET)

        run_movement = cls(
            anchor_positions=anchor_positions,
            fitting_count=fitting_count,
            fitting_positions=fitting_positions,
            fitting_required=fitting_required,
            holding_strap_positions=holding_strap_positions,
            length=length,
            length_change=length_change,
            piston_openings=piston_openings,
            piston_reaches=piston_reaches,
            travel_used_percent=travel_used_percent,
        )

        run_movement.additional_properties = d
        return run_movement

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
