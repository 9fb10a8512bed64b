from enum import StrEnum


class StraightLengths(StrEnum):
    TANGENT = "tangent"
    TO_INTERSECTIONS = "to_intersections"

    def __str__(self) -> str:
        return str(self.value)
