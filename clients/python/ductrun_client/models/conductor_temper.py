from enum import StrEnum


class ConductorTemper(StrEnum):
    AA_8000 = "aa_8000"
    HALF_HARD = "half_hard"
    HARD = "hard"
    SOFT = "soft"
    THREE_QUARTER_HARD = "three_quarter_hard"

    def __str__(self) -> str:
        return str(self.value)
