from enum import StrEnum


class RunEnd(StrEnum):
    ADAPTER = "adapter"
    CONDUIT_BODY = "conduit_body"
    COUPLING = "coupling"
    ELBOW = "elbow"
    END_BELL = "end_bell"
    NONE = "none"

    def __str__(self) -> str:
        return str(self.value)
