from enum import StrEnum


class PowerPerLengthUnit(StrEnum):
    W_PER_FT = "W/ft"
    W_PER_M = "W/m"

    def __str__(self) -> str:
        return str(self.value)
