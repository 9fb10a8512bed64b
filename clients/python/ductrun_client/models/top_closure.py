from enum import StrEnum


class TopClosure(StrEnum):
    BASE = "base"
    CAP = "cap"
    INTERMEDIATE = "intermediate"
    NONE = "none"
    STRAP = "strap"

    def __str__(self) -> str:
        return str(self.value)
