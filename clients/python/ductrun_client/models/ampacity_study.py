from enum import StrEnum


class AmpacityStudy(StrEnum):
    LARGEST_EARTH_RESISTIVITY = "largest_earth_resistivity"
    SENSITIVITY = "sensitivity"
    SMALLEST_SEPARATION = "smallest_separation"
    SMALLEST_SIZE = "smallest_size"

    def __str__(self) -> str:
        return str(self.value)
