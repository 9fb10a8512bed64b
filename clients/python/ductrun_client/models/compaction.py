from enum import StrEnum


class Compaction(StrEnum):
    DUMPED = "dumped"
    HIGH = "high"
    MODERATE = "moderate"
    SLIGHT = "slight"

    def __str__(self) -> str:
        return str(self.value)
