from enum import StrEnum


class BankAlignment(StrEnum):
    CENTERED = "centered"
    LEFT = "left"
    RIGHT = "right"

    def __str__(self) -> str:
        return str(self.value)
