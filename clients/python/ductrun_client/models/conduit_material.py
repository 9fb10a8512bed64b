from enum import StrEnum


class ConduitMaterial(StrEnum):
    ALUMINUM = "aluminum"
    HDPE = "hdpe"
    PVC = "pvc"
    RTRC = "rtrc"
    STEEL = "steel"

    def __str__(self) -> str:
        return str(self.value)
