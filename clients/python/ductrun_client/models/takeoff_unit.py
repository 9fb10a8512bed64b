from enum import StrEnum


class TakeoffUnit(StrEnum):
    EACH = "each"
    FT = "ft"
    FT2 = "ft2"
    GAL_US = "gal_us"
    KG = "kg"
    L = "L"
    LB = "lb"
    M = "m"
    M2 = "m2"
    M3 = "m3"
    QT_US = "qt_us"
    YD3 = "yd3"

    def __str__(self) -> str:
        return str(self.value)
