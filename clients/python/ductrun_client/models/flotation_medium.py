from enum import StrEnum


class FlotationMedium(StrEnum):
    CONCRETE = "concrete"
    GROUNDWATER = "groundwater"
    SLURRY = "slurry"

    def __str__(self) -> str:
        return str(self.value)
