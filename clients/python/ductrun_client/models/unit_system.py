from enum import StrEnum


class UnitSystem(StrEnum):
    METRIC = "metric"
    US = "us"

    def __str__(self) -> str:
        return str(self.value)
