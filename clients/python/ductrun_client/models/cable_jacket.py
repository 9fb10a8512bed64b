from enum import StrEnum


class CableJacket(StrEnum):
    NEOPRENE = "neoprene"
    PE = "pe"
    PVC = "pvc"

    def __str__(self) -> str:
        return str(self.value)
