from enum import StrEnum


class WeightCorrectionUse(StrEnum):
    STRAIGHTS_AND_BENDS = "straights_and_bends"
    STRAIGHTS_ONLY = "straights_only"

    def __str__(self) -> str:
        return str(self.value)
