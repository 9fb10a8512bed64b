from enum import StrEnum


class RequestBack(StrEnum):
    COMPLETED = "completed"

    def __str__(self) -> str:
        return str(self.value)
