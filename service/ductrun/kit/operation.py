"""What an API operation is: everything the web layer, the contract and the tests are made from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Generic, NamedTuple, TypeVar

from msgspec import Struct

from ductrun.kit.forms import Form
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Worksheet

Request = TypeVar("Request", bound=Form)
Assessment = TypeVar("Assessment")
Result = TypeVar("Result", bound=Struct)


class Ending(NamedTuple):
    """From when an operation is deprecated, when it ends at the earliest, and the name of the one to ask instead."""

    deprecated: datetime
    sunset: datetime
    successor: str


@dataclass(frozen=True, slots=True)
class Remedying(Generic[Request, Assessment]):
    """What finds how a request would comply: `find` takes the request as JSON, its assessment and its sheet, and
    `steps` bounds what that costs beside the answer itself.
    """

    result: type[Struct]
    find: Callable[[Any, Assessment, Worksheet], Struct]
    steps: Callable[[Request], float]


@dataclass(frozen=True, slots=True)
class Operation(Generic[Request, Assessment, Result]):
    """One calculation: its name in the path, its models, the pure functions between them, a complete example.

    `assess` makes numbers in SI out of a request and writes on the sheet; `tell` puts them into the units of the
    answer. `ending` is given when it is to go: contract and answers then say so.

    `steps` is the bound of its cost: from a request that was read, and before anything is assessed, about how many
    steps of ten microseconds the answer takes. Beyond `answering.STEPS_ON_THE_LOOP` the answer is put off to a thread,
    where it delays nobody else. What cannot be answered in a few seconds `assess` refuses. None: it is always few.
    """

    name: str
    operation_id: str
    summary: str
    description: str
    request: type[Request]
    result: type[Result]
    assess: Callable[[Request, Worksheet], Assessment]
    tell: Callable[[Assessment, Telling], Result]
    example: dict[str, Any]
    ending: Ending | None = None
    remedying: Remedying[Request, Assessment] | None = None
    steps: Callable[[Request], float] | None = None
