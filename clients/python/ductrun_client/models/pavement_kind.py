from enum import StrEnum


class PavementKind(StrEnum):
    ASPHALT = "asphalt"
    CONCRETE = "concrete"
    PAVERS = "pavers"

    def __str__(self) -> str:
        return str(self.value)
