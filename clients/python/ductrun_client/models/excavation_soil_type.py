from enum import StrEnum


class ExcavationSoilType(StrEnum):
    STABLE_ROCK = "stable_rock"
    TYPE_A = "type_a"
    TYPE_B = "type_b"
    TYPE_C = "type_c"
    UNCLASSIFIED = "unclassified"

    def __str__(self) -> str:
        return str(self.value)
