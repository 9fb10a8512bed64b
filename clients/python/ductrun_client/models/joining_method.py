from enum import StrEnum


class JoiningMethod(StrEnum):
    CEMENTED = "cemented"
    COUPLED = "coupled"
    FUSED = "fused"
    THREADED = "threaded"

    def __str__(self) -> str:
        return str(self.value)
