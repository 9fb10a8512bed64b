"""The operations of the API: one module each, and the one list that routes, contract, examples and tests come from."""

from typing import Any

from ductrun.operations import encasement, expansion, fill, pull_tension, spacers
from ductrun.operations.operation import Operation

OPERATIONS: tuple[Operation[Any, Any], ...] = (
    fill.OPERATION,
    expansion.OPERATION,
    spacers.OPERATION,
    encasement.OPERATION,
    pull_tension.OPERATION,
)

__all__ = ["OPERATIONS", "Operation"]
