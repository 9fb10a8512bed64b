from enum import StrEnum


class BoxWall(StrEnum):
    BACK = "back"
    BOTTOM = "bottom"
    FRONT = "front"
    LEFT = "left"
    RIGHT = "right"
    TOP = "top"

    def __str__(self) -> str:
        return str(self.value)
