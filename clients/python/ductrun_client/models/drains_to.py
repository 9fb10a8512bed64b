from enum import StrEnum


class DrainsTo(StrEnum):
    BOTH_ENDS = "both_ends"
    END = "end"

    def __str__(self) -> str:
        return str(self.value)
