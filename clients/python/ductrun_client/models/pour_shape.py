from enum import StrEnum


class PourShape(StrEnum):
    BOUNDING_RECTANGLE = "bounding_rectangle"
    STEPPED = "stepped"

    def __str__(self) -> str:
        return str(self.value)
