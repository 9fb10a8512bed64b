from enum import StrEnum


class ForcePerLengthUnit(StrEnum):
    KN_PER_M = "kN/m"
    LBF_PER_FT = "lbf/ft"
    N_PER_M = "N/m"

    def __str__(self) -> str:
        return str(self.value)
