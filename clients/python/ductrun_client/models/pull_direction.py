from enum import StrEnum


class PullDirection(StrEnum):
    FORWARD = "forward"
    REVERSED = "reversed"

    def __str__(self) -> str:
        return str(self.value)
