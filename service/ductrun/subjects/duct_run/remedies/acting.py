"""What might remove a violation: for each code the changes that act on it, from the smallest to the largest."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from msgspec import UNSET, structs

from ductrun.kit.answers import Finding
from ductrun.subjects.duct_run.remedies.boxed import larger_box, one_more_size
from ductrun.subjects.duct_run.remedies.case import Case, circuit_at, circuits_of, place_of
from ductrun.subjects.duct_run.remedies.changes import Change, Ladder, together
from ductrun.subjects.duct_run.remedies.conductors import (
    farther_apart,
    larger_conductors,
    larger_device,
    more_sets,
    more_sets_for,
    other_device,
    other_insulation,
    rated_lower,
    with_ground,
)
from ductrun.subjects.duct_run.remedies.conduits import (
    burial_types,
    nonmetallic_types,
    other_types,
    riser_types,
    stiffer_types,
    trade_sizes,
)
from ductrun.subjects.duct_run.remedies.depths import deeper, deeper_by_steps, encase, lower_lifts, more_concrete
from ductrun.subjects.duct_run.remedies.practice import compacted, less_pigment, more_travel, nearer_straps
from ductrun.subjects.duct_run.remedies.pulled import OF_A_PULL, of_pulls, wider
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind

_Acting = Callable[[Finding, Case], list[Change]]


def ladders_of(case: Case) -> list[Ladder]:
    """Give all that might remove the violations of a run, the cheapest to build first."""
    found = [
        Ladder(frozenset({one.code}), None if one.pointer is UNSET else one.pointer, rungs)
        for one in case.violations
        for remedy in _ACTING.get(one.code, ())
        if (rungs := _for_all(remedy, one, case))
    ]
    if any(one.code in OF_A_PULL for one in case.violations):
        found += of_pulls(case)
    found += _of_shared_heat(case)
    order = {kind: place for place, kind in enumerate(ChangeKind)}
    return sorted(found, key=lambda ladder: order[ladder.rungs[0].kind])


def _for_all(remedy: _Acting, found: Finding, case: Case) -> list[Change]:
    """Give what a remedy changes; where alike circuits break a limit alike, for all of them at once."""
    circuits = circuits_of(found, case)
    return remedy(found, case) if len(circuits) < 2 else _for_each(remedy, found, circuits, case)


def _for_each(remedy: _Acting, found: Finding, circuits: Sequence[int], case: Case) -> list[Change]:
    """Give what a remedy changes for several circuits at once."""
    if remedy is more_sets:  # no two of them get the same spare duct
        return more_sets_for(circuits, case)
    ladders = [remedy(structs.replace(found, pointer=f"#/circuits/{at}"), case) for at in circuits]
    return [together(rungs) for rungs in zip(*ladders, strict=False)]


def _of_shared_heat(case: Case) -> list[Ladder]:
    """Give what cools all circuits that are found too hot: each warms the others, so that one alone may not do."""
    hot = [one for one in case.violations if one.code in _OF_HEAT]
    circuits = sorted({at for one in hot for at in circuits_of(one, case)})
    if len(hot) < 2 or len(circuits) < 2:
        return []
    ladders = [_for_each(remedy, hot[0], circuits, case) for remedy in (larger_conductors, more_sets)]
    return [Ladder(_OF_HEAT, None, rungs, all_at_once=True) for rungs in ladders if rungs]


def _other_type(found: Finding, case: Case) -> list[Change]:
    place = place_of(found)
    if place.endswith("/height"):
        return riser_types(place.removesuffix("/height")[1:], case)
    return other_types(found, case)


def _larger(found: Finding, case: Case) -> list[Change]:
    circuit = circuit_at(found)
    return [] if circuit is None else trade_sizes(circuit, case)


_OF_HEAT = frozenset({"conductor_too_hot", "nothing_left_to_carry", "over_terminal_rating"})
_CARRYING: Sequence[_Acting] = (farther_apart, larger_conductors, more_sets)
_BEARING: Sequence[_Acting] = (compacted, stiffer_types, encase)
_ACTING: dict[str, Sequence[_Acting]] = {
    "too_shallow": (deeper, _other_type, encase),
    "too_little_cover_under_traffic": (deeper, encase),
    "needs_concrete": (more_concrete, encase, burial_types, _other_type),
    "thin_envelope": (more_concrete, _other_type),
    "use_not_permitted": (burial_types, _other_type, encase),
    "ambient_exceeded": (_other_type,),
    "over_service_temperature": (_other_type,),
    "cage_meets_ducts": (more_concrete,),
    "pigment_dose": (less_pigment,),
    "deflection_exceeded": _BEARING,
    "wall_crushed": (stiffer_types, encase),
    "duct_buckles": _BEARING,
    "floats_in_service": (deeper_by_steps, encase),
    "duct_collapses_in_the_pour": (lower_lifts, stiffer_types),
    "fill_exceeded": (_larger,),
    "sidewall_pressure_exceeded": (wider,),
    "cable_bent_too_tightly": (wider,),
    "elbow_too_tight": (wider,),
    "field_bend_too_tight": (wider,),
    "joint_moves_beyond_travel": (more_travel,),
    "end_support_too_far": (nearer_straps,),
    "conductor_too_hot": _CARRYING,
    "nothing_left_to_carry": _CARRYING,
    "over_terminal_rating": (larger_conductors, more_sets),
    "voltage_drop_over_limit": (larger_conductors, more_sets),
    "too_small_in_parallel": (larger_conductors,),
    "insulation_for_dry_places": (other_insulation,),
    "conductor_temperature_over_rating": (rated_lower, other_insulation),
    "device_over_ampacity": (other_device, larger_conductors, more_sets),
    "load_over_device": (larger_device,),
    "no_grounding_conductor": (with_ground,),
    "set_split_in_steel": (nonmetallic_types,),
    "box_too_small": (larger_box,),
    "box_volume_too_small": (larger_box,),
    "entries_too_close": (larger_box,),
    "no_size_large_enough": (one_more_size,),
}
KNOWN = _ACTING.keys() | OF_A_PULL  # codes that something is known against
