from enum import StrEnum


class MassPerLengthUnit(StrEnum):
    KG_PER_KM = "kg/km"
    KG_PER_M = "kg/m"
    LB_PER_1000FT = "lb/1000ft"
    LB_PER_FT = "lb/ft"

    def __str__(self) -> str:
        return str(self.value)
