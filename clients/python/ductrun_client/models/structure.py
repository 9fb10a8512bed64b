from enum import StrEnum


class Structure(StrEnum):
    HANDHOLE = "handhole"
    MANHOLE = "manhole"
    PULL_BOX = "pull_box"

    def __str__(self) -> str:
        return str(self.value)
