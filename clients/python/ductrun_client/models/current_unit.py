from enum import StrEnum


class CurrentUnit(StrEnum):
    A = "A"
    KA = "kA"

    def __str__(self) -> str:
        return str(self.value)
