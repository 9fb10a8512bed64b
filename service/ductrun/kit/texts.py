"""Free text of a request: bounded, any Unicode but what controls a terminal or turns the direction of writing.

A text is a name or a remark that a person reads. It is never interpreted.
"""

from __future__ import annotations

import re
from typing import Annotated, Any, Final

from pydantic import Field, GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import PydanticCustomError, core_schema

# C0 and C1 controls, line and paragraph separators, and the marks that turn the direction of what follows (UAX 9)
_REFUSED = "\\u0000-\\u001f\\u007f-\\u009f\\u061c\\u200e\\u200f\\u2028-\\u202e\\u2066-\\u2069"
REFUSED_CHARACTERS: Final = re.compile(f"[{_REFUSED}]")


class PlainText:
    """Marks a text without control and direction-changing characters."""

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        """Hold the text behind its own validation."""
        return core_schema.no_info_after_validator_function(_hold, handler(source))

    def __get_pydantic_json_schema__(self, core: Any, handler: GetJsonSchemaHandler) -> dict[str, Any]:
        """State the rule in the contract; a negated class has no end that a line feed could slip past."""
        return {**handler(core), "pattern": f"^[^{_REFUSED}]*$"}


def _hold(text: str) -> str:
    if REFUSED_CHARACTERS.search(text):
        raise PydanticCustomError(
            "control_character", "The text must hold no control or direction-changing characters."
        )
    return text


MOST_NAME = 80  # characters
Name = Annotated[str, Field(min_length=1, max_length=MOST_NAME), PlainText()]
Note = Annotated[str, Field(min_length=1, max_length=1000), PlainText()]
