from enum import StrEnum


class PressureUnit(StrEnum):
    KPA = "kPa"
    MPA = "MPa"
    PSF = "psf"
    PSI = "psi"

    def __str__(self) -> str:
        return str(self.value)
