from enum import StrEnum


class VolumeMeasure(StrEnum):
    BANK = "bank"
    COMPACTED = "compacted"
    LOOSE = "loose"

    def __str__(self) -> str:
        return str(self.value)
