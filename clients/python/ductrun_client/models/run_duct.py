from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length


T = TypeVar("T", bound="RunDuct")


@_attrs_define
class RunDuct:
    """One duct of the run, from the lower left corner of the bank without its cover.

    It has no place where the first stretch takes no room and an outside diameter is not known.

    Attributes:
        circuits (list[str]): Names of the circuits that lie in it; none in a spare.
        name (str): Tier-position: tier 1 the bottom, position 1 the left.
        mandrel_diameter (Length | Unset): A length with its unit.
        outside_diameter (Length | Unset): A length with its unit.
        signal (bool | Unset): Whether it is for signals.
        x (Length | Unset): A length with its unit.
        y (Length | Unset): A length with its unit.
    """

    circuits: list[str]
    name: str
    mandrel_diameter: Length | Unset = UNSET
    outside_diameter: Length | Unset = UNSET
    signal: bool | Unset = UNSET
    x: Length | Unset = UNSET
    y: Length | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        circuits = self.circuits

        name = self.name

        mandrel_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mandrel_diameter, Unset):
            mandrel_diameter = self.mandrel_diameter.to_dict()

        outside_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.outside_diameter, Unset):
            outside_diameter = self.outside_diameter.to_dict()

        signal = self.signal

        x: dict[str, Any] | Unset = UNSET
        if not isinstance(self.x, Unset):
            x = self.x.to_dict()

        y: dict[str, Any] | Unset = UNSET
        if not isinstance(self.y, Unset):
            y = self.y.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "circuits": circuits,
                "name": name,
            }
        )
        if mandrel_diameter is not UNSET:
            field_dict["mandrel_diameter"] = mandrel_diameter
        if outside_diameter is not UNSET:
            field_dict["outside_diameter"] = outside_diameter
        if signal is not UNSET:
            field_dict["signal"] = signal
        if x is not UNSET:
            field_dict["x"] = x
        if y is not UNSET:
            field_dict["y"] = y

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        circuits = cast(list[str], d.pop("circuits"))

        name = d.pop("name")

        _mandrel_diameter = d.pop("mandrel_diameter", UNSET)
        mandrel_diameter: Length | Unset
        if isinstance(_mandrel_diameter, Unset):
            mandrel_diameter = UNSET
        else:
            mandrel_diameter = Length.from_dict(_mandrel_diameter)

        _outside_diameter = d.pop("outside_diameter", UNSET)
        outside_diameter: Length | Unset
        if isinstance(_outside_diameter, Unset):
            outside_diameter = UNSET
        else:
            outside_diameter = Length.from_dict(_outside_diameter)

        signal = d.pop("signal", UNSET)

        _x = d.pop("x", UNSET)
        x: Length | Unset
        if isinstance(_x, Unset):
            x = UNSET
        else:
            x = Length.from_dict(_x)

        _y = d.pop("y", UNSET)
        y: Length | Unset
        if isinstance(_y, Unset):
            y = UNSET
        else:
            y = Length.from_dict(_y)

        run_duct = cls(
            circuits=circuits,
            name=name,
            mandrel_diameter=mandrel_diameter,
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
