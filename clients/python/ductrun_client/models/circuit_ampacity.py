from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.current import Current
    from ..models.grounding_size import GroundingSize
    from ..models.temperature import Temperature


T = TypeVar("T", bound="CircuitAmpacity")


@_attrs_define
class CircuitAmpacity:
    """One circuit, all its sets together.

    Attributes:
        conductor_current (Current): An electric current with its unit.
        conductor_temperature (Temperature): A temperature with its unit.
        current (Current): An electric current with its unit.
        ducts (list[str]): Its ducts.
        parallel_count (int): Sets in parallel.
        temperature_limit (Temperature): A temperature with its unit.
        adjusted_table_ampacity (Current | Unset): An electric current with its unit.
        ampacity (Current | Unset): An electric current with its unit.
        grounding_conductor (GroundingSize | Unset): The least equipment grounding conductor in every duct of a circuit.
        name (str | Unset): What the request calls it.
        table_ampacity (Current | Unset): An electric current with its unit.
        terminal_ampacity (Current | Unset): An electric current with its unit.
        terminal_temperature (Temperature | Unset): A temperature with its unit.
        verdict (Verdict | Unset): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
    """

    conductor_current: Current
    conductor_temperature: Temperature
    current: Current
    ducts: list[str]
    parallel_count: int
    temperature_limit: Temperature
    adjusted_table_ampacity: Current | Unset = UNSET
    ampacity: Current | Unset = UNSET
    grounding_conductor: GroundingSize | Unset = UNSET
    name: str | Unset = UNSET
    table_ampacity: Current | Unset = UNSET
    terminal_ampacity: Current | Unset = UNSET
    terminal_temperature: Temperature | Unset = UNSET
    verdict: Verdict | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        conductor_current = self.conductor_current.to_dict()

        conductor_temperature = self.conductor_temperature.to_dict()

        current = self.current.to_dict()

        ducts = self.ducts

        parallel_count = self.parallel_count

        temperature_limit = self.temperature_limit.to_dict()

        adjusted_table_ampacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.adjusted_table_ampacity, Unset):
            adjusted_table_ampacity = self.adjusted_table_ampacity.to_dict()

        ampacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.ampacity, Unset):
            ampacity = self.ampacity.to_dict()

        grounding_conductor: dict[str, Any] | Unset = UNSET
        if not isinstance(self.grounding_conductor, Unset):
            grounding_conductor = self.grounding_conductor.to_dict()

        name = self.name

        table_ampacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.table_ampacity, Unset):
            table_ampacity = self.table_ampacity.to_dict()

        terminal_ampacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.terminal_ampacity, Unset):
            terminal_ampacity = self.terminal_ampacity.to_dict()

        terminal_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.terminal_temperature, Unset):
            terminal_temperature = self.terminal_temperature.to_dict()

        verdict: str | Unset = UNSET
        if not isinstance(self.verdict, Unset):
            verdict = self.verdict.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "conductor_current": conductor_current,
                "conductor_temperature": conductor_temperature,
                "current": current,
                "ducts": ducts,
                "parallel_count": parallel_count,
                "temperature_limit": temperature_limit,
            }
        )
        if adjusted_table_ampacity is not UNSET:
            field_dict["adjusted_table_ampacity"] = adjusted_table_ampacity
        if ampacity is not UNSET:
            field_dict["ampacity"] = ampacity
        if grounding_conductor is not UNSET:
            field_dict["grounding_conductor"] = grounding_conductor
        if name is not UNSET:
            field_dict["name"] = name
        if table_ampacity is not UNSET:
            field_dict["table_ampacity"] = table_ampacity
        if terminal_ampacity is not UNSET:
            field_dict["terminal_ampacity"] = terminal_ampacity
        if terminal_temperature is not UNSET:
            field_dict["terminal_temperature"] = terminal_temperature
        if verdict is not UNSET:
            field_dict["verdict"] = verdict

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.current import Current  # noqa: PLC0415
        from ..models.grounding_size import GroundingSize  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        conductor_current = Current.from_dict(d.pop("conductor_current"))

        conductor_temperature = Temperature.from_dict(d.pop("conductor_temperature"))

        current = Current.from_dict(d.pop("current"))

        ducts = cast(list[str], d.pop("ducts"))

        parallel_count = d.pop("parallel_count")

        temperature_limit = Temperature.from_dict(d.pop("temperature_limit"))

        _adjusted_table_ampacity = d.pop("adjusted_table_ampacity", UNSET)
        adjusted_table_ampacity: Current | Unset
        if isinstance(_adjusted_table_ampacity, Unset):
            adjusted_table_ampacity = UNSET
        else:
            adjusted_table_ampacity = Current.from_dict(_adjusted_table_ampacity)

        _ampacity = d.pop("ampacity", UNSET)
        ampacity: Current | Unset
        if isinstance(_ampacity, Unset):
            ampacity = UNSET
        else:
            ampacity = Current.from_dict(_ampacity)

        _grounding_conductor = d.pop("grounding_conductor", UNSET)
        grounding_conductor: GroundingSize | Unset
        if isinstance(_grounding_conductor, Unset):
            grounding_conductor = UNSET
        else:
            grounding_conductor = GroundingSize.from_dict(_grounding_conductor)

        name = d.pop("name", UNSET)

        _table_ampacity = d.pop("table_ampacity", UNSET)
        table_ampacity: Current | Unset
        if isinstance(_table_ampacity, Unset):
            table_ampacity = UNSET
        else:
            table_ampacity = Current.from_dict(_table_ampacity)

        _terminal_ampacity = d.pop("terminal_ampacity", UNSET)
        terminal_ampacity: Current | Unset
        if isinstance(_terminal_ampacity, Unset):
            terminal_ampacity = UNSET
        else:
            terminal_ampacity = Current.from_dict(_terminal_ampacity)

        _terminal_temperature = d.pop("terminal_temperature", UNSET)
        terminal_temperature: Temperature | Unset
        if isinstance(_terminal_temperature, Unset):
            terminal_temperature = UNSET
        else:
            terminal_temperature = Temperature.from_dict(_terminal_temperature)

        _verdict = d.pop("verdict", UNSET)
        verdict: Verdict | Unset
        if isinstance(_verdict, Unset):
            verdict = UNSET
        else:
            verdict = Verdict(_verdict)

        circuit_ampacity = cls(
            conductor_current=conductor_current,
            conductor_temperature=conductor_temperature,
            current=current,
            ducts=ducts,
            parallel_count=parallel_count,
            temperature_limit=temperature_limit,
            adjusted_table_ampacity=adjusted_table_ampacity,
            ampacity=ampacity,
            grounding_conductor=grounding_conductor,
            name=name,
            table_ampacity=table_ampacity,
            terminal_ampacity=terminal_ampacity,
            terminal_temperature=terminal_temperature,
            verdict=verdict,
        )

        circuit_ampacity.additional_properties = d
        return circuit_ampacity

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
