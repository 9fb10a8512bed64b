from enum import StrEnum


class BareStranding(StrEnum):
    SOLID = "solid"
    STRANDED = "stranded"

    def __str__(self) -> str:
        return str(self.value)
