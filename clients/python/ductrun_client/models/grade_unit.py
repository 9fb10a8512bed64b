from enum import StrEnum


class GradeUnit(StrEnum):
    DEG = "deg"
    PERCENT = "percent"

    def __str__(self) -> str:
        return str(self.value)
