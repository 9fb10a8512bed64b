from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.any_quantity import AnyQuantity
    from ..models.refused_assumption import RefusedAssumption


T = TypeVar("T", bound="ProblemError")


@_attrs_define
class ProblemError:
    """One fault of a request.

    Attributes:
        code (str): Stable code of the fault. Of a request and its query: missing, unknown_member, wrong_type,
            not_an_integer, not_allowed, kind_missing, unknown_kind, out_of_range, too_few, too_many, too_short, too_long,
            control_character, unknown_parameter, repeated, assumption_needed; or one of a calculation.
        message (str): What is wrong and what to do next.
        allowed_values (list[str] | Unset): The values or names that are taken.
        assumption (RefusedAssumption | Unset): The value that would have been taken for want of one; a quantity too,
            where it is a figure.
        maximum (AnyQuantity | Unset): A value with its unit, of whatever dimension the text beside it says.
        minimum (AnyQuantity | Unset): A value with its unit, of whatever dimension the text beside it says.
        parameter (str | Unset): Name of the query parameter.
        pointer (str | Unset): JSON Pointer of the member, as a URI fragment.
        suggestion (str | Unset): The one of them that was probably meant: it was not taken for it.
    """

    code: str
    message: str
    allowed_values: list[str] | Unset = UNSET
    assumption: RefusedAssumption | Unset = UNSET
    maximum: AnyQuantity | Unset = UNSET
    minimum: AnyQuantity | Unset = UNSET
    parameter: str | Unset = UNSET
    pointer: str | Unset = UNSET
    suggestion: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        code = self.code

        message = self.message

        allowed_values: list[str] | Unset = UNSET
        if not isinstance(self.allowed_values, Unset):
            allowed_values = self.allowed_values

        assumption: dict[str, Any] | Unset = UNSET
        if not isinstance(self.assumption, Unset):
            assumption = self.assumption.to_dict()

        maximum: dict[str, Any] | Unset = UNSET
        if not isinstance(self.maximum, Unset):
            maximum = self.maximum.to_dict()

        minimum: dict[str, Any] | Unset = UNSET
        if not isinstance(self.minimum, Unset):
            minimum = self.minimum.to_dict()

        parameter = self.parameter

        pointer = self.pointer

        suggestion = self.suggestion

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "code": code,
                "message": message,
            }
        )
        if allowed_values is not UNSET:
            field_dict["allowed_values"] = allowed_values
        if assumption is not UNSET:
            field_dict["assumption"] = assumption
        if maximum is not UNSET:
            field_dict["maximum"] = maximum
        if minimum is not UNSET:
            field_dict["minimum"] = minimum
        if parameter is not UNSET:
            field_dict["parameter"] = parameter
        if pointer is not UNSET:
            field_dict["pointer"] = pointer
        if suggestion is not UNSET:
            field_dict["suggestion"] = suggestion

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.any_quantity import AnyQuantity  # noqa: PLC0415
        from ..models.refused_assumption import RefusedAssumption  # noqa: PLC0415

        d = dict(src_dict)
        code = d.pop("code")

        message = d.pop("message")

        allowed_values = cast(list[str], d.pop("allowed_values", UNSET))

        _assumption = d.pop("assumption", UNSET)
        assumption: RefusedAssumption | Unset
        if isinstance(_assumption, Unset):
            assumption = UNSET
        else:
            assumption = RefusedAssumption.from_dict(_assumption)

        _maximum = d.pop("maximum", UNSET)
        maximum: AnyQuantity | Unset
        if isinstance(_maximum, Unset):
            maximum = UNSET
        else:
            maximum = AnyQuantity.from_dict(_maximum)

        _minimum = d.pop("minimum", UNSET)
        minimum: AnyQuantity | Unset
        if isinstance(_minimum, Unset):
            minimum = UNSET
        else:
            minimum = AnyQuantity.from_dict(_minimum)

        parameter = d.pop("parameter", UNSET)

        pointer = d.pop("pointer", UNSET)

        suggestion = d.pop("suggestion", UNSET)

        problem_error = cls(
            code=code,
            message=message,
            allowed_values=allowed_values,
            assumption=assumption,
            maximum=maximum,
            minimum=minimum,
            parameter=parameter,
            pointer=pointer,
            suggestion=suggestion,
        )

        problem_error.additional_properties = d
        return problem_error

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
