"""The operations of the API: one module each, and the one list that routes, contract, examples and tests come from."""

from typing import Any

from ductrun.operations import (
    conductor_count,
    conduit_size,
    cover,
    encasement,
    expansion,
    fill,
    flotation,
    joints,
    permitted_use,
    pull_plan,
    pull_tension,
    spacers,
    supports,
    trench,
)
from ductrun.operations.operation import Operation

OPERATIONS: tuple[Operation[Any, Any], ...] = (
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
