from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.run_circuit import RunCircuit
    from ..models.run_duct import RunDuct
    from ..models.run_stop import RunStop
    from ..models.run_stretch import RunStretch
    from ..models.takeoff import Takeoff


T = TypeVar("T", bound="DuctRunResult")


@_attrs_define
class DuctRunResult:
    """The run from end to end.

    Attributes:
        circuits (list[RunCircuit]): In the order given.
        duct_count (int):
        ducts (list[RunDuct]): The ducts of the first stretch.
        length (Length): A length with its unit.
        plan_length (Length): A length with its unit.
        spare_count (int): Ducts in which no circuit lies.
        stops (list[RunStop]): Ends and pull points in order.
        stretches (list[RunStretch]): In order.
        takeoff (Takeoff): All lines in the order of building, and their total by the caller's rates.
        mandrel_diameter (Length | Unset): A length with its unit.
        name (str | Unset):
        note (str | Unset):
    """

    circuits: list[RunCircuit]
    duct_count: int
    ducts: list[RunDuct]
    length: Length
    plan_length: Length
    spare_count: int
    stops: list[RunStop]
    stretches: list[RunStretch]
    takeoff: Takeoff
    mandrel_diameter: Length | Unset = UNSET
    name: str | Unset = UNSET
    note: str | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        circuits = []
        for circuits_item_data in self.circuits:
            circuits_item = circuits_item_data.to_dict()
            circuits.append(circuits_item)

        duct_count = self.duct_count

        ducts = []
        for ducts_item_data in self.ducts:
            ducts_item = ducts_item_data.to_dict()
            ducts.append(ducts_item)

        length = self.length.to_dict()

        plan_length = self.plan_length.to_dict()

        spare_count = self.spare_count

        stops = []
        for stops_item_data in self.stops:
            stops_item = stops_item_data.to_dict()
            stops.append(stops_item)

        stretches = []
        for stretches_item_data in self.stretches:
            stretches_item = stretches_item_data.to_dict()
            stretches.append(stretches_item)

        takeoff = self.takeoff.to_dict()

        mandrel_diameter: dict[str, Any] | Unset = UNSET
        if not isinstance(self.mandrel_diameter, Unset):
            mandrel_diameter = self.mandrel_diameter.to_dict()

        name = self.name

        note = self.note

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "circuits": circuits,
                "duct_count": duct_count,
                "ducts": ducts,
                "length": length,
                "plan_length": plan_length,
                "spare_count": spare_count,
                "stops": stops,
                "stretches": stretches,
                "takeoff": takeoff,
            }
        )
        if mandrel_diameter is not UNSET:
            field_dict["mandrel_diameter"] = mandrel_diameter
        if name is not UNSET:
            field_dict["name"] = name
        if note is not UNSET:
            field_dict["note"] = note

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.run_circuit import RunCircuit  # noqa: PLC0415
        from ..models.run_duct import RunDuct  # noqa: PLC0415
        from ..models.run_stop import RunStop  # noqa: PLC0415
        from ..models.run_stretch import RunStretch  # noqa: PLC0415
        from ..models.takeoff import Takeoff  # noqa: PLC0415

        d = dict(src_dict)
        circuits = []
        _circuits = d.pop("circuits")
        for circuits_item_data in _circuits:
            circuits_item = RunCircuit.from_dict(circuits_item_data)

            circuits.append(circuits_item)

        duct_count = d.pop("duct_count")

        ducts = []
        _ducts = d.pop("ducts")
        for ducts_item_data in _ducts:
            ducts_item = RunDuct.from_dict(ducts_item_data)

            ducts.append(ducts_item)

        length = Length.from_dict(d.pop("length"))

        plan_length = Length.from_dict(d.pop("plan_length"))

        spare_count = d.pop("spare_count")

        stops = []
        _stops = d.pop("stops")
        for stops_item_data in _stops:
            stops_item = RunStop.from_dict(stops_item_data)

            stops.append(stops_item)

        stretches = []
        _stretches = d.pop("stretches")
        for stretches_item_data in _stretches:
            stretches_item = RunStretch.from_dict(stretches_item_data)

            stretches.append(stretches_item)

        takeoff = Takeoff.from_dict(d.pop("takeoff"))

        _mandrel_diameter = d.pop("mandrel_diameter", UNSET)
        mandrel_diameter: Length | Unset
        if isinstance(_mandrel_diameter, Unset):
            mandrel_diameter = UNSET
        else:
            mandrel_diameter = Length.from_dict(_mandrel_diameter)

        name = d.pop("name", UNSET)

        note = d.pop("note", UNSET)

        duct_run_result = cls(
            circuits=circuits,
            duct_count=duct_count,
            ducts=ducts,
            length=length,
            plan_length=plan_length,
            spare_count=spare_count,
            stops=stops,
            stretches=stretches,
            takeoff=takeoff,
            mandrel_diameter=mandrel_diameter,
            name=name,
            note=note,
        )

        duct_run_result.additional_properties = d
        return duct_run_result

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
