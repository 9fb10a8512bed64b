from enum import StrEnum


class TemperatureDifferenceUnit(StrEnum):
    DELTA_DEG_C = "delta_degC"
    DELTA_DEG_F = "delta_degF"

    def __str__(self) -> str:
        return str(self.value)
