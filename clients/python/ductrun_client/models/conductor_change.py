from enum import StrEnum


class ConductorChange(StrEnum):
    ONE_MORE = "one_more"
    ONE_SIZE_LARGER = "one_size_larger"

    def __str__(self) -> str:
        return str(self.value)
