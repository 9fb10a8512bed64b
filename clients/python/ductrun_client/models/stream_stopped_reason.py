from enum import StrEnum


class StreamStoppedReason(StrEnum):
    IDLE = "idle"
    STOPPING = "stopping"

    def __str__(self) -> str:
        return str(self.value)
