from enum import StrEnum


class CableArrangement(StrEnum):
    CRADLED = "cradled"
    DIAMOND = "diamond"
    MANY = "many"
    SINGLE = "single"
    TRIANGULAR = "triangular"
    TWO = "two"

    def __str__(self) -> str:
        return str(self.value)
