from enum import StrEnum


class PlasticMaterial(StrEnum):
    HDPE = "hdpe"
    PVC = "pvc"

    def __str__(self) -> str:
        return str(self.value)
