from enum import StrEnum


class DuctEnds(StrEnum):
    BELLED = "belled"
    PLAIN = "plain"

    def __str__(self) -> str:
        return str(self.value)
