from enum import StrEnum


class LengthUnit(StrEnum):
    CM = "cm"
    FT = "ft"
    INCH = "in"
    M = "m"
    MM = "mm"
    YD = "yd"

    def __str__(self) -> str:
        return str(self.value)
