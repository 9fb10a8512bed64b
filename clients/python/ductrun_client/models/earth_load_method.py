from enum import StrEnum


class EarthLoadMethod(StrEnum):
    PRISM = "prism"
    TRENCH = "trench"

    def __str__(self) -> str:
        return str(self.value)
