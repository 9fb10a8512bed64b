from enum import StrEnum


class Severity(StrEnum):
    CAUTION = "caution"
    NOTE = "note"
    VIOLATION = "violation"

    def __str__(self) -> str:
        return str(self.value)
