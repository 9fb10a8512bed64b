from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_coefficient import ExpansionCoefficient
    from ..models.length import Length
    from ..models.run_movement import RunMovement
    from ..models.temperature_difference import TemperatureDifference
    from ..models.travel_option import TravelOption


T = TypeVar("T", bound="ExpansionResult")


@_attrs_define
class ExpansionResult:
    """How far the runs move and what takes it up; runs held by the ground have no movement to show.

    Attributes:
        coefficient (ExpansionCoefficient): A coefficient of linear thermal expansion with its unit.
        fitting_count (int): Expansion fittings of all runs together.
        fitting_required (bool): Whether any run reaches what calls for a fitting.
        runs (list[RunMovement]): Each straight run; none if they are buried or encased.
        temperature_difference (TemperatureDifference): A difference between two temperatures with its unit.
        travel_options (list[TravelOption]): How many fittings of each travel that is sold would be needed.
        fitting_spacing (Length | Unset): A length with its unit.
        largest_difference_without_fitting (TemperatureDifference | Unset): A difference between two temperatures with
            its unit.
        length_change (Length | Unset): A length with its unit.
        longest_run_without_fitting (Length | Unset): A length with its unit.
        piston_opening (Length | Unset): A length with its unit.
        travel_needed (Length | Unset): A length with its unit.
    """

    coefficient: ExpansionCoefficient
    fitting_count: int
    fitting_required: bool
    runs: list[RunMovement]
    temperature_difference: TemperatureDifference
    travel_options: list[TravelOption]
    fitting_spacing: Length | Unset = UNSET
    largest_difference_without_fitting: TemperatureDifference | Unset = UNSET
    length_change: Length | Unset = UNSET
    longest_run_without_fitting: Length | Unset = UNSET
    piston_opening: Length | Unset = UNSET
    travel_needed: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        coefficient = self.coefficient.to_dict()

        fitting_count = self.fitting_count

        fitting_required = self.fitting_required

        runs = []
        for runs_item_data in self.runs:
            runs_item = runs_item_data.to_dict()
            runs.append(runs_item)

        temperature_difference = self.temperature_difference.to_dict()

        travel_options = []
        for travel_options_item_data in self.travel_options:
            travel_options_item = travel_options_item_data.to_dict()
            travel_options.append(travel_options_item)

        fitting_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_spacing, Unset):
            fitting_spacing = self.fitting_spacing.to_dict()

        largest_difference_without_fitting: dict[str, Any] | Unset = UNSET
        if not isinstance(self.largest_difference_without_fitting, Unset):
            largest_difference_without_fitting = self.largest_difference_without_fitting.to_dict()

        length_change: dict[str, Any] | Unset = UNSET
        if not isinstance(self.length_change, Unset):
            length_change = self.length_change.to_dict()

        longest_run_without_fitting: dict[str, Any] | Unset = UNSET
        if not isinstance(self.longest_run_without_fitting, Unset):
            longest_run_without_fitting = self.longest_run_without_fitting.to_dict()

        piston_opening: dict[str, Any] | Unset = UNSET
        if not isinstance(self.piston_opening, Unset):
            piston_opening = self.piston_opening.to_dict()

        travel_needed: dict[str, Any] | Unset = UNSET
        if not isinstance(self.travel_needed, Unset):
            travel_needed = self.travel_needed.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "coefficient": coefficient,
                "fitting_count": fitting_count,
                "fitting_required": fitting_required,
                "runs": runs,
                "temperature_difference": temperature_difference,
                "travel_options": travel_options,
            }
        )
        if fitting_spacing is not UNSET:
            field_dict["fitting_spacing"] = fitting_spacing
        if largest_difference_without_fitting is not UNSET:
            field_dict["largest_difference_without_fitting"] = largest_difference_without_fitting
        if length_change is not UNSET:
            field_dict["length_change"] = length_change
        if longest_run_without_fitting is not UNSET:
            field_dict["longest_run_without_fitting"] = longest_run_without_fitting
        if piston_opening is not UNSET:
            field_dict["piston_opening"] = piston_opening
        if travel_needed is not UNSET:
            field_dict["travel_needed"] = travel_needed

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_coefficient import ExpansionCoefficient  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.run_movement import RunMovement  # noqa: PLC0415
        from ..models.temperature_difference import TemperatureDifference  # noqa: PLC0415
        from ..models.travel_option import TravelOption  # noqa: PLC0415

        d = dict(src_dict)
        coefficient = ExpansionCoefficient.from_dict(d.pop("coefficient"))

        fitting_count = d.pop("fitting_count")

        fitting_required = d.pop("fitting_required")

        runs = []
        _runs = d.pop("runs")
        for runs_item_data in _runs:
            runs_item = RunMovement.from_dict(runs_item_data)

            runs.append(runs_item)

        temperature_difference = TemperatureDifference.from_dict(d.pop("temperature_difference"))

        travel_options = []
        _travel_options = d.pop("travel_options")
        for travel_options_item_data in _travel_options:
            travel_options_item = TravelOption.from_dict(travel_options_item_data)

            travel_options.append(travel_options_item)

        _fitting_spacing = d.pop("fitting_spacing", UNSET)
        fitting_spacing: Length | Unset
        if isinstance(_fitting_spacing, Unset):
            fitting_spacing = UNSET
        else:
            fitting_spacing = Length.from_dict(_fitting_spacing)

        _largest_difference_without_fitting = d.pop("largest_difference_without_fitting", UNSET)
        largest_difference_without_fitting: TemperatureDifference | Unset
        if isinstance(_largest_difference_without_fitting, Unset):
            largest_difference_without_fitting = UNSET
        else:
            largest_difference_without_fitting = TemperatureDifference.from_dict(
                _largest_difference_without_fitting
            )

        _length_change = d.pop("length_change", UNSET)
        length_change: Length | Unset
        if isinstance(_length_change, Unset):
            length_change = UNSET
        else:
            length_change = Length.from_dict(_length_change)

        _longest_run_without_fitting = d.pop("longest_run_without_fitting", UNSET)
        longest_run_without_fitting: Length | Unset
        if isinstance(_longest_run_without_fitting, Unset):
            longest_run_without_fitting = UNSET
        else:
            longest_run_without_fitting = Length.from_dict(_longest_run_without_fitting)

        _piston_opening = d.pop("piston_opening", UNSET)
        piston_opening: Length | Unset
        if isinstance(_piston_opening, Unset):
            piston_opening = UNSET
        else:
            piston_opening = Length.from_dict(_piston_opening)

        _travel_needed = d.pop("travel_needed", UNSET)
        travel_needed: Length | Unset
        if isinstance(_travel_needed, Unset):
            travel_needed = UNSET
        else:
            travel_needed = Length.from_dict(_travel_needed)

        expansion_result = cls(
            coefficient=coefficient,
            fitting_count=fitting_count,
            fitting_required=fitting_required,
            runs=runs,
            temperature_difference=temperature_difference,
            travel_options=travel_options,
            fitting_spacing=fitting_spacing,
            largest_difference_without_fitting=largest_difference_without_fitting,
            length_change=length_change,
            longest_run_without_fitting=longest_run_without_fitting,
            piston_opening=piston_opening,
            travel_needed=travel_needed,
        )

        expansion_result.additional_properties = d
        return expansion_result

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
