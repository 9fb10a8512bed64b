from enum import StrEnum


class Page(StrEnum):
    CREW = "crew"
    SHEET = "sheet"
    TAKEOFF = "takeoff"

    def __str__(self) -> str:
        return str(self.value)
