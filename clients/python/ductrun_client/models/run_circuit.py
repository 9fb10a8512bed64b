from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.service import Service

if TYPE_CHECKING:
    from ..models.circuit_fill import CircuitFill
    from ..models.circuit_pulls import CircuitPulls


T = TypeVar("T", bound="RunCircuit")


@_attrs_define
class RunCircuit:
    """One circuit.

    Attributes:
        ducts (list[str]):
        end (str):
        fills (list[CircuitFill]): In every conduit on its way.
        name (str):
        pulls (list[CircuitPulls]): From stop to stop.
        service (Service): What a circuit carries.
        start (str):
    """

    ducts: list[str]
    end: str
    fills: list[CircuitFill]
    name: str
    pulls: list[CircuitPulls]
    service: Service
    start: str
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ducts = self.ducts

        end = self.end

        fills = []
        for fills_item_data in self.fills:
            fills_item = fills_item_data.to_dict()
            fills.append(fills_item)

        name = self.name

        pulls = []
        for pulls_item_data in self.pulls:
            pulls_item = pulls_item_data.to_dict()
            pulls.append(pulls_item)

        service = self.service.value

        start = self.start

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ducts": ducts,
                "end": end,
                "fills": fills,
                "name": name,
                "pulls": pulls,
                "service": service,
                "start": start,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.circuit_fill import CircuitFill  # noqa: PLC0415
        from ..models.circuit_pulls import CircuitPulls  # noqa: PLC0415

        d = dict(src_dict)
        ducts = cast(list[str], d.pop("ducts"))

        end = d.pop("end")

        fills = []
        _fills = d.pop("fills")
        for fills_item_data in _fills:
            fills_item = CircuitFill.from_dict(fills_item_data)

            fills.append(fills_item)

        name = d.pop("name")

        pulls = []
        _pulls = d.pop("pulls")
        for pulls_item_data in _pulls:
            pulls_item = CircuitPulls.from_dict(pulls_item_data)

            pulls.append(pulls_item)

        service = Service(d.pop("service"))

        start = d.pop("start")

        run_circuit = cls(
            ducts=ducts,
            end=end,
            fills=fills,
            name=name,
            pulls=pulls,
            service=service,
            start=start,
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
