from enum import StrEnum


class DurationUnit(StrEnum):
    H = "h"
    MIN = "min"

    def __str__(self) -> str:
        return str(self.value)
