from enum import StrEnum


class ConductorCounting(StrEnum):
    ALL_COUNTED = "all_counted"
    TWO_OF_THREE = "two_of_three"

    def __str__(self) -> str:
        return str(self.value)
