from enum import StrEnum


class MassUnit(StrEnum):
    KG = "kg"
    LB = "lb"
    SHORT_TON = "short_ton"
    T = "t"

    def __str__(self) -> str:
        return str(self.value)
