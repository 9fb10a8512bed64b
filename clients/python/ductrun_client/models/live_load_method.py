from enum import StrEnum


class LiveLoadMethod(StrEnum):
    AASHTO_SPREAD = "aashto_spread"
    BOUSSINESQ = "boussinesq"
    GOVERNING = "governing"
    HANDBOOK_TABLE = "handbook_table"

    def __str__(self) -> str:
        return str(self.value)
