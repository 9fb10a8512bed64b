from enum import StrEnum


class AssumptionPolicy(StrEnum):
    REFUSE = "refuse"
    STATE = "state"

    def __str__(self) -> str:
        return str(self.value)
