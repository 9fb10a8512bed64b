from enum import StrEnum


class PowerUnit(StrEnum):
    KW = "kW"
    W = "W"

    def __str__(self) -> str:
        return str(self.value)
