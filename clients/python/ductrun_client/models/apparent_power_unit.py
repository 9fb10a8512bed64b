from enum import StrEnum


class ApparentPowerUnit(StrEnum):
    KVA = "kVA"

    def __str__(self) -> str:
        return str(self.value)
