from enum import StrEnum


class Verdict(StrEnum):
    COMPLIES = "complies"
    NOT_JUDGED = "not_judged"
    VIOLATES = "violates"

    def __str__(self) -> str:
        return str(self.value)
