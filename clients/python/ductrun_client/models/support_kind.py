from enum import StrEnum


class SupportKind(StrEnum):
    HANGER = "hanger"
    STRAP = "strap"

    def __str__(self) -> str:
        return str(self.value)
