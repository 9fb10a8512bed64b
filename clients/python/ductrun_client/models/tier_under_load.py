from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.live_load_method import LiveLoadMethod
from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force_per_length import ForcePerLength
    from ..models.length import Length
    from ..models.live_load_by_method import LiveLoadByMethod
    from ..models.pressure import Pressure


T = TypeVar("T", bound="TierUnderLoad")


@_attrs_define
class TierUnderLoad:
    """The ducts of one tier under earth and traffic; what a wall or a load not on file leaves open is absent.

    Attributes:
        buckling_verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
        cover (Length): A length with its unit.
        deflection_verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged
            for want of something.
        earth_pressure (Pressure): A pressure or stress with its unit.
        live_loads (list[LiveLoadByMethod]): Of traffic, by every method asked that goes so shallow.
        prism_pressure (Pressure): A pressure or stress with its unit.
        tier (int): Tier, from 1 at the bottom.
        wall_verdict (Verdict): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
        allowable_buckling_load (Pressure | Unset): A pressure or stress with its unit.
        buckling_load (Pressure | Unset): A pressure or stress with its unit.
        deflected_bore (Length | Unset): A length with its unit.
        deflection_percent (float | Unset): By how much their vertical diameter shrinks.
        governing_method (LiveLoadMethod | Unset): How the load of a wheel is found at a depth; the governing one is the
            largest of those that go so shallow.
        highest_deflection_percent (float | Unset): The high end of what the formula stands for.
        least_bore (Length | Unset): A length with its unit.
        live_pressure (Pressure | Unset): A pressure or stress with its unit.
        lowest_deflection_percent (float | Unset): The low end of what the formula stands for.
        pipe_stiffness (Pressure | Unset): A pressure or stress with its unit.
        trench_pressure (Pressure | Unset): A pressure or stress with its unit.
        wall_stress (Pressure | Unset): A pressure or stress with its unit.
        wall_thrust (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is one.
    """

    buckling_verdict: Verdict
    cover: Length
    deflection_verdict: Verdict
    earth_pressure: Pressure
    live_loads: list[LiveLoadByMethod]
    prism_pressure: Pressure
    tier: int
    wall_verdict: Verdict
    allowable_buckling_load: Pressure | Unset = UNSET
    buckling_load: Pressure | Unset = UNSET
    deflected_bore: Length | Unset = UNSET
    deflection_percent: float | Unset = UNSET
    governing_method: LiveLoadMethod | Unset = UNSET
    highest_deflection_percent: float | Unset = UNSET
    least_bore: Length | Unset = UNSET
    live_pressure: Pressure | Unset = UNSET
    lowest_deflection_percent: float | Unset = UNSET
    pipe_stiffness: Pressure | Unset = UNSET
    trench_pressure: Pressure | Unset = UNSET
    wall_stress: Pressure | Unset = UNSET
    wall_thrust: ForcePerLength | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        buckling_verdict = self.buckling_verdict.value

        cover = self.cover.to_dict()

        deflection_verdict = self.deflection_verdict.value

        earth_pressure = self.earth_pressure.to_dict()

        live_loads = []
        for live_loads_item_data in self.live_loads:
            live_loads_item = live_loads_item_data.to_dict()
            live_loads.append(live_loads_item)

        prism_pressure = self.prism_pressure.to_dict()

        tier = self.tier

        wall_verdict = self.wall_verdict.value

        allowable_buckling_load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_buckling_load, Unset):
            allowable_buckling_load = self.allowable_buckling_load.to_dict()

        buckling_load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.buckling_load, Unset):
            buckling_load = self.buckling_load.to_dict()

        deflected_bore: dict[str, Any] | Unset = UNSET
        if not isinstance(self.deflected_bore, Unset):
            deflected_bore = self.deflected_bore.to_dict()

        deflection_percent = self.deflection_percent

        governing_method: str | Unset = UNSET
        if not isinstance(self.governing_method, Unset):
            governing_method = self.governing_method.value

        highest_deflection_percent = self.highest_deflection_percent

        least_bore: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_bore, Unset):
            least_bore = self.least_bore.to_dict()

        live_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.live_pressure, Unset):
            live_pressure = self.live_pressure.to_dict()

        lowest_deflection_percent = self.lowest_deflection_percent

        pipe_stiffness: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pipe_stiffness, Unset):
            pipe_stiffness = self.pipe_stiffness.to_dict()

        trench_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.trench_pressure, Unset):
            trench_pressure = self.trench_pressure.to_dict()

        wall_stress: dict[str, Any] | Unset = UNSET
        if not isinstance(self.wall_stress, Unset):
            wall_stress = self.wall_stress.to_dict()

        wall_thrust: dict[str, Any] | Unset = UNSET
        if not isinstance(self.wall_thrust, Unset):
            wall_thrust = self.wall_thrust.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "buckling_verdict": buckling_verdict,
                "cover": cover,
                "deflection_verdict": deflection_verdict,
                "earth_pressure": earth_pressure,
                "live_loads": live_loads,
                "prism_pressure": prism_pressure,
                "tier": tier,
                "wall_verdict": wall_verdict,
            }
        )
        if allowable_buckling_load is not UNSET:
            field_dict["allowable_buckling_load"] = allowable_buckling_load
        if buckling_load is not UNSET:
            field_dict["buckling_load"] = buckling_load
        if deflected_bore is not UNSET:
            field_dict["deflected_bore"] = deflected_bore
        if deflection_percent is not UNSET:
            field_dict["deflection_percent"] = deflection_percent
        if governing_method is not UNSET:
            field_dict["governing_method"] = governing_method
        if highest_deflection_percent is not UNSET:
            field_dict["highest_deflection_percent"] = highest_deflection_percent
        if least_bore is not UNSET:
            field_dict["least_bore"] = least_bore
        if live_pressure is not UNSET:
            field_dict["live_pressure"] = live_pressure
        if lowest_deflection_percent is not UNSET:
            field_dict["lowest_deflection_percent"] = lowest_deflection_percent
        if pipe_stiffness is not UNSET:
            field_dict["pipe_stiffness"] = pipe_stiffness
        if trench_pressure is not UNSET:
            field_dict["trench_pressure"] = trench_pressure
        if wall_stress is not UNSET:
            field_dict["wall_stress"] = wall_stress
        if wall_thrust is not UNSET:
            field_dict["wall_thrust"] = wall_thrust

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.live_load_by_method import LiveLoadByMethod  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        buckling_verdict = Verdict(d.pop("buckling_verdict"))

        cover = Length.from_dict(d.pop("cover"))

        deflection_verdict = Verdict(d.pop("deflection_verdict"))

        earth_pressure = Pressure.from_dict(d.pop("earth_pressure"))

        live_loads = []
        _live_loads = d.pop("live_loads")
        for live_loads_item_data in _live_loads:
            live_loads_item = LiveLoadByMethod.from_dict(live_loads_item_data)

            live_loads.append(live_loads_item)

        prism_pressure = Pressure.from_dict(d.pop("prism_pressure"))

        tier = d.pop("tier")

        wall_verdict = Verdict(d.pop("wall_verdict"))

        _allowable_buckling_load = d.pop("allowable_buckling_load", UNSET)
        allowable_buckling_load: Pressure | Unset
        if isinstance(_allowable_buckling_load, Unset):
            allowable_buckling_load = UNSET
        else:
            allowable_buckling_load = Pressure.from_dict(_allowable_buckling_load)

        _buckling_load = d.pop("buckling_load", UNSET)
        buckling_load: Pressure | Unset
        if isinstance(_buckling_load, Unset):
            buckling_load = UNSET
        else:
            buckling_load = Pressure.from_dict(_buckling_load)

        _deflected_bore = d.pop("deflected_bore", UNSET)
        deflected_bore: Length | Unset
        if isinstance(_deflected_bore, Unset):
            deflected_bore = UNSET
        else:
            deflected_bore = Length.from_dict(_deflected_bore)

        deflection_percent = d.pop("deflection_percent", UNSET)

        _governing_method = d.pop("governing_method", UNSET)
        governing_method: LiveLoadMethod | Unset
        if isinstance(_governing_method, Unset):
            governing_method = UNSET
        else:
            governing_method = LiveLoadMethod(_governing_method)

        highest_deflection_percent = d.pop("highest_deflection_percent", UNSET)

        _least_bore = d.pop("least_bore", UNSET)
        least_bore: Length | Unset
        if isinstance(_least_bore, Unset):
            least_bore = UNSET
        else:
            least_bore = Length.from_dict(_least_bore)

        _live_pressure = d.pop("live_pressure", UNSET)
        live_pressure: Pressure | Unset
        if isinstance(_live_pressure, Unset):
            live_pressure = UNSET
        else:
            live_pressure = Pressure.from_dict(_live_pressure)

        lowest_deflection_percent = d.pop("lowest_deflection_percent", UNSET)

        _pipe_stiffness = d.pop("pipe_stiffness", UNSET)
        pipe_stiffness: Pressure | Unset
        if isinstance(_pipe_stiffness, Unset):
            pipe_stiffness = UNSET
        else:
            pipe_stiffness = Pressure.from_dict(_pipe_stiffness)

        _trench_pressure = d.pop("trench_pressure", UNSET)
        trench_pressure: Pressure | Unset
        if isinstance(_trench_pressure, Unset):
            trench_pressure = UNSET
        else:
            trench_pressure = Pressure.from_dict(_trench_pressure)

        _wall_stress = d.pop("wall_stress", UNSET)
        wall_stress: Pressure | Unset
        if isinstance(_wall_stress, Unset):
            wall_stress = UNSET
        else:
            wall_stress = Pressure.from_dict(_wall_stress)

        _wall_thrust = d.pop("wall_thrust", UNSET)
        wall_thrust: ForcePerLength | Unset
        if isinstance(_wall_thrust, Unset):
            wall_thrust = UNSET
        else:
            wall_thrust = ForcePerLength.from_dict(_wall_thrust)

        tier_under_load = cls(
            buckling_verdict=buckling_verdict,
            cover=cover,
            deflection_verdict=deflection_verdict,
            earth_pressure=earth_pressure,
            live_loads=live_loads,
            prism_pressure=prism_pressure,
            tier=tier,
            wall_verdict=wall_verdict,
            allowable_buckling_load=allowable_buckling_load,
            buckling_load=buckling_load,
            deflected_bore=deflected_bore,
            deflection_percent=deflection_percent,
            governing_method=governing_method,
            highest_deflection_percent=highest_deflection_percent,
            least_bore=least_bore,
            live_pressure=live_pressure,
            lowest_deflection_percent=lowest_deflection_percent,
            pipe_stiffness=pipe_stiffness,
            trench_pressure=trench_pressure,
            wall_stress=wall_stress,
            wall_thrust=wall_thrust,
        )

        tier_under_load.additional_properties = d
        return tier_under_load

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
