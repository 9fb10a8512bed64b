from enum import StrEnum


class ResistancePerLengthUnit(StrEnum):
    OHM_PER_1000FT = "ohm/1000ft"
    OHM_PER_KM = "ohm/km"

    def __str__(self) -> str:
        return str(self.value)
