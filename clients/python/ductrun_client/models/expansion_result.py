from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.temperature_difference import TemperatureDifference


T = TypeVar("T", bound="ExpansionResult")


@_attrs_define
class ExpansionResult:
    """How far the run moves and what takes it up.

    Attributes:
        fitting_count (int): Expansion fittings that share the change; 0 if none is required.
        fitting_required (bool): Whether the change reaches the 1/4 in trigger.
        largest_difference_without_fitting (TemperatureDifference): A difference between two temperatures with its unit.
        length_change (Length): A length with its unit.
        longest_run_without_fitting (Length): A length with its unit.
        temperature_difference (TemperatureDifference): A difference between two temperatures with its unit.
        fitting_spacing (Length | Unset): A length with its unit.
        piston_opening (Length | Unset): A length with its unit.
    """

    fitting_count: int
    fitting_required: bool
    largest_difference_without_fitting: TemperatureDifference
    length_change: Length
    longest_run_without_fitting: Length
    temperature_difference: TemperatureDifference
    fitting_spacing: Length | Unset = UNSET
    piston_opening: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        fitting_count = self.fitting_count

        fitting_required = self.fitting_required

        largest_difference_without_fitting = self.largest_difference_without_fitting.to_dict()

        length_change = self.length_change.to_dict()

        longest_run_without_fitting = self.longest_run_without_fitting.to_dict()

        temperature_difference = self.temperature_difference.to_dict()

        fitting_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_spacing, Unset):
            fitting_spacing = self.fitting_spacing.to_dict()

        piston_opening: dict[str, Any] | Unset = UNSET
        if not isinstance(self.piston_opening, Unset):
            piston_opening = self.piston_opening.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "fitting_count": fitting_count,
                "fitting_required": fitting_required,
                "largest_difference_without_fitting": largest_difference_without_fitting,
                "length_change": length_change,
                "longest_run_without_fitting": longest_run_without_fitting,
                "temperature_difference": temperature_difference,
            }
        )
        if fitting_spacing is not UNSET:
            field_dict["fitting_spacing"] = fitting_spacing
        if piston_opening is not UNSET:
            field_dict["piston_opening"] = piston_opening

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature_difference import TemperatureDifference  # noqa: PLC0415

        d = dict(src_dict)
        fitting_count = d.pop("fitting_count")

        fitting_required = d.pop("fitting_required")

        largest_difference_without_fitting = TemperatureDifference.from_dict(
            d.pop("largest_difference_without_fitting")
        )

        length_change = Length.from_dict(d.pop("length_change"))

        longest_run_without_fitting = Length.from_dict(d.pop("longest_run_without_fitting"))

        temperature_difference = TemperatureDifference.from_dict(d.pop("temperature_difference"))

        _fitting_spacing = d.pop("fitting_spacing", UNSET)
        fitting_spacing: Length | Unset
        if isinstance(_fitting_spacing, Unset):
            fitting_spacing = UNSET
        else:
            fitting_spacing = Length.from_dict(_fitting_spacing)

        _piston_opening = d.pop("piston_opening", UNSET)
        piston_opening: Length | Unset
        if isinstance(_piston_opening, Unset):
            piston_opening = UNSET
        else:
            piston_opening = Length.from_dict(_piston_opening)

        expansion_result = cls(
            fitting_count=fitting_count,
            fitting_required=fitting_required,
            largest_difference_without_fitting=largest_difference_without_fitting,
            length_change=length_change,
            longest_run_without_fitting=longest_run_without_fitting,
            temperature_difference=temperature_difference,
            fitting_spacing=fitting_spacing,
            piston_opening=piston_opening,
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
