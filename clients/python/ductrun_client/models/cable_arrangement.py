from enum import StrEnum


class CableArrangement(StrEnum):
    CRADLED = "cradled"
    DIAMOND = "diamond"
    MANY = "many"
    SINGLE = "single"
    TRIANGULAR = "triangular"
    TRIPLEXED = "triplexed"
    TWO = "two"

    def __str__(self) -> str:
        return str(self.value)
