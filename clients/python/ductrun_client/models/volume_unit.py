from enum import StrEnum


class VolumeUnit(StrEnum):
    FT3 = "ft3"
    GAL_US = "gal_us"
    IN3 = "in3"
    L = "L"
    M3 = "m3"
    QT_US = "qt_us"
    YD3 = "yd3"

    def __str__(self) -> str:
        return str(self.value)
