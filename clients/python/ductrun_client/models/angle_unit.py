from enum import StrEnum


class AngleUnit(StrEnum):
    DEG = "deg"
    RAD = "rad"

    def __str__(self) -> str:
        return str(self.value)
