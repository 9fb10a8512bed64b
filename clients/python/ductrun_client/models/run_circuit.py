from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.service import Service
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.circuit_fill import CircuitFill
    from ..models.circuit_pulls import CircuitPulls
    from ..models.length import Length
    from ..models.voltage_drop_result import VoltageDropResult


T = TypeVar("T", bound="RunCircuit")


@_attrs_define
class RunCircuit:
    """One circuit.

    Attributes:
        ducts (list[str]):
        end (str):
        fills (list[CircuitFill]): In every conduit on its way.
        length (Length): A length with its unit.
        name (str):
        pulls (list[CircuitPulls]): From stop to stop.
        service (Service): What a circuit carries.
        start (str):
        voltage_drop (VoltageDropResult | Unset): What is lost, and what keeps within the limit.
    """

    ducts: list[str]
    end: str
    fills: list[CircuitFill]
    length: Length
    name: str
    pulls: list[CircuitPulls]
    service: Service
    start: str
    voltage_drop: VoltageDropResult | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ducts = self.ducts

        end = self.end

        fills = []
        for fills_item_data in self.fills:
            fills_item = fills_item_data.to_dict()
            fills.append(fills_item)

        length = self.length.to_dict()

        name = self.name

        pulls = []
        for pulls_item_data in self.pulls:
            pulls_item = pulls_item_data.to_dict()
            pulls.append(pulls_item)

        service = self.service.value

        start = self.start

        voltage_drop: dict[str, Any] | Unset = UNSET
        if not isinstance(self.voltage_drop, Unset):
            voltage_drop = self.voltage_drop.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ducts": ducts,
                "end": end,
                "fills": fills,
                "length": length,
                "name": name,
                "pulls": pulls,
                "service": service,
                "start": start,
            }
        )
        if voltage_drop is not UNSET:
            field_dict["voltage_drop"] = voltage_drop

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.circuit_fill import CircuitFill  # noqa: PLC0415
        from ..models.circuit_pulls import CircuitPulls  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.voltage_drop_result import VoltageDropResult  # noqa: PLC0415

        d = dict(src_dict)
        ducts = cast(list[str], d.pop("ducts"))

        end = d.pop("end")

        fills = []
        _fills = d.pop("fills")
        for fills_item_data in _fills:
            fills_item = CircuitFill.from_dict(fills_item_data)

            fills.append(fills_item)

        length = Length.from_dict(d.pop("length"))

        name = d.pop("name")

        pulls = []
        _pulls = d.pop("pulls")
        for pulls_item_data in _pulls:
            pulls_item = CircuitPulls.from_dict(pulls_item_data)

            pulls.append(pulls_item)

        service = Service(d.pop("service"))

        start = d.pop("start")

        _voltage_drop = d.pop("voltage_drop", UNSET)
        voltage_drop: VoltageDropResult | Unset
        if isinstance(_voltage_drop, Unset):
            voltage_drop = UNSET
        else:
            voltage_drop = VoltageDropResult.from_dict(_voltage_drop)

        run_circuit = cls(
            ducts=ducts,
            end=end,
            fills=fills,
            length=length,
            name=name,
            pulls=pulls,
            service=service,
            start=start,
            voltage_drop=voltage_drop,
        )

        run_circuit.additional_properties = d
        return run_circuit

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
