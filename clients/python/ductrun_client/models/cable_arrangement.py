from enum import StrEnum


class CableArrangement(StrEnum):
    CRADLED = "cradled"
    DIAMOND = "diamond"
    MANY = "many"
    SINGLE = "single"
    TRIANGULAR = "triangular"
    TRIPLEXED = "triplexed"
    TWO = "two"
    WORST_CASE = "worst_case"

    def __str__(self) -> str:
        return str(self.value)
