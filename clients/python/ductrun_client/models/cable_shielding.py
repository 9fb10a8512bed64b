from enum import StrEnum


class CableShielding(StrEnum):
    INDIVIDUALLY_SHIELDED = "individually_shielded"
    NONSHIELDED = "nonshielded"
    SHIELDED = "shielded"

    def __str__(self) -> str:
        return str(self.value)
