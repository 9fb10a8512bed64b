from enum import StrEnum


class Attachment(StrEnum):
    BASKET_GRIP = "basket_grip"
    PULLING_EYE = "pulling_eye"

    def __str__(self) -> str:
        return str(self.value)
