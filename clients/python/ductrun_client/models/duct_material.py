from enum import StrEnum


class DuctMaterial(StrEnum):
    ALUMINUM = "aluminum"
    HDPE = "hdpe"
    PVC = "pvc"
    RTRC = "rtrc"
    STEEL = "steel"

    def __str__(self) -> str:
        return str(self.value)
