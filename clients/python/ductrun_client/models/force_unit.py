from enum import StrEnum


class ForceUnit(StrEnum):
    KGF = "kgf"
    KN = "kN"
    LBF = "lbf"
    N = "N"

    def __str__(self) -> str:
        return str(self.value)
