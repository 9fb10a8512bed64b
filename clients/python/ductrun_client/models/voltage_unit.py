from enum import StrEnum


class VoltageUnit(StrEnum):
    KV = "kV"
    V = "V"

    def __str__(self) -> str:
        return str(self.value)
