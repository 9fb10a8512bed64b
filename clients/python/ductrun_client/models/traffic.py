from enum import StrEnum


class Traffic(StrEnum):
    H_20 = "h_20"
    NONE = "none"

    def __str__(self) -> str:
        return str(self.value)
