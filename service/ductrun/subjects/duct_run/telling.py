"""What the tellings of stretches and circuits share: names of stops, and parts that may not be there."""

from __future__ import annotations

from collections.abc import Callable
from typing import Annotated, TypeVar

from msgspec import UNSET, Meta, UnsetType

from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME

StopName = Annotated[str, Meta(max_length=MOST_NAME)]

P = TypeVar("P")
R = TypeVar("R")


def told_if_known(part: P | None, tell: Callable[[P, Telling], R], telling: Telling) -> R | UnsetType:
    """Tell a part as its own operation does, if there is one."""
    return UNSET if part is None else tell(part, telling)
