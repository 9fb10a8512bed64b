from enum import StrEnum


class RunSetting(StrEnum):
    ABOVE_GROUND = "above_ground"
    BURIED = "buried"
    ENCASED = "encased"

    def __str__(self) -> str:
        return str(self.value)
