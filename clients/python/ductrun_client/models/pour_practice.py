from enum import StrEnum


class PourPractice(StrEnum):
    FORMED = "formed"
    TRENCH_FORMED = "trench_formed"

    def __str__(self) -> str:
        return str(self.value)
