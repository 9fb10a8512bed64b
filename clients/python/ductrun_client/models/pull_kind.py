from enum import StrEnum


class PullKind(StrEnum):
    ANGLE = "angle"
    STRAIGHT = "straight"
    U_PULL = "u_pull"

    def __str__(self) -> str:
        return str(self.value)
