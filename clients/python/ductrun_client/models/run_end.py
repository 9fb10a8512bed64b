from enum import StrEnum


class RunEnd(StrEnum):
    ADAPTER = "adapter"
    COUPLING = "coupling"
    ELBOW = "elbow"
    END_BELL = "end_bell"
    NONE = "none"

    def __str__(self) -> str:
        return str(self.value)
