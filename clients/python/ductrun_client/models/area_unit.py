from enum import StrEnum


class AreaUnit(StrEnum):
    CM2 = "cm2"
    FT2 = "ft2"
    IN2 = "in2"
    M2 = "m2"
    MM2 = "mm2"

    def __str__(self) -> str:
        return str(self.value)
