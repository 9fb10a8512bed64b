from enum import StrEnum


class ArchingSoil(StrEnum):
    CLAY = "clay"
    GRANULAR = "granular"
    SAND_AND_GRAVEL = "sand_and_gravel"
    SATURATED_CLAY = "saturated_clay"
    SATURATED_TOPSOIL = "saturated_topsoil"

    def __str__(self) -> str:
        return str(self.value)
