from enum import StrEnum


class DuctContents(StrEnum):
    CABLE = "cable"
    EMPTY = "empty"
    WATER = "water"

    def __str__(self) -> str:
        return str(self.value)
