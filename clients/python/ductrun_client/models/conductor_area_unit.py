from enum import StrEnum


class ConductorAreaUnit(StrEnum):
    KCMIL = "kcmil"
    MM2 = "mm2"

    def __str__(self) -> str:
        return str(self.value)
