from enum import StrEnum


class BankSetting(StrEnum):
    DIRECT_BURIED = "direct_buried"
    ENCASED = "encased"

    def __str__(self) -> str:
        return str(self.value)
