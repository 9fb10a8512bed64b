"""What a deployment may set, read once from the environment."""

from __future__ import annotations

import os
from dataclasses import dataclass, fields


@dataclass(frozen=True, slots=True)
class Settings:
    """Settings of the service; each is an environment variable of the same name with the prefix DUCTRUN_."""

    max_body_bytes: int = 1_048_576
    max_batch_bytes: int = 16_777_216

    @classmethod
    def from_environment(cls) -> Settings:
        """Read the settings; a value that is not a positive whole number is a ValueError that names it."""
        given = {}
        for field in fields(cls):
            text = os.environ.get(f"DUCTRUN_{field.name.upper()}", "")
            if text and (not text.isdecimal() or int(text) < 1):
                raise ValueError(f"DUCTRUN_{field.name.upper()} must be a positive whole number")
            if text:
                given[field.name] = int(text)
        return cls(**given)
