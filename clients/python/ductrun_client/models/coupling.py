from enum import StrEnum


class Coupling(StrEnum):
    THREADED = "threaded"
    THREADLESS = "threadless"

    def __str__(self) -> str:
        return str(self.value)
