from enum import StrEnum


class CircuitSystem(StrEnum):
    DIRECT_CURRENT = "direct_current"
    SINGLE_PHASE = "single_phase"
    THREE_PHASE = "three_phase"

    def __str__(self) -> str:
        return str(self.value)
