from enum import StrEnum


class RunSetting(StrEnum):
    ABOVE_GROUND = "above_ground"
    DIRECT_BURIED = "direct_buried"
    ENCASED = "encased"

    def __str__(self) -> str:
        return str(self.value)
