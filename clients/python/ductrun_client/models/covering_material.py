from enum import StrEnum


class CoveringMaterial(StrEnum):
    EPR = "epr"
    PAPER = "paper"
    PE = "pe"
    PVC = "pvc"
    RUBBER = "rubber"
    XLPE = "xlpe"

    def __str__(self) -> str:
        return str(self.value)
