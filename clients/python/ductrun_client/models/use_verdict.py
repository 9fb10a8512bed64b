from enum import StrEnum


class UseVerdict(StrEnum):
    CAUTION = "caution"
    NO = "no"
    YES = "yes"

    def __str__(self) -> str:
        return str(self.value)
