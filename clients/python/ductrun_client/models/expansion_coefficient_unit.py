from enum import StrEnum


class ExpansionCoefficientUnit(StrEnum):
    PER_DEG_C = "1/degC"
    PER_DEG_F = "1/degF"

    def __str__(self) -> str:
        return str(self.value)
