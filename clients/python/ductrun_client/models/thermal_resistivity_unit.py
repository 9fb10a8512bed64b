from enum import StrEnum


class ThermalResistivityUnit(StrEnum):
    DEG_C_CM_PER_W = "degC.cm/W"
    K_M_PER_W = "K.m/W"

    def __str__(self) -> str:
        return str(self.value)
