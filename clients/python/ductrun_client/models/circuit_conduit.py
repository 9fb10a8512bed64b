from enum import StrEnum


class CircuitConduit(StrEnum):
    ALUMINUM = "aluminum"
    PVC = "pvc"
    STEEL = "steel"

    def __str__(self) -> str:
        return str(self.value)
