from enum import StrEnum


class TrenchPractice(StrEnum):
    DIRECT_BURIED = "direct_buried"
    FORMED = "formed"
    TRENCH_FORMED = "trench_formed"

    def __str__(self) -> str:
        return str(self.value)
