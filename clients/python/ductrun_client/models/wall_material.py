from enum import StrEnum


class WallMaterial(StrEnum):
    ALUMINUM = "aluminum"
    ASBESTOS_CEMENT = "asbestos_cement"
    EARTHENWARE = "earthenware"
    FIBER = "fiber"
    FIBERGLASS = "fiberglass"
    POLYETHYLENE = "polyethylene"
    PVC = "pvc"
    STEEL = "steel"

    def __str__(self) -> str:
        return str(self.value)
