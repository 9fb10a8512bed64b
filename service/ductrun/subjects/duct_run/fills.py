"""The cables of a circuit held in every conduit on its way."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.kit.worksheet import Gathering
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedStretch, FilledConduit
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.risers import conduit_of_riser, riser_sheet
from ductrun.subjects.fill.fill import hold
from ductrun.subjects.fill.rules import Filling
from ductrun.subjects.parts.choices import CableArrangement
from ductrun.subjects.parts.conduit import PlacedConduit, place_conduit

_FILLING = Filling()


def fills_of(circuit: PlacedCircuit, passed: Sequence[AssessedStretch], asked: Asked) -> list[FilledConduit]:
    """Hold the cables of a circuit in every conduit on its way, each once."""
    found: dict[object, tuple[PlacedConduit, list[str]]] = {}
    faults = Gathering()
    for stretch in passed:
        for index in circuit.ducts:
            duct = stretch.bank.ducts[index]
            ways = [(duct.conduit, duct.sheet, stretch.laid.name)]
            for riser in stretch.risers:
                conduit = conduit_of_riser(riser.stop, duct.conduit)
                place = riser_sheet(riser.stop, duct.sheet)
                ways.append((conduit, place, f"the riser at {riser.stop.name}"))
            for conduit, place, where in ways:
                listed = conduit.kind == "listed"
                key: object = (conduit.type, conduit.trade_size) if listed else id(conduit)
                with faults:
                    if key not in found:
                        found[key] = (place_conduit(conduit, place), [])
                    if where not in found[key][1]:
                        found[key][1].append(where)
    faults.stop()
    filled = []
    triplexed = _are_triplexed(circuit, asked)
    for placed, stretches in found.values():
        with faults, asked.names.about(circuit.name, passed[0].laid.station):
            sheet = circuit.sheet.within("", about=circuit.sheet.place)
            held = hold(_FILLING, placed, circuit.cables.filling, sheet, triplexed=triplexed)
            filled.append(FilledConduit(stretches, held))
    faults.stop()
    return filled


def _are_triplexed(circuit: PlacedCircuit, asked: Asked) -> bool:
    """Say whether the cables of a circuit are twisted together, as its pull or that of all circuits has it."""
    for given in (circuit.given.pulling, asked.request.pulling):
        if given is not None and given.arrangement is not None:
            return given.arrangement is CableArrangement.TRIPLEXED
    return False
