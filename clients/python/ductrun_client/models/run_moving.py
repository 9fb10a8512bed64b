from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.coupling import Coupling
from ..models.piston_convention import PistonConvention
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.temperature import Temperature


T = TypeVar("T", bound="RunMoving")


@_attrs_define
class RunMoving:
    """Expansion fittings and straps of all that lies above ground.

    Attributes:
        coupling (Coupling | Unset): How lengths of rigid or intermediate metal conduit are coupled.
        end_distance (Length | Unset): A length with its unit.
        fitting_travel (Length | Unset): A length with its unit.
        opening_temperatures (list[Temperature] | Unset): Temperatures for which to give the opening.
        piston_convention (PistonConvention | Unset): How far to open an expansion fitting: by its full travel, or
            centered on the movement it takes.
        piston_engagement (Length | Unset): A length with its unit.
        service_temperature (Temperature | Unset): A temperature with its unit.
        usable_travel_percent (float | Unset): Most of the travel of a fitting that its share of the movement may use.
    """

    coupling: Coupling | Unset = UNSET
    end_distance: Length | Unset = UNSET
    fitting_travel: Length | Unset = UNSET
    opening_temperatures: list[Temperature] | Unset = UNSET
    piston_convention: PistonConvention | Unset = UNSET
    piston_engagement: Length | Unset = UNSET
    service_temperature: Temperature | Unset = UNSET
    usable_travel_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        coupling: str | Unset = UNSET
        if not isinstance(self.coupling, Unset):
            coupling = self.coupling.value

        end_distance: dict[str, Any] | Unset = UNSET
        if not isinstance(self.end_distance, Unset):
            end_distance = self.end_distance.to_dict()

        fitting_travel: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_travel, Unset):
            fitting_travel = self.fitting_travel.to_dict()

        opening_temperatures: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.opening_temperatures, Unset):
            opening_temperatures = []
            for opening_temperatures_item_data in self.opening_temperatures:
                opening_temperatures_item = opening_temperatures_item_data.to_dict()
                opening_temperatures.append(opening_temperatures_item)

        piston_convention: str | Unset = UNSET
        if not isinstance(self.piston_convention, Unset):
            piston_convention = self.piston_convention.value

        piston_engagement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.piston_engagement, Unset):
            piston_engagement = self.piston_engagement.to_dict()

        service_temperature: dict[str, Any] | Unset = UNSET
        if not isinstance(self.service_temperature, Unset):
            service_temperature = self.service_temperature.to_dict()

        usable_travel_percent = self.usable_travel_percent

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if coupling is not UNSET:
            field_dict["coupling"] = coupling
        if end_distance is not UNSET:
            field_dict["end_distance"] = end_distance
        if fitting_travel is not UNSET:
            field_dict["fitting_travel"] = fitting_travel
        if opening_temperatures is not UNSET:
            field_dict["opening_temperatures"] = opening_temperatures
        if piston_convention is not UNSET:
            field_dict["piston_convention"] = piston_convention
        if piston_engagement is not UNSET:
            field_dict["piston_engagement"] = piston_engagement
        if service_temperature is not UNSET:
            field_dict["service_temperature"] = service_temperature
        if usable_travel_percent is not UNSET:
            field_dict["usable_travel_percent"] = usable_travel_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.temperature import Temperature  # noqa: PLC0415

        d = dict(src_dict)
        _coupling = d.pop("coupling", UNSET)
        coupling: Coupling | Unset
        if isinstance(_coupling, Unset):
            coupling = UNSET
        else:
            coupling = Coupling(_coupling)

        _end_distance = d.pop("end_distance", UNSET)
        end_distance: Length | Unset
        if isinstance(_end_distance, Unset):
            end_distance = UNSET
        else:
            end_distance = Length.from_dict(_end_distance)

        _fitting_travel = d.pop("fitting_travel", UNSET)
        fitting_travel: Length | Unset
        if isinstance(_fitting_travel, Unset):
            fitting_travel = UNSET
        else:
            fitting_travel = Length.from_dict(_fitting_travel)

        _opening_temperatures = d.pop("opening_temperatures", UNSET)
        opening_temperatures: list[Temperature] | Unset = UNSET
        if _opening_temperatures is not UNSET:
            opening_temperatures = []
            for opening_temperatures_item_data in _opening_temperatures:
                opening_temperatures_item = Temperature.from_dict(opening_temperatures_item_data)

                opening_temperatures.append(opening_temperatures_item)

        _piston_convention = d.pop("piston_convention", UNSET)
        piston_convention: PistonConvention | Unset
        if isinstance(_piston_convention, Unset):
            piston_convention = UNSET
        else:
            piston_convention = PistonConvention(_piston_convention)

        _piston_engagement = d.pop("piston_engagement", UNSET)
        piston_engagement: Length | Unset
        if isinstance(_piston_engagement, Unset):
            piston_engagement = UNSET
        else:
            piston_engagement = Length.from_dict(_piston_engagement)

        _service_temperature = d.pop("service_temperature", UNSET)
        service_temperature: Temperature | Unset
        if isinstance(_service_temperature, Unset):
            service_temperature = UNSET
        else:
            service_temperature = Temperature.from_dict(_service_temperature)

        usable_travel_percent = d.pop("usable_travel_percent", UNSET)

        run_moving = cls(
            coupling=coupling,
            end_distance=end_distance,
            fitting_travel=fitting_travel,
            opening_temperatures=opening_temperatures,
            piston_convention=piston_convention,
            piston_engagement=piston_engagement,
            service_temperature=service_temperature,
            usable_travel_percent=usable_travel_percent,
        )

        return run_moving
