"""The operations of the API: one module each, and the one list that routes, contract, examples and tests come from."""

from typing import Any

from ductrun.kit.operation import Operation
from ductrun.subjects.bank import encasement, flotation, spacers
from ductrun.subjects.conduit import joints, permitted_use
from ductrun.subjects.fill import conductor_count, conduit_size, fill
from ductrun.subjects.ground import cover, trench
from ductrun.subjects.movement import expansion, supports
from ductrun.subjects.pulling import pull_plan, pull_tension

OPERATIONS: tuple[Operation[Any, Any, Any], ...] = (
    permitted_use.OPERATION,
    fill.OPERATION,
    conduit_size.OPERATION,
    conductor_count.OPERATION,
    expansion.OPERATION,
    supports.OPERATION,
    spacers.OPERATION,
    encasement.OPERATION,
    flotation.OPERATION,
    cover.OPERATION,
    trench.OPERATION,
    joints.OPERATION,
    pull_tension.OPERATION,
    pull_plan.OPERATION,
)

__all__ = ["OPERATIONS", "Operation"]
