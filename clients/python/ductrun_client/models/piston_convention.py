from enum import StrEnum


class PistonConvention(StrEnum):
    CENTERED = "centered"
    FULL_TRAVEL = "full_travel"

    def __str__(self) -> str:
        return str(self.value)
