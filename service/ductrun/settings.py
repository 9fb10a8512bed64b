"""What a deployment may set, read once from the environment."""

from __future__ import annotations

import os
import re
from dataclasses import dataclass, fields
from typing import Any, Final

_ORIGIN: Final = re.compile(r"https?://[^\s/?#@]+")


@dataclass(frozen=True, slots=True)
class Settings:
    """Settings of the service; each is an environment variable of the same name with the prefix DUCTRUN_."""

    max_body_bytes: int = 1_048_576
    max_batch_bytes: int = 16_777_216
    cors_origins: tuple[str, ...] = ()

    @classmethod
    def from_environment(cls) -> Settings:
        """Read the settings; a value that cannot be one is a ValueError that names it."""
        given: dict[str, Any] = {}
        for field in fields(cls):
            name = f"DUCTRUN_{field.name.upper()}"
            text = os.environ.get(name, "").strip()
            if text:
                given[field.name] = _origins(name, text) if field.name == "cors_origins" else _count(name, text)
        return cls(**given)


def _count(name: str, text: str) -> int:
    if not text.isdecimal() or int(text) < 1:
        raise ValueError(f"{name} must be a positive whole number")
    return int(text)


def _origins(name: str, text: str) -> tuple[str, ...]:
    origins = tuple(text.replace(",", " ").split())
    if not all(origin == "*" or _ORIGIN.fullmatch(origin) for origin in origins):
        raise ValueError(f"{name} must be * or origins such as https://app.example.org, with commas between them")
    return origins
