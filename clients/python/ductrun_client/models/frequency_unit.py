from enum import StrEnum


class FrequencyUnit(StrEnum):
    HZ = "Hz"

    def __str__(self) -> str:
        return str(self.value)
