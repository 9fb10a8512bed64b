from enum import StrEnum


class DensityUnit(StrEnum):
    KG_PER_M3 = "kg/m3"
    LB_PER_FT3 = "lb/ft3"
    LB_PER_YD3 = "lb/yd3"

    def __str__(self) -> str:
        return str(self.value)
