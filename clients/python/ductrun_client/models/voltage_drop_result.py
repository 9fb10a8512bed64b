from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.conductor_size import ConductorSize
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.current import Current
    from ..models.energy import Energy
    from ..models.length import Length
    from ..models.power import Power
    from ..models.resistance_per_length import ResistancePerLength
    from ..models.voltage import Voltage


T = TypeVar("T", bound="VoltageDropResult")


@_attrs_define
class VoltageDropResult:
    """What is lost, and what keeps within the limit.

    Attributes:
        current (Current): An electric current with its unit.
        drop (Voltage): A voltage with its unit.
        drop_percent (float): Of the voltage at the source.
        limit_percent (float): What it is held against.
        load_voltage (Voltage): A voltage with its unit.
        loss (Power): A power with its unit.
        reactance (ResistancePerLength): An electric resistance per length with its unit.
        resistance (ResistancePerLength): An electric resistance per length with its unit.
        table_drop (Voltage): A voltage with its unit.
        table_drop_percent (float): Of the voltage at the source.
        energy_loss (Energy | Unset): An energy with its unit.
        longest_length (Length | Unset): A length with its unit.
        smallest_size (ConductorSize | Unset): Sizes of conductors.
    """

    current: Current
    drop: Voltage
    drop_percent: float
    limit_percent: float
    load_voltage: Voltage
    loss: Power
    reactance: ResistancePerLength
    resistance: ResistancePerLength
    table_drop: Voltage
    table_drop_percent: float
    energy_loss: Energy | Unset = UNSET
    longest_length: Length | Unset = UNSET
    smallest_size: ConductorSize | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        current = self.current.to_dict()

        drop = self.drop.to_dict()

        drop_percent = self.drop_percent

        limit_percent = self.limit_percent

        load_voltage = self.load_voltage.to_dict()

        loss = self.loss.to_dict()

        reactance = self.reactance.to_dict()

        resistance = self.resistance.to_dict()

        table_drop = self.table_drop.to_dict()

        table_drop_percent = self.table_drop_percent

        energy_loss: dict[str, Any] | Unset = UNSET
        if not isinstance(self.energy_loss, Unset):
            energy_loss = self.energy_loss.to_dict()

        longest_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.longest_length, Unset):
            longest_length = self.longest_length.to_dict()

        smallest_size: str | Unset = UNSET
        if not isinstance(self.smallest_size, Unset):
            smallest_size = self.smallest_size.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "current": current,
                "drop": drop,
                "drop_percent": drop_percent,
                "limit_percent": limit_percent,
                "load_voltage": load_voltage,
                "loss": loss,
                "reactance": reactance,
                "resistance": resistance,
                "table_drop": table_drop,
                "table_drop_percent": table_drop_percent,
            }
        )
        if energy_loss is not UNSET:
            field_dict["energy_loss"] = energy_loss
        if longest_length is not UNSET:
            field_dict["longest_length"] = longest_length
        if smallest_size is not UNSET:
            field_dict["smallest_size"] = smallest_size

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.current import Current  # noqa: PLC0415
        from ..models.energy import Energy  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.power import Power  # noqa: PLC0415
        from ..models.resistance_per_length import ResistancePerLength  # noqa: PLC0415
        from ..models.voltage import Voltage  # noqa: PLC0415

        d = dict(src_dict)
        current = Current.from_dict(d.pop("current"))

        drop = Voltage.from_dict(d.pop("drop"))

        drop_percent = d.pop("drop_percent")

        limit_percent = d.pop("limit_percent")

        load_voltage = Voltage.from_dict(d.pop("load_voltage"))

        loss = Power.from_dict(d.pop("loss"))

        reactance = ResistancePerLength.from_dict(d.pop("reactance"))

        resistance = ResistancePerLength.from_dict(d.pop("resistance"))

        table_drop = Voltage.from_dict(d.pop("table_drop"))

        table_drop_percent = d.pop("table_drop_percent")

        _energy_loss = d.pop("energy_loss", UNSET)
        energy_loss: Energy | Unset
        if isinstance(_energy_loss, Unset):
            energy_loss = UNSET
        else:
            energy_loss = Energy.from_dict(_energy_loss)

        _longest_length = d.pop("longest_length", UNSET)
        longest_length: Length | Unset
        if isinstance(_longest_length, Unset):
            longest_length = UNSET
        else:
            longest_length = Length.from_dict(_longest_length)

        _smallest_size = d.pop("smallest_size", UNSET)
        smallest_size: ConductorSize | Unset
        if isinstance(_smallest_size, Unset):
            smallest_size = UNSET
        else:
            smallest_size = ConductorSize(_smallest_size)

        voltage_drop_result = cls(
            current=current,
            drop=drop,
            drop_percent=drop_percent,
            limit_percent=limit_percent,
            load_voltage=load_voltage,
            loss=loss,
            reactance=reactance,
            resistance=resistance,
            table_drop=table_drop,
            table_drop_percent=table_drop_percent,
            energy_loss=energy_loss,
            longest_length=longest_length,
            smallest_size=smallest_size,
        )

        voltage_drop_result.additional_properties = d
        return voltage_drop_result

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
