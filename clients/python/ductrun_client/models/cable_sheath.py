from enum import StrEnum


class CableSheath(StrEnum):
    COPPER_OR_ALUMINUM = "copper_or_aluminum"
    NONMETALLIC = "nonmetallic"

    def __str__(self) -> str:
        return str(self.value)
