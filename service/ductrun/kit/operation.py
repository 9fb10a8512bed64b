"""What an API operation is: everything the web layer, the contract and the tests are made from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from msgspec import Struct

from ductrun.kit.forms import Form
from ductrun.kit.worksheet import Worksheet

Request = TypeVar("Request", bound=Form)
Result = TypeVar("Result", bound=Struct)


@dataclass(frozen=True, slots=True)
class Operation(Generic[Request, Result]):
    """One calculation: its name in the path, its models, the pure function between them, a complete example."""

    name: str
    operation_id: str
    summary: str
    description: str
    request: type[Request]
    result: type[Result]
    compute: Callable[[Request, Worksheet], Result]
    example: dict[str, Any]
