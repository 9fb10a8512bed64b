from enum import StrEnum


class EnergyUnit(StrEnum):
    KWH = "kWh"

    def __str__(self) -> str:
        return str(self.value)
