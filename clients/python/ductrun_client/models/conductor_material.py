from enum import StrEnum


class ConductorMaterial(StrEnum):
    ALUMINUM = "aluminum"
    COPPER = "copper"

    def __str__(self) -> str:
        return str(self.value)
