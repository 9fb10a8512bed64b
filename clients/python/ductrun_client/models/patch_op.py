from enum import StrEnum


class PatchOp(StrEnum):
    ADD = "add"
    REPLACE = "replace"

    def __str__(self) -> str:
        return str(self.value)
