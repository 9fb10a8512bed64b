from enum import StrEnum


class FillLimitRule(StrEnum):
    NIPPLE = "nipple"
    ONE_CONDUCTOR = "one_conductor"
    OVER_TWO_CONDUCTORS = "over_two_conductors"
    TWO_CONDUCTORS = "two_conductors"

    def __str__(self) -> str:
        return str(self.value)
