from enum import StrEnum


class ThermalResistanceUnit(StrEnum):
    DEG_C_FT_PER_W = "degC.ft/W"
    K_M_PER_W = "K.m/W"

    def __str__(self) -> str:
        return str(self.value)
