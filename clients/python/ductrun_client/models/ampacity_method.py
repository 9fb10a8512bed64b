from enum import StrEnum


class AmpacityMethod(StrEnum):
    BOTH = "both"
    IEC_60287 = "iec_60287"
    NEHER_MCGRATH = "neher_mcgrath"

    def __str__(self) -> str:
        return str(self.value)
