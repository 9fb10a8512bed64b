"""The operations of the API: one module each, and the one list that routes, contract, examples and tests come from.

They stand in the order in which a job asks for them, which is the order of the docs page and of README too.
"""

from typing import Any

from ductrun.kit.operation import Operation
from ductrun.subjects.bank import encasement, flotation, spacers
from ductrun.subjects.boxes import pull_box
from ductrun.subjects.conduit import joints, permitted_use
from ductrun.subjects.duct_run import compare, duct_run
from ductrun.subjects.feeder import ampacity, voltage_drop
from ductrun.subjects.fill import conductor_count, conduit_size, fill
from ductrun.subjects.ground import cover, earth_load, trench
from ductrun.subjects.movement import expansion, supports
from ductrun.subjects.pulling import pull_plan, pull_tension

OPERATIONS: tuple[Operation[Any, Any, Any], ...] = (
    duct_run.OPERATION,
    compare.OPERATION,
    permitted_use.OPERATION,
    conduit_size.OPERATION,
    fill.OPERATION,
    conductor_count.OPERATION,
    cover.OPERATION,
    trench.OPERATION,
    spacers.OPERATION,
    encasement.OPERATION,
    flotation.OPERATION,
    earth_load.OPERATION,
    joints.OPERATION,
    expansion.OPERATION,
    supports.OPERATION,
    pull_box.OPERATION,
    pull_plan.OPERATION,
    pull_tension.OPERATION,
    ampacity.OPERATION,
    voltage_drop.OPERATION,
)

__all__ = ["OPERATIONS", "Operation"]
