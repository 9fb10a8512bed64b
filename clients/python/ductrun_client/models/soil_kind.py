from enum import StrEnum


class SoilKind(StrEnum):
    BLASTED_ROCK = "blasted_rock"
    CLAY = "clay"
    DENSE_CLAY = "dense_clay"
    LOAM = "loam"
    SAND = "sand"
    SAND_AND_GRAVEL = "sand_and_gravel"

    def __str__(self) -> str:
        return str(self.value)
