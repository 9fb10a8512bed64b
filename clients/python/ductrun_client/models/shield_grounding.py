from enum import StrEnum


class ShieldGrounding(StrEnum):
    BOTH_ENDS = "both_ends"
    SINGLE_POINT = "single_point"

    def __str__(self) -> str:
        return str(self.value)
