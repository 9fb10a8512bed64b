from enum import StrEnum


class TerminalRating(StrEnum):
    DEGC_60 = "60_degc"
    DEGC_75 = "75_degc"
    DEGC_90 = "90_degc"

    def __str__(self) -> str:
        return str(self.value)
