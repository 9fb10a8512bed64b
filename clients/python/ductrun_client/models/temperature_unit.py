from enum import StrEnum


class TemperatureUnit(StrEnum):
    DEG_C = "degC"
    DEG_F = "degF"
    K = "K"

    def __str__(self) -> str:
        return str(self.value)
