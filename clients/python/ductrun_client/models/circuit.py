from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.service import Service
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_line import CableLine
    from ..models.pull_practice import PullPractice
    from ..models.run_load import RunLoad
    from ..models.voltage import Voltage


T = TypeVar("T", bound="Circuit")


@_attrs_define
class Circuit:
    """Alike cables in one or several ducts.

    Attributes:
        cables (list[CableLine] | Unset): The cables in each of its ducts; these or same_as.
        duct_count (int | Unset): In place of ducts: how many, the first that are free from the bottom left.
        ducts (list[str] | Unset): The ducts it lies in, tier-position: tier 1 is the bottom one, position 1 the left
            one, looking from start to end.
        end (str | Unset): Name of the end or pull point where it ends.
        load (RunLoad | Unset): What a circuit carries, at the voltage it has; its sets are those of its ducts.
        name (str | Unset): Its name.
        pulling (PullPractice | Unset): How cables are pulled: friction, gear, and what they may bear.
        same_as (str | Unset): Name of the circuit whose cables it has.
        service (Service | Unset): What a circuit carries.
        start (str | Unset): Name of the end or pull point where it begins.
        voltage (Voltage | Unset): A voltage with its unit.
    """

    cables: list[CableLine] | Unset = UNSET
    duct_count: int | Unset = UNSET
    ducts: list[str] | Unset = UNSET
    end: str | Unset = UNSET
    load: RunLoad | Unset = UNSET
    name: str | Unset = UNSET
    pulling: PullPractice | Unset = UNSET
    same_as: str | Unset = UNSET
    service: Service | Unset = UNSET
    start: str | Unset = UNSET
    voltage: Voltage | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        cables: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.cables, Unset):
            cables = []
            for cables_item_data in self.cables:
                cables_item = cables_item_data.to_dict()
                cables.append(cables_item)

        duct_count = self.duct_count

        ducts: list[str] | Unset = UNSET
        if not isinstance(self.ducts, Unset):
            ducts = self.ducts

        end = self.end

        load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.load, Unset):
            load = self.load.to_dict()

        name = self.name

        pulling: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pulling, Unset):
            pulling = self.pulling.to_dict()

        same_as = self.same_as

        service: str | Unset = UNSET
        if not isinstance(self.service, Unset):
            service = self.service.value

        start = self.start

        voltage: dict[str, Any] | Unset = UNSET
        if not isinstance(self.voltage, Unset):
            voltage = self.voltage.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if cables is not UNSET:
            field_dict["cables"] = cables
        if duct_count is not UNSET:
            field_dict["duct_count"] = duct_count
        if ducts is not UNSET:
            field_dict["ducts"] = ducts
        if end is not UNSET:
            field_dict["end"] = end
        if load is not UNSET:
            field_dict["load"] = load
        if name is not UNSET:
            field_dict["name"] = name
        if pulling is not UNSET:
            field_dict["pulling"] = pulling
        if same_as is not UNSET:
            field_dict["same_as"] = same_as
        if service is not UNSET:
            field_dict["service"] = service
        if start is not UNSET:
            field_dict["start"] = start
        if voltage is not UNSET:
            field_dict["voltage"] = voltage

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_line import CableLine  # noqa: PLC0415
        from ..models.pull_practice import PullPractice  # noqa: PLC0415
        from ..models.run_load import RunLoad  # noqa: PLC0415
        from ..models.voltage import Voltage  # noqa: PLC0415

        d = dict(src_dict)
        _cables = d.pop("cables", UNSET)
        cables: list[CableLine] | Unset = UNSET
        if _cables is not UNSET:
            cables = []
            for cables_item_data in _cables:
                cables_item = CableLine.from_dict(cables_item_data)

                cables.append(cables_item)

        duct_count = d.pop("duct_count", UNSET)

        ducts = cast(list[str], d.pop("ducts", UNSET))

        end = d.pop("end", UNSET)

        _load = d.pop("load", UNSET)
        load: RunLoad | Unset
        if isinstance(_load, Unset):
            load = UNSET
        else:
            load = RunLoad.from_dict(_load)

        name = d.pop("name", UNSET)

        _pulling = d.pop("pulling", UNSET)
        pulling: PullPractice | Unset
        if isinstance(_pulling, Unset):
            pulling = UNSET
        else:
            pulling = PullPractice.from_dict(_pulling)

        same_as = d.pop("same_as", UNSET)

        _service = d.pop("service", UNSET)
        service: Service | Unset
        if isinstance(_service, Unset):
            service = UNSET
        else:
            service = Service(_service)

        start = d.pop("start", UNSET)

        _voltage = d.pop("voltage", UNSET)
        voltage: Voltage | Unset
        if isinstance(_voltage, Unset):
            voltage = UNSET
        else:
            voltage = Voltage.from_dict(_voltage)

        circuit = cls(
            cables=cables,
            duct_count=duct_count,
            ducts=ducts,
            end=end,
            load=load,
            name=name,
            pulling=pulling,
            same_as=same_as,
            service=service,
            start=start,
            voltage=voltage,
        )

        return circuit
