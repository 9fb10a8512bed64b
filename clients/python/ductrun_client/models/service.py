from enum import StrEnum


class Service(StrEnum):
    POWER = "power"
    SIGNAL = "signal"

    def __str__(self) -> str:
        return str(self.value)
