"""What a deployment may set, read once from the environment."""

from __future__ import annotations

import os
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Settings:
    """Settings of the service; each is an environment variable of the same name with the prefix DUCTRUN_."""

    max_body_bytes: int = 1_048_576

    @classmethod
    def from_environment(cls) -> Settings:
        """Read the settings; a value that is not a positive whole number is a ValueError that names it."""
        text = os.environ.get("DUCTRUN_MAX_BODY_BYTES", "")
        if not text:
            return cls()
        if not text.isdecimal() or int(text) < 1:
            raise ValueError("DUCTRUN_MAX_BODY_BYTES must be a positive whole number")
        return cls(max_body_bytes=int(text))
