from enum import StrEnum


class BarSize(StrEnum):
    NO_3 = "no_3"
    NO_4 = "no_4"
    NO_5 = "no_5"
    NO_6 = "no_6"
    NO_8 = "no_8"

    def __str__(self) -> str:
        return str(self.value)
