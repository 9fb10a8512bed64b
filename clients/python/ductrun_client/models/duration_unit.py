from enum import StrEnum


class DurationUnit(StrEnum):
    H = "h"
    MIN = "min"
    S = "s"

    def __str__(self) -> str:
        return str(self.value)
