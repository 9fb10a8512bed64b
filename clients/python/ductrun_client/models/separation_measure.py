from enum import StrEnum


class SeparationMeasure(StrEnum):
    CENTER_TO_CENTER = "center_to_center"
    CLEAR = "clear"

    def __str__(self) -> str:
        return str(self.value)
