from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="RunDuct")


@_attrs_define
class RunDuct:
    """One duct of the run, from the lower left corner of the bank without its cover.

    Attributes:
        circuits (list[str]): Names of the circuits that lie in it; none in a spare.
        name (str): Tier-position: tier 1 the bottom, position 1 the left.
        outside_diameter (Length): A length with its unit.
        signal (bool): Whether it is for signals.
        x (Length): A length with its unit.
        y (Length): A length with its unit.
    """

    circuits: list[str]
    name: str
    outside_diameter: Length
    signal: bool
    x: Length
    y: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        circuits = self.circuits

        name = self.name

        outside_diameter = self.outside_diameter.to_dict()

        signal = self.signal

        x = self.x.to_dict()

        y = self.y.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "circuits": circuits,
                "name": name,
                "outside_diameter": outside_diameter,
                "signal": signal,
                "x": x,
                "y": y,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        circuits = cast(list[str], d.pop("circuits"))

        name = d.pop("name")

        outside_diameter = Length.from_dict(d.pop("outside_diameter"))

        signal = d.pop("signal")

        x = Length.from_dict(d.pop("x"))

        y = Length.from_dict(d.pop("y"))

        run_duct = cls(
            circuits=circuits,
            name=name,
            outside_diameter=outside_diameter,
            signal=signal,
            x=x,
            y=y,
        )

        run_duct.additional_properties = d
        return run_duct

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
